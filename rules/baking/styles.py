"""The styles a recipe may be of, and what the rules ask about each: data/lexicon/recipe_styles.toml."""

from __future__ import annotations

from functools import cache
from typing import Any

from rules import tables
from rules.said import Said, sentences

WORDS = "lexicon/recipe_styles.toml"
OTHER = "other"
# What rises in the oven and is like no style that is known.
UNKNOWN_BAKE = "bake"
# The style of what yeast raises in the oven and is like nothing else.
YEASTED = "yeast_bread"
say = sentences("baking/styles")


@cache
def rows() -> dict[str, dict[str, Any]]:
    """Every style that is known, by its id, in the order of the file."""
    return {row["id"]: row for row in tables.read_toml(WORDS)["style"]}


def ids() -> tuple[str, ...]:
    """Every style that can be recognised or told, `other` last."""
    return (*rows(), OTHER)


def is_a(style: str, what: str) -> bool:
    """Whether a style is what the file says under `is`; one that is not known is nothing.

    >>> is_a("braise", "pot"), is_a("cookie", "pot"), is_a("other", "batter")
    (True, False, False)
    """
    return what in rows().get(style, {}).get("is", ())


@cache
def _also() -> dict[str, str]:
    return {name: style for style, row in rows().items() for name in row.get("also", ())}


def style_of(dish_class: str) -> str:
    """The style whose advice a dish class follows; the class itself where none is named for it.

    >>> style_of("flatbread"), style_of("general"), style_of("pie")
    ('yeast_bread', 'layer_cake', 'pie')
    """
    return _also().get(dish_class, dish_class)


def is_baked(dish_class: str | None) -> bool:
    """Whether a dish of a class is of flour and goes into the oven.

    >>> is_baked("layer_cake"), is_baked("braise"), is_baked(None)
    (True, False, False)
    """
    return dish_class is not None and is_a(style_of(dish_class), "floured")


def usual_class(style: str) -> str:
    """The dish class whose softening sets the pace of a style; `general` where it has none.

    >>> usual_class("rice"), usual_class("layer_cake")
    ('rice', 'general')
    """
    return str(rows().get(style, {}).get("class", "general"))


def least_cook_min(style: str) -> float | None:
    """What is cooked in a pot of this style for less [min] is fried, not simmered; None where nothing is too short."""
    found = rows().get(style, {}).get("least_cook_min")
    return None if found is None else float(found)


def called(style: str) -> Said:
    """What a recipe of a style is called: "a layer cake"."""
    return say("called", style=style)
