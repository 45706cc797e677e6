"""Instant dried food: water poured on and left to stand. Cooler water takes longer."""

from __future__ import annotations

from rules.book import Case, Part, rule
from rules.heat.wet import Pot, wet_time
from rules.say import duration_span

INSTANT = "instant_dried"
BOIL = Pot("boil", "the water")


@rule("instant.stand", "common-practice", "iapws-r7-97")
def stand(case: Case) -> Part | None:
    """How to give dried food its time where the water is not as hot as the packet takes for granted."""
    if case.dish_class != INSTANT:
        return None
    time = wet_time(case, BOIL.heats(case)) if case.request.method == "boil" else None
    headline = ""
    if time and case.request.topic == "time":
        here = duration_span(time.low_min, time.high_min)
        packet = duration_span(time.base_low_min, time.base_high_min)
        headline = (
            f"Pour boiling water on {case.food} and let it stand {here} at {case.place}, against {packet} at "
            f"{case.baseline}."
        )
    steps = ["Bring the water to a full boil, pour it on at once, stir, and cover it tight."]
    if not case.moved or case.here.boiling_c > case.there.boiling_c:
        return Part(headline=headline, steps=tuple(steps))
    steps += [
        "Wrap it in a towel or a cosy and let it stand for the longer time; stir to the bottom before you taste.",
        "If a piece is still hard, bring it back to the boil for a minute rather than adding more water.",
    ]
    return Part(
        headline=headline,
        steps=tuple(steps),
        because=f"The packet reckons with water at {case.say.temp(case.there.boiling_c)}. Here it is "
        f"{case.say.temp(case.here.boiling_c)} at its hottest and cools from there, so water soaks in more slowly: "
        "give it time and keep it warm. Couscous and flakes hardly mind; rice, beans and meat in the packet do.",
    )
