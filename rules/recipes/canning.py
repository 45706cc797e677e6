"""Recipes for jars that are kept: nothing of their process is converted; a tested recipe's own table decides."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from typing import Any

from rules.baking.batch import Batch
from rules.book import Part, rule
from rules.model import Caution
from rules.physics.units import FT_PER_M, round_to
from rules.preserving import process_times
from rules.preserving.bands import CEILING_FT
from rules.preserving.foods import food
from rules.preserving.pressure import canner_psi
from rules.recipe import Recipe
from rules.recipes.foods import Food, foods_in, lists
from rules.recipes.outcome import Outcome
from rules.recipes.phrases import pattern, says
from rules.remembered import all_of_them, remembered
from rules.said import Said, Words, exact_duration, listed, number, sentences, yes

USUAL_MIN = 20.0
say = sentences("recipes/canning")
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


@remembered(by=all_of_them)
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


@rule("canning.not_converted", "usda-aib-539", "nchfp")
def not_converted(done: Outcome) -> Part:
    """That nothing of a process is converted, which printed band is that of the kitchen, and how to ask for it."""
    batch = done.batch
    pressed = under_pressure(batch.recipe) or low_acid(batch.recipe) is not None
    text = say(
        "not-converted",
        pressed=yes(pressed),
        place=batch.place,
        band=_band(batch, pressed),
        question=question(batch, pressed),
    )
    return Part(cautions=(Caution("stop", text),))


def _band(batch: Batch, pressed: bool) -> Said:
    """What the printed band of the kitchen asks for, or that there is none.

    source: usda-aib-539
    """
    beyond = say("none-printed", ceiling=number(CEILING_FT))
    if pressed:
        dial, weighted = (canner_psi(kind, "low_acid", batch.to_m) for kind in ("dial", "weighted"))
        printed = [(kind, band) for kind, band in (("dial", dial), ("weighted", weighted)) if band]
        if not printed:
            return beyond
        gauges = listed((say("gauge", psi=number(band.value), kind=kind) for kind, band in printed), "or")
        return say("band-of-gauges", band=printed[0][1].said, gauges=gauges)
    short, long = (process_times.added(kind, batch.to_m) for kind in (process_times.SHORT, process_times.LONG))
    if short is None or long is None:
        return beyond
    return say("band-of-times", band=long.usda.said, added=_added(short, long))


def _added(short: process_times.Added, long: process_times.Added) -> Words:
    if not long.most_min:
        return say("nothing")
    if short.most_min == long.most_min:
        return say("one-time", time=exact_duration(long.most_min))
    return say("two-times", long=exact_duration(long.most_min), short=exact_duration(short.most_min))


def question(batch: Batch, pressed: bool) -> Said:
    """The question that gives the printed addition, in the words of the recipe."""
    food, place = _food(batch.recipe), _where(batch)
    if pressed:
        return say("question-of-pressure", food=food, place=place)
    minutes = next((t.high_min for one in batch.recipe.steps for t in one.times if t.what == "process"), None)
    return say("question-of-time", food=food, place=place, minutes=number(minutes or USUAL_MIN))


def _where(batch: Batch) -> Said:
    """The elevation as the cook would type it: in one unit."""
    if abs(batch.to_m) < 1:
        return say("sea-level")
    if batch.units == "us":
        return say("feet", feet=number(round_to(batch.to_m * FT_PER_M, 10)))
    return say("metres", metres=number(round_to(batch.to_m, 1)))


def _food(recipe: Recipe) -> Words:
    """What is canned, by the name the lexicon has for it: a jam or pickle by the title, else the first thing listed."""
    named = [food.name for food in foods_in(recipe.title) if food.dish_class in NAMED_BY_TITLE]
    return next(iter((*named, *(food.name for food in _canned(recipe)))), say("the-jars"))


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
