"""What the steps of a recipe have put into its pot by a time, and whether a lid is on it."""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import cache

from rules.baking.part_names import named
from rules.recipe import IngredientLine, Recipe, Step, TimeMark
from rules.recipes import foods
from rules.recipes.foods import Food
from rules.recipes.phrases import pattern
from rules.remembered import all_of_them, remembered
from rules.tables import read_toml

WORDS = "lexicon/recipe_pots.toml"
# What takes up the liquid it is given.
GRAINS = ("rice", "whole_grain", "porridge")
SENTENCE = re.compile(r"(?<=[.;!?])\s+|\n+")
# One deed or one food of a list: what is said of a pot is told one after the other.
_DEED = re.compile(r"[.;!?,\n]+\s*|\s+(?:and|then)\s+")


@cache
def says(name: str) -> re.Pattern[str]:
    """The phrases of a list of the lexicon of pots."""
    return pattern(tuple(read_toml(WORDS)["pot"][name]))


@cache
def classes(name: str) -> frozenset[str]:
    """A list of the lexicon of pots as a set: dish classes, or names of foods."""
    return frozenset(read_toml(WORDS)["pot"][name])


def least_min(dish_class: str) -> float:
    """The shortest time in which a class is what softens [min].

    >>> least_min("collagen_cut"), least_min("rice")
    (40.0, 0.0)
    """
    return float(read_toml(WORDS)["least_min"].get(dish_class, 0.0))


def softens(food: Food) -> bool:
    """Whether a food softens at a pace of its own in a pot."""
    return foods.softens(food) and food.dish_class not in classes("never")


def raw_in(recipe: Recipe, text: str) -> tuple[Food, ...]:
    """The raw foods that a text of a recipe names, and that soften."""
    named = (f for f in foods.spoken(recipe, text) if text[f.start : f.end].lower() not in classes("no_food"))
    return tuple(f for f in named if not f.cooked and softens(f))


@dataclass(frozen=True, slots=True)
class Contents:
    """What stands in the pot at a time.

    foods: raw when they went in, and not cooked since; liquid: one was named; wet: the same, or it boils or simmers
    """

    foods: tuple[Food, ...] = ()
    liquid: bool = False
    wet: bool = False


@remembered(by=all_of_them)
def contents(recipe: Recipe, one: Step, mark: TimeMark) -> Contents:
    """What the steps up to a time have put into its pot: drained or taken out it is gone."""
    held = Contents()
    for step in recipe.steps[: place(recipe, one) + 1]:
        if _stands_apart(step.component, one.component):
            continue
        text = step.text[: mark.start] if step is one else step.text
        for sentence in SENTENCE.split(text):
            held = _after(recipe, held, sentence)
    return held


def _stands_apart(part: str, other: str) -> bool:
    """Whether two parts are made in pots of their own; what is only a heading over doughs and bakes tells of no pot."""
    baked = any(kind.baked for name in (part, other) if (kind := named(name)))
    return part != other and not baked


def place(recipe: Recipe, one: Step) -> int:
    """The place of a step in its recipe, from zero."""
    return next((i for i, step in enumerate(recipe.steps) if step is one), len(recipe.steps) - 1)


def _after(recipe: Recipe, held: Contents, sentence: str) -> Contents:
    """The pot after one sentence."""
    if says("aside").search(sentence):
        return held
    if says("another").search(sentence):
        held = Contents()
    for deed in _DEED.split(sentence):
        named = raw_in(recipe, deed)
        if says("emptied").search(deed):
            held = _taken_out(held, named, deed)
            continue
        liquid = held.liquid or bool(says("liquid").search(deed))
        held = Contents((*held.foods, *named), liquid, held.wet or liquid or bool(says("wet").search(deed)))
    return held


def _taken_out(held: Contents, named: tuple[Food, ...], deed: str) -> Contents:
    """The pot without what a deed takes out of it; without anything where it names no food."""
    if not named:
        return held if says("poured_off").search(deed) else Contents()
    gone = {f.name for f in named}
    left = tuple(f for f in held.foods if f.name not in gone)
    return Contents(left, held.liquid, held.wet) if left else Contents()


@remembered(by=all_of_them)
def covered(recipe: Recipe, one: Step, mark: TimeMark) -> bool | None:
    """Whether the lid is on at a time, by the last word about it; None where nothing is said."""
    here = place(recipe, one)
    end = next((m.start() for m in SENTENCE.finditer(one.text, mark.end)), len(one.text))
    said = f"{recipe.steps[here - 1].text if here else ''}\n{one.text[:end]}"
    on, off = ([m.end() for m in says(name).finditer(said)] for name in ("covered", "uncovered"))
    return max(on, default=-1) > max(off, default=-1) if on or off else None


@remembered(by=all_of_them)
def drained(recipe: Recipe, one: Step, mark: TimeMark) -> bool:
    """Whether what cooks for a time is drained after it: boiled in plenty of water, of which any amount will do."""
    here = place(recipe, one)
    then = "\n".join((one.text[mark.end :], *(step.text for step in recipe.steps[here + 1 : here + 2])))
    return bool(says("drained").search(then))


def poured_in(line: IngredientLine) -> bool:
    """Whether a liquid is what the pot simmers in: no cream that finishes it, no water to soak or boil something in."""
    return line.role != "dairy" and not says("not_poured").search(line.line)


def is_grain(line: IngredientLine) -> bool:
    """Whether an ingredient is a grain that cooks from raw."""
    return not foods.ready(line) and any(f.dish_class in GRAINS and not f.cooked for f in foods.foods_in(line.line))
