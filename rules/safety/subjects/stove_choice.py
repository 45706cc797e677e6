"""Which of induction, electric and gas: what each keeps of its heat up here."""

from __future__ import annotations

from rules.book import Case, Part, rule
from rules.heat.burner import gas_share
from rules.heat.where_water_boils import boiling_point
from rules.model import Caution, Figure
from rules.safety.subjects.fuel import of_two
from rules.said import number, sentences, temp, yes

say = sentences("safety/subjects/stove_choice")
# a loss that a cook sees [%]
NOTICED = 5.0


@rule("stove_choice.choice", "nfpa-54", "common-practice")
def choice(case: Case) -> Part:
    """Induction where pots are to boil soon, gas where a flame is the cooking."""
    kept = gas_share(case.here.elevation_m) * 100
    return Part(
        headline=say(
            "headline",
            lost=number(round(100 - kept), 0),
            noticed=yes(100 - kept >= NOTICED),
            place=case.place,
            boil=temp(case.here.boiling_c),
            example=yes(case.request.elevation_from is None),
        ),
        figures=(
            Figure("gas_kept", say("gas-label"), round(kept), "percent", sea_level=100.0),
            Figure("induction_kept", say("induction-label"), 100.0, "percent", sea_level=100.0),
        ),
        steps=(say("split"), say("supply")),
        because=say("why"),
        cautions=(Caution("warn", say("fitter"), ("common-practice",)),),
    )


NEEDS: tuple[str, ...] = ()
settled = of_two
RULES = (choice, boiling_point)
