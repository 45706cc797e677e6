"""Thawing: cold all the way; elevation has no part in it."""

from __future__ import annotations

from rules.book import Case, Part, rule
from rules.heat.roast_weights import pounds
from rules.model import Caution, Figure
from rules.physics.units import round_to
from rules.safety.local_code import local_code
from rules.said import duration, duration_span, sentences

REFRIGERATOR_MIN = 24 * 60.0
LB_PER_DAY = (4.0, 5.0)
COLD_WATER_MIN_PER_LB = 30.0
say = sentences("safety/subjects/thawing")


@rule("safety.thawing", "fsis-big-thaw", "fda-food-code-2022")
def thawing(case: Case) -> Part:
    """Three ways to thaw, and how long they take."""
    weight = pounds(case.request.quantity)
    figures: tuple[Figure, ...] = ()
    times = say("times-by-weight")
    if weight:
        fast, slow = (round_to(max(1.0, weight / a_day) * REFRIGERATOR_MIN, 60) for a_day in reversed(LB_PER_DAY))
        wet = max(COLD_WATER_MIN_PER_LB, weight * COLD_WATER_MIN_PER_LB)
        figures = (
            Figure("refrigerator_time", say("refrigerator-label"), slow, "min", fast, slow),
            Figure("cold_water_time", say("water-label"), wet, "min"),
        )
        times = say("times", span=duration_span(fast, slow), wet=duration(wet))
    return Part(
        headline=say("headline", food=case.request.dish or say("frozen-food"), times=times),
        figures=figures,
        steps=(say("in-refrigerator"), say("in-water"), say("in-microwave")),
        because=say("because"),
        cautions=(Caution("warn", say("never-warm"), ("fsis-big-thaw",)),),
    )


NEEDS: tuple[str, ...] = ()
RULES = (thawing, local_code)
