"""Recipes for jars that are kept: nothing of their process is converted; a tested recipe's own table decides."""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import cache
from typing import Any

from rules.baking.batch import Batch
from rules.model import Caution
from rules.preserving import process_times
from rules.preserving.bands import CEILING_FT
from rules.preserving.foods import food
from rules.preserving.pressure import canner_psi
from rules.recipe import Recipe
from rules.recipes.foods import Food, foods_in, lists
from rules.recipes.phrases import pattern, says
from rules.say import exact_duration, number

SOURCES = ("usda-aib-539", "nchfp")
USUAL_MIN = 20.0
NOT_CONVERTED = "A recipe for canning is not converted"
NAMED_BY_TITLE = ("jam", "pickle")


@dataclass(frozen=True, slots=True)
class _Words:
    surely: tuple[str, ...]
    together: tuple[tuple[str, ...], ...]
    not_together: tuple[str, ...]
    unless_cold: tuple[str, ...]
    cold: tuple[str, ...]
    masked: tuple[str, ...]
    pressure: tuple[str, ...]
    acids: tuple[str, ...]


@cache
def _words() -> _Words:
    told: dict[str, Any] = lists("canning")
    groups = tuple(tuple(group) for group in told["together"])
    return _Words(together=groups, **{k: tuple(told[k]) for k in _Words.__slots__ if k != "together"})


def is_canning(recipe: Recipe) -> bool:
    """Whether a recipe seals jars that are kept without cold.

    A jam that is cooked and put in the refrigerator is none, nor is a custard baked in jars.

    >>> from rules.recipe import Step
    >>> is_canning(Recipe(steps=(Step(text="Process half-pints 10 minutes in a boiling-water canner."),)))
    True
    >>> is_canning(Recipe(steps=(Step(text="Process 30 seconds, ladle into a jar and refrigerate."),)))
    False
    """
    words, every = _words(), "\n".join(_texts(recipe))
    if says(every, words.surely) or any(_together(text) for text in _texts(recipe)):
        return True
    kept = pattern(words.masked).sub(" ", every)
    return says(every, words.unless_cold) and not says(kept, words.cold)


def _texts(recipe: Recipe) -> tuple[str, ...]:
    return (recipe.title, *(one.text for one in recipe.steps), *recipe.notes)


def _together(text: str) -> bool:
    words = _words()
    return all(says(text, group) for group in words.together) and not says(text, words.not_together)


def under_pressure(recipe: Recipe) -> bool:
    """Whether its jars stand under pressure."""
    return any(one.pressures for one in recipe.steps) or says("\n".join(_texts(recipe)), _words().pressure)


def caution(batch: Batch) -> Caution:
    """That nothing of the process was converted, which printed band is that of the kitchen, and how to ask for it.

    source: usda-aib-539
    """
    pressed = under_pressure(batch.recipe) or low_acid(batch.recipe) is not None
    stays = "times and pressures stay" if pressed else "process times stay"
    text = (
        f"{NOT_CONVERTED}: its {stays} as written. A tested recipe's own table decides at "
        f"{batch.here}: {_band(batch, pressed)} Ask for it with the time your tested recipe prints: "
        f'simmerline ask "{question(batch, pressed)}".'
    )
    return Caution("stop", text, SOURCES)


def told(caution: Caution) -> bool:
    """Whether a caution is the one that a recipe for canning is not converted."""
    return caution.text.startswith(NOT_CONVERTED)


def _band(batch: Batch, pressed: bool) -> str:
    if pressed:
        dial, weighted = (canner_psi(kind, "low_acid", batch.to_m) for kind in ("dial", "weighted"))
        printed = [(kind, band) for kind, band in (("dial", dial), ("weighted", weighted)) if band]
        if not printed:
            return _beyond()
        said = " or ".join(f"{number(band.value)} psi on a {kind} gauge" for kind, band in printed)
        return f"the printed band {printed[0][1].words} has {said} for low-acid food."
    short, long = (process_times.added(kind, batch.to_m) for kind in (process_times.SHORT, process_times.LONG))
    if short is None or long is None:
        return _beyond()
    return f"the printed band {long.usda.words} adds {_added(short, long)}."


def _added(short: process_times.Added, long: process_times.Added) -> str:
    if not long.most_min:
        return "nothing"
    if short.most_min == long.most_min:
        return exact_duration(long.most_min)
    return (
        f"{exact_duration(long.most_min)} to a process of 20 min or more and {exact_duration(short.most_min)} to a "
        "shorter one"
    )


def _beyond() -> str:
    return f"none is printed above {number(CEILING_FT)} ft."


def question(batch: Batch, pressed: bool) -> str:
    """The question that gives the printed addition, in the words of the recipe."""
    food = _food(batch.recipe)
    where = re.sub(r"\s*\(.*\)", "", batch.here)
    if pressed:
        return f"pressure-can {food} at {where}"
    minutes = next((t.high_min for one in batch.recipe.steps for t in one.times if t.what == "process"), None)
    return f"process {food} in a water bath at {where}, the tested recipe says {number(minutes or USUAL_MIN)} minutes"


def _food(recipe: Recipe) -> str:
    """What is canned, by the name the lexicon has for it: a jam or pickle by the title, else the first thing listed."""
    named = [food.name for food in foods_in(recipe.title) if food.dish_class in NAMED_BY_TITLE]
    return next(iter((*named, *(food.name for food in _canned(recipe)))), "the jars")


def _canned(recipe: Recipe) -> tuple[Food, ...]:
    """The foods of the list, else of the title, in order."""
    listed = [food for line in recipe.ingredients for food in foods_in(line.line)] or foods_in(recipe.title)
    return tuple(food for food in listed if food.dish_class)


def low_acid(recipe: Recipe) -> str | None:
    """The first food of a recipe, where it is too low in acid for boiling water and nothing makes it acid; else None.

    source: usda-aib-539

    >>> from rules.recipe import IngredientLine
    >>> [low_acid(Recipe(ingredients=(IngredientLine(line=f"2 lb {x}", item=x),))) for x in ("green beans", "peaches")]
    ['green beans', None]
    """
    if any(says(line.line, _words().acids) for line in recipe.ingredients):
        return None
    first = _canned(recipe)[:1]
    return next((f.name for f in first if food(f.name, f.dish_class).kind in ("low_acid", "untested")), None)
