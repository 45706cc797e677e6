"""Italian and Swiss meringue: what the syrup is boiled to here, and whether the whites are safe then."""

from __future__ import annotations

from rules import safety
from rules.book import Case, Part, celsius, rule
from rules.model import Caution
from rules.said import sentences, temp

# what books boil the syrup of an Italian meringue to at sea level, and the readings that may be one [degC]
SYRUP_C = 118.0
SYRUPS_C = (110.0, 125.0)
say = sentences("safety/subjects/cooked_meringue")


def recipe_c(case: Case) -> float:
    """What the recipe boils the syrup to at sea level [degC]."""
    named = case.request.temperature_c
    return named if named is not None and SYRUPS_C[0] <= named <= SYRUPS_C[1] else SYRUP_C


@rule("safety.cooked_meringue", "iapws-r7-97", "usda-fsis-safe-temperatures", "from-memory")
def cooked_meringue(case: Case) -> Part:
    """The syrup falls with the boil; the whites are judged by their own temperature, here as at sea level."""
    at_sea_c = recipe_c(case)
    here_c = at_sea_c - (case.sea.boiling_c - case.here.boiling_c)
    safe_c = safety.row_of("egg_dish").temp_c
    return Part(
        figures=(
            celsius("syrup_temperature", say("syrup-label"), here_c, at_sea_c),
            celsius("safe_temperature", say("whites-label"), safe_c, safe_c),
        ),
        headline=say("headline", syrup=temp(here_c), place=case.place, sea=temp(at_sea_c), safe=temp(safe_c)),
        steps=(say("read", safe=temp(safe_c)), say("otherwise", safe=temp(safe_c))),
        because=say("because", place=case.place, boil=temp(case.here.boiling_c)),
        cautions=(Caution("warn", say("at-risk"), ("usda-fsis-safe-temperatures",)),),
    )


NEEDS = ("elevation",)
RULES = (cooked_meringue,)
