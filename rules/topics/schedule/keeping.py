"""What a plan of several dishes needs beside their stages: how long a dish keeps, and how long a stage takes hands."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cache

from rules.foods import dishes
from rules.model import Request
from rules.tables import read_csv
from rules.topics.schedule.stages import Stage, method_of, stages

KEEPS, HANDS = "tables/schedule_keeps_common-practice.csv", "tables/schedule_hands_common-practice.csv"
ANY, TRAIT = "any", "trait:"
# stages that are planned by their middle whatever the dish: they may be longer or shorter and harm nothing
AS_PLANNED = ("soak", "rest", "slack")


@dataclass(frozen=True, slots=True)
class Keeps:
    """How a dish that is ready waits, hot, room or cold, and how long it stays good so [min]."""

    way: str
    most_min: float


def keeps(request: Request) -> Keeps:
    """How a dish waits for service.

    source: common-practice

    >>> keeps(Request(dish_class="pasta")), keeps(Request(dish_class="lentil")).most_min
    (Keeps(way='hot', most_min=10.0), 120.0)
    """
    dish_class, method = request.dish_class or "", method_of(request) or ANY
    traits = ((f"{TRAIT}{trait}", ANY) for trait in dishes.traits_of(request.dish, request.dish_class))
    keys = ((dish_class, method), (ANY, method), (dish_class, ANY), *traits, (ANY, ANY))
    found = next(_keeps()[key] for key in keys if key in _keeps())
    return Keeps(found["way"], float(found["keeps_min"]))


def hands_min(stage: Stage, request: Request) -> float:
    """How long a stage takes a pair of hands, from its beginning on [min].

    source: common-practice
    """
    dish_class, method = request.dish_class or "general", method_of(request) or ANY
    keys = ((stage.id, dish_class, method), (stage.id, dish_class, ANY), (stage.id, ANY, method), (stage.id, ANY, ANY))
    row = next((_hands()[key] for key in keys if key in _hands()), None)
    if row is None:
        return 0.0
    return min(stage.plan_min, float(row["hands_min"]) + float(row["share"]) * stage.plan_min)


def late_safe(request: Request) -> tuple[Stage, ...]:
    """The stages, planned by the end that is never late, where the dish keeps till service if it goes quicker.

    What does not keep so long is planned as the stages plan it, by the middle.
    """
    work = stages(request)
    moved = [stage for stage in work if stage.id not in AS_PLANNED]
    if sum(stage.high_min - stage.low_min for stage in moved) > keeps(request).most_min:
        return work
    return tuple(replace(stage, plan_min=stage.high_min) if stage in moved else stage for stage in work)


@cache
def _keeps() -> dict[tuple[str, str], dict[str, str]]:
    return {(row["dish_class"], row["method"]): row for row in read_csv(KEEPS).rows}


@cache
def _hands() -> dict[tuple[str, str, str], dict[str, str]]:
    return {(row["stage"], row["dish_class"], row["method"]): row for row in read_csv(HANDS).rows}
