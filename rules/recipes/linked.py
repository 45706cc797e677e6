"""Figures that point into a time of the pot, "after 4 hours", "in the last 20 minutes", go along with that time."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace
from functools import cache

from rules import book
from rules.baking.mark import TimeAt
from rules.book import Part, rule
from rules.recipe import Step, TimeMark
from rules.recipes import pace, wet_dish
from rules.recipes.phrases import any_phrase, pattern
from rules.said import sentences
from rules.tables import read_toml

# The roles that a pointing figure may be read as, and those of the times it can point into.
POINTING = (
    "other",
    "relative",
    "cook",
    "boil",
    "simmer",
    "braise",
    "poach",
    "steam",
    "slow_cook",
    "pressure",
    "mix",
    "reduce",
)
WAITED = ("hold", "rest")
POINTED_AT = ("cook", "bake", "boil", "simmer", "braise", "poach", "steam", "slow_cook", "pressure")
# How many steps back a figure may point.
STEPS_BACK = 2
# How many signs behind a figure may say that it goes by something else.
TAIL = 40
say = sentences("recipes/linked")


@cache
def _before() -> re.Pattern[str]:
    phrases = any_phrase(read_toml("lexicon/recipe_pots.toml")["linked"]["before"])
    return re.compile(rf"{phrases}\W*(?:about\s+|around\s+|approximately\s+)?$", re.I)


@cache
def _unless() -> re.Pattern[str]:
    return pattern(tuple(read_toml("lexicon/recipe_pots.toml")["linked"]["unless"]))


def points(one: Step, mark: TimeMark) -> bool:
    """Whether a figure points into another time by the words right before it.

    >>> step = Step(text="After 20 minutes add the peas.")
    >>> points(step, TimeMark(6, 16, 20, 20, "other"))
    True
    """
    lead, tail = one.text[: mark.start], one.text[mark.end : mark.end + TAIL]
    return mark.what in POINTING and bool(_before().search(lead)) and not _unless().match(tail.lstrip(" -"))


@rule("wet.linked", "common-practice")
def linked(at: TimeAt) -> Part | None:
    """A figure that points into a time of the pot goes along in proportion; what goes in last, by its own pace."""
    if not points(at.step, at.mark) or _ends_a_wait(at):
        return None
    if at.mark.what == "relative" and (own := pace.slowest({f.dish_class for f in pace.own_foods(at)})):
        part = wet_dish.simmering(at.batch, own) if next(_moved(at), None) else None
        return part and replace(part, because=say("own-pace"))
    return next((replace(part, because=say("goes-along")) for part in _moved(at)), None)


def _ends_a_wait(at: TimeAt) -> bool:
    """Whether a figure says once more how long was waited just before: "Rest 10 minutes. After 10 minutes, open"."""
    steps = at.batch.recipe.steps
    place = next((i for i, step in enumerate(steps) if step is at.step), 0)
    here = [t for t in at.step.times if t.end <= at.mark.start]
    before = here or [t for step in steps[max(0, place - 1) : place] for t in step.times]
    return bool(before) and before[-1].what in WAITED and before[-1].high_min == at.mark.high_min


def _moved(at: TimeAt) -> Iterator[Part]:
    """What the times that a figure may point into come to, of those that move."""
    for other in _candidates(at):
        found = next((part for _, part in book.on_recipe("times", other) if part.shift is not None), None)
        if found and found.shift and found.shift.what == "time" and not found.shift.stays:
            yield found


def _candidates(at: TimeAt) -> Iterator[TimeAt]:
    """The times a figure may point into, the likeliest first: of its own step, then of those before."""
    steps = at.batch.recipe.steps
    place = next((i for i, step in enumerate(steps) if step is at.step), 0)
    near = [t for t in at.step.times if t is not at.mark]
    near.sort(key=lambda t: (t.start > at.mark.start, -t.start if t.start < at.mark.start else t.start))
    told = [(at.step, t) for t in near]
    told += [(one, t) for one in reversed(steps[max(0, place - STEPS_BACK) : place]) for t in reversed(one.times)]
    for one, mark in told:
        if mark.what in POINTED_AT and mark.high_min >= at.mark.high_min and not points(one, mark):
            yield TimeAt(at.batch, one, mark)
