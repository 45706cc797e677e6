"""One time or temperature in a step of a recipe: what a rule of the book is asked about it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from rules.baking.batch import Batch
from rules.baking.change import Shift
from rules.recipe import Step, TempMark, TimeMark


@dataclass(frozen=True, slots=True)
class TimeAt:
    """A time of a step. shift: what a rule has made of it, for the rules that hold it back."""

    batch: Batch
    step: Step
    mark: TimeMark
    shift: Shift | None = None


def of_time(at: TimeAt) -> tuple[Any, ...]:
    """What decides about a time whatever the elevation: the recipe, its style, and where the time stands."""
    return (at.batch.recipe, at.batch.style, at.step, at.mark)


@dataclass(frozen=True, slots=True)
class TempAt:
    """A temperature of a step."""

    batch: Batch
    step: Step
    mark: TempMark
