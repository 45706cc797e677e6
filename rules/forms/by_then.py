"""How far a dish is here by the time that it is done where the recipe is from."""

from __future__ import annotations

from rules.book import Part, rule
from rules.forms import Asked
from rules.heat.headline import doing
from rules.model import Figure
from rules.physics.units import round_time_min
from rules.said import duration, duration_span, number, sentences

say = sentences("forms/by_then")

# nearer than this to the end, and it is as good as done
NEARLY_DONE = 0.95


@rule("by_then.part", "common-practice", "computed")
def part_done(asked: Asked) -> Part | None:
    """The part of its time that it has had, and what is still to go; only where two places are held side by side."""
    request = asked.request
    beside = [m for m in request.elevations_m if m != request.elevation_m]
    if request.from_elevation_m is None and len(beside) == 1:
        asked = asked.otherwise(from_elevation_m=beside[0])
    if asked.request.from_elevation_m is None or asked.time is None or request.method is None:
        return None
    here, base = asked.time
    if base.value >= NEARLY_DONE * here.value:
        return None
    low, high = here.low or here.value, here.high or here.value
    left = Figure(
        "time_left", say("label"), round_time_min(here.value - base.value), "min",
        round_time_min(max(0.0, low - base.value)), round_time_min(high - base.value),
    )  # fmt: skip
    text = say(
        "part",
        doing=doing(asked.case, request.method),
        had=duration(base.value),
        share=number(round(10 * base.value / here.value) * 10, 0),
        left=duration(left.value),
        span=duration_span(left.low or 0.0, left.high or left.value),
        place=asked.case.place,
    )
    return Part(figures=(left,), headline=text)


RULES = (part_done,)
