"""The stages of a recipe of the cook's own: what its converted steps say of their times, in the order of the work."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from pathlib import Path

from assistant.planning.order_sheet import WRITTEN_FOR_M
from assistant.recipes.converting import convert_recipe
from assistant.recipes.read import bytes_of
from rules.foods.dishes import classes
from rules.model import Request
from rules.recipe import Step, TimeMark
from rules.recipes.convert import Converted
from rules.topics.schedule.clashes import SHARED
from rules.topics.schedule.stages import Stage, cook_stage, lead

# which stage a time of a step belongs to; what cooks goes by its method
STAGE_OF = {"soak": "soak", "marinate": "soak", "rise": "rise", "rest": "rest", "cool": "rest", "chill": "rest"}
METHOD_OF = {
    "bake": "bake", "roast": "roast", "boil": "boil", "simmer": "simmer", "braise": "braise", "poach": "poach",
    "steam": "steam", "pressure": "pressure_cook", "fry": "fry", "reduce": "reduce", "grill": "grill", "smoke": "smoke",
    "slow_cook": "slow_cook", "sous_vide": "sous_vide", "cook": "simmer", "steep": "simmer",
}  # fmt: skip
OTHERS, SOURCES = "general", ("common-practice",)


def recipe_work(path: Path, covers: int | None, elevation_m: float) -> tuple[Request, tuple[Stage, ...]]:
    """A recipe as a dish that is asked for, and its stages; none where it tells no time of cooking.

    raises: AssistantError, RulesError for a recipe that cannot be read; OSError for a file that cannot be
    """
    converted = convert_recipe(
        bytes_of(path),
        from_elevation_m=WRITTEN_FOR_M,
        to_elevation_m=elevation_m,
        servings=float(covers) if covers else None,
        name=path.name,
    )
    marks = [(step, mark) for step in converted.plain.steps for mark in step.times]
    cooked = [mark for _, mark in marks if mark.what in METHOD_OF]
    method = _method(converted, cooked)
    request = Request(
        topic="schedule",
        timer_name=converted.recipe.title or path.stem,
        dish_class=converted.style if converted.style in classes() else OTHERS,
        method=method,
        temperature_c=converted.oven.to_c if converted.oven and method in SHARED else None,
        portions=covers,
        elevation_m=elevation_m,
    )
    if not cooked or method is None:
        return request, ()
    heated = lead("heat_up", request.dish_class or OTHERS, method)
    low, high = _sum(cooked)
    cook = replace(cook_stage(low, (low + high) / 2, high, SOURCES), step=_step(converted, cooked))
    before = [_of(converted, stage, marks) for stage in ("soak", "rise")]
    work = (*before, heated, cook, _of(converted, "rest", marks))
    return request, tuple(stage for stage in work if stage)


def _method(converted: Converted, cooked: Iterable[TimeMark]) -> str | None:
    """How most of it is cooked; an oven that is set goes before a pot."""
    by_time = sorted(cooked, key=lambda mark: -mark.high_min)
    methods = [METHOD_OF[mark.what] for mark in by_time]
    dry = next((method for method in methods if method in SHARED), None)
    return dry if converted.oven and dry else next(iter(methods), None)


def _of(converted: Converted, stage: str, marks: Iterable[tuple[Step, TimeMark]]) -> Stage | None:
    """The soak, rise or rest of a recipe; None where it tells none."""
    found = [mark for _, mark in marks if STAGE_OF.get(mark.what) == stage]
    if not found:
        return None
    low, high = _sum(found)
    return Stage(stage, low, (low + high) / 2, high, _step(converted, found), SOURCES)


def _sum(marks: Iterable[TimeMark]) -> tuple[float, float]:
    spans = [(mark.low_min, mark.high_min) for mark in marks]
    return sum(low for low, _ in spans), sum(high for _, high in spans)


def _step(converted: Converted, marks: Iterable[TimeMark]) -> str:
    """The first step with one of these times, as the converted recipe has it."""
    wanted = {id(mark) for mark in marks}
    return next(step.text for step in converted.plain.steps if any(id(mark) in wanted for mark in step.times))
