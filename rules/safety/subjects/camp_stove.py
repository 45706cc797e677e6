"""Which camp stove high up, and whether it works there: gas, liquid fuel and spirit, by cold more than by height."""

from __future__ import annotations

from rules.book import Case, Part, rule
from rules.heat.where_water_boils import boiling_point
from rules.model import Caution
from rules.safety.subjects.fuel import of_two
from rules.said import sentences, temp

say = sentences("safety/subjects/camp_stove")


@rule("camp_stove.which", "common-practice")
def which(case: Case) -> Part:
    """Yes, all of them burn; the cold tells which."""
    return Part(
        headline=say("headline", place=case.place, boil=temp(case.here.boiling_c)),
        steps=(say("gas"), say("liquid"), say("spirit"), say("try")),
        because=say("why"),
        cautions=(Caution("warn", say("fumes"), ("common-practice",)),),
    )


NEEDS: tuple[str, ...] = ()
settled = of_two
RULES = (which, boiling_point)
