"""A change with its size, and what every way of sizing one needs."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from rules.baking.bands import Span
from rules.baking.change import Change
from rules.mending.causes import Cause
from rules.mending.failed_dish import DOWN
from rules.said import Words

COMMON = ("common-practice",)


@dataclass(frozen=True, slots=True)
class Sized:
    """A change with its size, and the sentence that tells a cook to make it."""

    change: Change
    line: Words


def change_of(cause: Cause, *, sources: tuple[str, ...] = (), **figures: Any) -> Change:
    """The change of a cause. figures: from_value, to_value and the rest of a Change, at, item."""
    return Change(
        what=cause.what, way=cause.way, rule=cause.rule, because=cause.because,
        sources=tuple(dict.fromkeys((cause.source, *sources))), **{"at": "recipe", **figures},
    )  # fmt: skip


def sign(cause: Cause) -> int:
    """Whether the change goes up, 1, or down, -1."""
    return -1 if cause.way in DOWN else 1


def trial(cause: Cause) -> Span:
    """A first trial, as a ratio to what it was."""
    ratio = 1 + sign(cause) * cause.step
    return Span(ratio, ratio, ratio)
