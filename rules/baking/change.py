"""One change to a recipe, as a baker would write it in the margin, and what becomes of one figure of a step."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal, get_args

from rules.baking.bands import Span
from rules.model import Sentence

What = Literal[
    "leavening", "yeast", "sugar", "liquid", "flour", "egg", "fat", "salt", "oven", "time", "temperature",
    "sugar_temp", "fat_temp", "pressure", "proof", "pan", "method",
]  # fmt: skip
Way = Literal["less", "more", "hotter", "cooler", "shorter", "longer", "same", "different"]

WHATS: tuple[str, ...] = get_args(What)
WAYS: tuple[str, ...] = get_args(Way)


@dataclass(frozen=True, slots=True, kw_only=True)
class Change:
    """What changes, where, from what to what, and why.

    at: "ingredient 3" and "step 2" count from one, in the order of the recipe; "recipe" for the whole
    from_value, to_value, to_low, to_high: in from_unit and to_unit; None where the change is not a figure
    item: the ingredient's name, "" where it is not about one
    rule, sources: the rule's id and ids of data/sources.toml; a rule of the book that leaves them out has its own
    """

    what: What
    way: Way
    at: str
    from_value: float | None = None
    from_unit: str | None = None
    to_value: float | None = None
    to_low: float | None = None
    to_high: float | None = None
    to_unit: str | None = None
    rule: str = ""
    because: Sentence
    sources: tuple[str, ...] = ()
    item: str = ""


@dataclass(frozen=True, slots=True)
class Shift:
    """What a rule does to a time or temperature of a step.

    span: a factor for a time, a difference [K] for a temperature
    stays: it is listed as the same, with the reason
    """

    span: Span
    what: What
    stays: bool = False


def adds(change: Change) -> bool:
    """Whether a change puts something in that the recipe does not list.

    >>> adds(Change(what="pan", way="less", at="recipe", to_value=0.5, rule="baking.pan", because="", sources=()))
    False
    """
    return change.at == "recipe" and bool(change.item) and bool(change.to_value) and change.way == "more"


def ingredient(index: int) -> str:
    """Name of a place in the recipe, from an index that counts from zero.

    >>> ingredient(2)
    'ingredient 3'
    """
    return f"ingredient {index + 1}"


def step(index: int) -> str:
    """Name of a step, from an index that counts from zero.

    >>> step(0)
    'step 1'
    """
    return f"step {index + 1}"
