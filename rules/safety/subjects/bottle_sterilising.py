"""Sterilising baby bottles in boiling water: defer, and say what elevation does."""

from __future__ import annotations

from rules.book import Case, Part, rule
from rules.heat.where_water_boils import boiling_point
from rules.model import Caution, Figure
from rules.said import duration_span, sentences, temp

AGENCIES_MIN = (5.0, 10.0)
say = sentences("safety/subjects/bottle_sterilising")


@rule("safety.bottle_sterilising", "from-memory")
def bottles(case: Case) -> Part:
    """How long agencies boil bottles, and that none of them names elevations."""
    low, high = AGENCIES_MIN
    return Part(
        headline=say("headline", span=duration_span(low, high), place=case.place),
        figures=(Figure("boil_time", say("label"), high, "min", low, high),),
        steps=(say("wash"), say("dry")),
        because=say("because", boil=temp(case.here.boiling_c)),
        cautions=(Caution("warn", say("ask-first"), ("from-memory",)),),
    )


NEEDS = ("elevation",)
RULES = (bottles, boiling_point)
