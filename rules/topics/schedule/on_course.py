"""Whether a roast that is in the oven will be done by service, from what its middle reads and how long it has been in.

The middle of a body that is heated from outside nears the heat round it by the same share in every minute, once heat
has reached it. From one reading that share is known within the bounds of the shape, and of how hot the wet surface is.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from rules.book import Case, Part, rule
from rules.heat.dry import core_c
from rules.heat.heat_settings import setting
from rules.model import Caution, Figure, Request
from rules.physics.conduction import FIRST_TERM
from rules.physics.units import round_time_min
from rules.said import duration, duration_span, sentences, temp, temp_drop
from rules.topics.schedule.stages import Stage, method_of, stages

say = sentences("topics/schedule")

FRIDGE_C, WARMED_K, NEARLY_K = 5.0, 6.0, 0.5
# the heat round the middle: that of a wet surface at the boil, or so far from there to the heat of the oven
DRIED = (0.0, 0.4)
AGAIN_MIN, HOTTER_K = 30.0, 14.0


@dataclass(frozen=True, slots=True)
class Left:
    """How long the middle still takes by its reading [min], least, likely, most."""

    low: float
    likely: float
    high: float


@rule("schedule.on_course", "carslaw-jaeger", "common-practice")
def on_course(case: Case) -> Part | None:
    """How long the middle still takes by its reading, and whether that and the rest are over by service."""
    request = case.request
    if not is_read(request):
        return None
    read_c, had_min, left_min = request.core_c or 0.0, request.elapsed_min or 0.0, request.left_min or 0.0
    target_c = core_c(request.dish, case.dish_class)
    work = {stage.id: stage for stage in stages(request)}
    rest = work.get("rest")
    said_rest = duration_span(rest.low_min, rest.high_min) if rest else duration(0.0)
    if read_c >= target_c - NEARLY_K:
        return Part(
            headline=say("read-done", read=temp(read_c), food=case.food, rest=said_rest, left=duration(left_min))
        )
    left = left_of(case, read_c, target_c, had_min)
    usual = usual_left(work.get("cook"), had_min)
    if left is None:
        return Part(
            headline=say("read-early", read=temp(read_c), food=case.food, left=duration(left_min)),
            steps=(say("read-again", time=duration(AGAIN_MIN)),),
        )
    verdict = judged(left, usual, rest, left_min)
    time_left = Figure(
        "time_left",
        say("time-left"),
        round_time_min(left.likely),
        "min",
        round_time_min(left.low),
        round_time_min(left.high),
    )
    return Part(
        headline=say(
            "on-course",
            verdict=verdict,
            food=case.food,
            read=temp(read_c),
            had=duration(had_min),
            target=temp(target_c),
            span=duration_span(left.low, left.high),
            rested="yes" if rest else "no",
            rest=said_rest,
            left=duration(left_min),
        ),
        figures=(time_left,),
        steps=(
            say("read-again", time=duration(min(AGAIN_MIN, max(10.0, left.low / 2)))),
            *((say("quicker-than-usual", span=duration_span(*usual)),) if usual and left.high < usual[0] else ()),
            *((say("slower-than-usual", span=duration_span(*usual)),) if usual and left.low > usual[1] else ()),
            say("behind", hotter=temp_drop(HOTTER_K), target=temp(target_c)),
        ),
        because=say("by-one-reading"),
        cautions=(Caution("note", say("never-early", target=temp(target_c)), ("usda-fsis-safe-temperatures",)),),
    )


def is_read(request: Request) -> bool:
    """Whether the middle of the dish was read, and it is known how long it has been in and how long there is."""
    return request.core_c is not None and request.elapsed_min is not None and request.left_min is not None


def left_of(case: Case, read_c: float, target_c: float, had_min: float) -> Left | None:
    """How long the middle still takes; None where it has hardly begun to warm.

    source: carslaw-jaeger
    """
    if read_c < FRIDGE_C + WARMED_K or had_min <= 0:
        return None
    boil_c, oven_c = case.here.boiling_c, oven_of(case.request, case.dish_class)
    found = []
    for part in DRIED:
        round_c = boil_c + part * max(0.0, oven_c - boil_c)
        for coefficient, _ in (FIRST_TERM["cylinder"], FIRST_TERM["sphere"]):
            if target_c < round_c:
                share = math.log(coefficient * (round_c - FRIDGE_C) / (round_c - read_c)) / had_min
                found.append(math.log((round_c - read_c) / (round_c - target_c)) / share)
    return Left(min(found), sum(found) / len(found), max(found)) if found else None


def oven_of(request: Request, dish_class: str) -> float:
    """The heat of the oven [degC]: as the cook set it, else the usual one."""
    usual = setting(request.dish, dish_class, method_of(request) or "roast").middle_c
    return usual if request.temperature_c is None else request.temperature_c


def usual_left(cook: Stage | None, had_min: float) -> tuple[float, float] | None:
    """What is left of the usual time [min]."""
    return (max(0.0, cook.low_min - had_min), max(0.0, cook.high_min - had_min)) if cook else None


def judged(left: Left, usual: tuple[float, float] | None, rest: Stage | None, left_min: float) -> str:
    """Whether it will be done: yes, likely, tight or no. A quick reading alone makes nothing sure."""
    least, most = (rest.low_min, rest.high_min) if rest else (0.0, 0.0)
    if left.low + least > left_min:
        return "no"
    sure = usual is None or usual[1] + most <= left_min
    if left.high + most <= left_min:
        return "yes" if sure else "likely"
    return "likely" if left.likely + least <= left_min and sure else "tight"
