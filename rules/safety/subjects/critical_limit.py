"""The critical limit of a plan written where water boils at 100 degC: the food's temperature, not the boil's."""

from __future__ import annotations

from rules.book import Case, Part, celsius, rule
from rules.model import Caution
from rules.safety import holding_limits
from rules.safety.holding_limits import limit_c, limit_min, placed
from rules.safety.local_code import local_code
from rules.said import duration, sentences, temp

# a plain boil, as plans name it; whole cuts and fish
PLAIN_BOIL_C = 100.0
say = sentences("safety/subjects/critical_limit")


@rule("safety.critical_limit", "fda-food-code-2022", "iapws-r7-97")
def critical_limit(case: Case) -> Part:
    """What to write in the place of a boil: the temperature at the centre of the food."""
    hot, reheat = limit_c("hot_hold"), limit_c("reheat")
    here = placed(case.request)
    boil = temp(case.here.boiling_c)
    return Part(
        headline=say(
            "headline",
            food=case.request.dish or say("the-food"),
            reheat=temp(reheat),
            hot=temp(hot),
            placed="yes" if here else "no",
            boil=boil,
            place=case.place,
        ),
        figures=(
            celsius("reheat_temperature", say("reheat-label"), reheat, reheat),
            celsius("hold_temperature", say("hold-label"), hot, hot),
            *((celsius("boiling_point", say("boil-label"), case.here.boiling_c, PLAIN_BOIL_C),) if here else ()),
        ),
        steps=(say("raw"), say("measure"), say("cooling", first=duration(limit_min("cool_first")))),
        because=say("why", boil=boil) if here else say("why-anywhere"),
        cautions=(Caution("note", say("approved"), ("fda-food-code-2022",)),),
    )


NEEDS: tuple[str, ...] = ()
RULES = (critical_limit, holding_limits.same_everywhere, local_code)
