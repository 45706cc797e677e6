"""Big pieces by the oven-load: more birds than the ovens hold are roasted in turns, and the first ones held hot."""

from __future__ import annotations

import math
from dataclasses import dataclass

from rules.amounts import packs
from rules.amounts.portion import grams
from rules.book import Case, Part, rule
from rules.model import Caution, Figure, Request
from rules.safety.holding_limits import limit_c
from rules.said import bulk, duration, number, sentences, temp
from rules.topics.schedule.stages import stages

say = sentences("topics/schedule")

# what a full-size convection oven roasts well at a time, two birds of 18 lb, and from what weight a piece is big [g]
OVEN_HOLDS_G, BIG_PIECE_G = 16_500.0, 2_500.0
# from one load to the next: out, basted, and the oven hot again
TURN_MIN = 20.0
BY_LOAD = ("roast", "smoke", "bake")


@dataclass(frozen=True, slots=True)
class Loads:
    """How the pieces go in. each_g: of one piece; at_once: pieces of a load; count: of loads; ovens: how many"""

    each_g: float
    at_once: int
    count: int
    ovens: int


def loads(request: Request) -> Loads | None:
    """The loads of so many big pieces; None where they go in all at once."""
    part = packs.piece(request.dish, request.dish_class or "general")
    each_g = (grams(request.quantity) or part.grams or 0.0) if part else 0.0
    if not request.count or each_g < BIG_PIECE_G or (request.method or "roast") not in BY_LOAD:
        return None
    ovens = request.ovens or 1
    at_once = ovens * max(1, int(OVEN_HOLDS_G // each_g))
    count = math.ceil(request.count / at_once)
    return Loads(each_g, at_once, count, ovens) if count > 1 else None


@rule("schedule.loads", "common-practice", "fda-food-code-2022")
def in_loads(case: Case) -> Part | None:
    """When each load goes in, so that the last one is rested at service; the earlier ones wait hot."""
    request = case.request
    found = loads(request)
    if found is None:
        return None
    work = stages(request)
    cook = next(stage for stage in work if stage.id == "cook")
    first = next(i for i, stage in enumerate(work) if stage.id == "cook")
    after = sum(stage.plan_min for stage in work[first:])
    at = [after + (cook.plan_min + TURN_MIN) * turns for turns in range(found.count - 1, -1, -1)]
    heat = sum(stage.plan_min for stage in work[:first])
    assumed = say(
        "loads-assumed",
        a_load=number(found.at_once, 0),
        size=bulk(found.each_g),
        said="yes" if request.ovens else "no",
        an_oven=number(found.at_once / found.ovens, 0),
    )
    return Part(
        headline=say(
            "loads", food=case.food, count=number(found.count, 0), time=duration(at[0] + heat), place=case.place
        ),
        figures=(
            Figure("at_0", say("heat-label"), at[0] + heat, "min"),
            *(Figure(f"at_{n}", say("load-label", n=n), when, "min") for n, when in enumerate(at, 1)),
            Figure("loads", say("loads-label"), found.count, "count"),
            Figure("cook_time", say("label", stage="cook"), cook.plan_min, "min", cook.low_min, cook.high_min),
        ),
        steps=(
            say("step", when=say("before-service", time=duration(at[0] + heat)), step=say("heat-ovens")),
            *(
                say(
                    "step",
                    when=say("before-service", time=duration(when)),
                    step=say("load-in", n=n, time=duration(cook.plan_min)),
                )
                for n, when in enumerate(at, 1)
            ),
        ),
        because=assumed,
        cautions=(Caution("warn", say("loads-wait", hot=temp(limit_c("hot_hold"))), ("fda-food-code-2022",)),),
    )
