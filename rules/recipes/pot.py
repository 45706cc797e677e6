"""Which times of a recipe cook in liquid or steam, and so follow the boiling point."""

from __future__ import annotations

import re
from collections.abc import Iterator

from rules.baking.batch import Batch
from rules.baking.mark import TimeAt, of_time
from rules.baking.styles import is_a, least_cook_min, usual_class
from rules.recipe import Recipe, Step
from rules.recipes import foods, keeping
from rules.recipes.contents import SENTENCE, classes, contents, covered, least_min, says
from rules.recipes.foods import Food, raw_foods
from rules.recipes.pace import (
    BRIEF_MIN,
    HOUR_MIN,
    LONG_MIN,
    SOFT_SOON,
    TENDER,
    WET_TIMES,
    own_foods,
    paced_by,
    till_soft,
    to_the_bite,
)
from rules.remembered import remembered

# What takes up its liquid with stirring, whatever the sentence calls that.
STIRRED = ("rice", "whole_grain", "porridge", "pasta")
BATH = re.compile(r"\b(?:water[- ]bath|bain[- ]marie|hot water|boiling water)\b", re.I)
VAGUE_TIMES = ("other", "mix")
SHORTEST_MIN = 2.0
# Dried beans boiled no longer are soaked quickly, or rid of their poison, which is never shortened.
BEANS_BOILED_MIN = 15.0
# Rice stirred for so long is cooking, whatever the sentence calls it.
LEAST_RICE_MIN = 10.0
# A pot under its lid cooks in so short a time.
LEAST_STEAMED_MIN = 5.0
# "Boil the water and salt 5 minutes": nothing in it softens.
_WATER_ALONE = re.compile(
    r"\b(?:boil|simmer)\s+(?:the\s+)?(?:water|brine|syrup|vinegar|sugar|wine)(?:(?:,|\s+and)\s+(?:the\s+)?\w+)*\s*$",
    re.I,
)
# "Bring slowly to a simmer, about 40 minutes": the burner sets how long that takes.
_BROUGHT = re.compile(
    r"\b(?:bring|brought|come|comes|return)\b[^.;]*?\bto\s+(?:a|the)\s+(?:(?!and\b|then\b|boil|simmer)\w+\s+){0,2}(?:boil|simmer)\b"
    r"(?:(?!\b(?:and|then|boil|simmer|cook|poach|for|let)\b)[^.;])*$",
    re.I,
)
# What a time is told for: "for already cooked or", "if using".
_TOLD_FOR = re.compile(r"\b(?:for|if\s+(?:you\s+)?us(?:e|ing)|using)\s+(?:the\s+)?(?:\w+\s+){0,4}$", re.I)
# "(If you like, set it in a water bath)"
_LEFT_TO_THE_COOK = re.compile(r"\(\s*(?:if|optional|optionally)\b[^()]*\)", re.I)
_AT_WILL = re.compile(r"\W*(?:if|optional|optionally|alternatively|or)\b", re.I)
_UNTIL = re.compile(r"\b(?:until|till)\b", re.I)


@remembered(by=of_time)
def governs(at: TimeAt) -> bool:
    """Whether a time is one of cooking in liquid or steam, or in a bath, and so follows the boiling point.

    It goes by the words of the step and the foods in its pot, whatever the style: a loaf baked with steam is baked, and
    a sauce boiled down goes by the burner, since a pot loses water as fast here.
    """
    batch, one, mark = at.batch, at.step, at.mark
    if mark.high_min <= SHORTEST_MIN:
        return False
    own = own_foods(at)
    if not own and comes_cooked(at):
        return False
    soft = TENDER.match(one.text, mark.end) or any(f.dish_class in SOFT_SOON for f in own)
    if is_a(batch.style, "boiled_down") and not soft:
        return False
    if mark.what == "bake":
        return _bakes_wet(at)
    if mark.what in WET_TIMES:
        return _boils(at, own)
    return _cooks_wet(at, own)


def comes_cooked(at: TimeAt) -> bool:
    """Whether a time is told for what comes cooked: "for canned chickpeas: bake 15 minutes"."""
    said = keeping.spoken_of(at.step, at.mark)
    return any(f.cooked and _TOLD_FOR.search(said[: f.start]) for f in foods.foods_in(said))


def _firm(own: tuple[Food, ...]) -> bool:
    """Whether among foods one is more than what is fried first."""
    return any(f.name not in classes("aromatics") for f in own)


def _boils(at: TimeAt, own: tuple[Food, ...]) -> bool:
    """Whether a time that says boil, simmer, braise, poach or steam is one in which something softens."""
    one, mark = at.step, at.mark
    if mark.what == "boil" and mark.high_min <= BEANS_BOILED_MIN and _beans(at, own):
        return False
    if _WATER_ALONE.search(one.text[: mark.start]) or _BROUGHT.search(one.text[: mark.start]):
        return False
    if mark.what == "steam" and in_the_oven(one):
        return False
    if till_soft(at) or to_the_bite(at):
        return True
    said = keeping.spoken_of(one, mark)
    if _crisps(at):
        return False
    if says("boiled_down").search(said):
        return mark.high_min >= LONG_MIN
    if _firm(own):
        return True
    if says("dissolved").search(said) or _drawn_in_fat(at, said):
        return False
    if mark.high_min <= BRIEF_MIN and says("sauced").search(said):
        return False
    return not (mark.high_min <= BRIEF_MIN and says("thickened").search(one.text))


def _crisps(at: TimeAt) -> bool:
    """Whether a time runs until something is brown, crisp or only warm."""
    waited = _UNTIL.split(keeping.spoken_of(at.step, at.mark), maxsplit=1)[1:]
    return any(says("crisped").search(text) for text in waited)


def _beans(at: TimeAt, own: tuple[Food, ...]) -> bool:
    """Whether dried beans are what a short boil is for."""
    classes = {f.dish_class for f in own} or {f.dish_class for f in raw_foods(at.batch.recipe)}
    return "dried_bean" in classes


def _drawn_in_fat(at: TimeAt, said: str) -> bool:
    """Whether what simmers is fat with something in it."""
    wet = says("liquid").search(said) or contents(at.batch.recipe, at.step, at.mark).liquid
    return not wet and bool(says("fat").search(at.step.text, 0, at.mark.end))


def _cooks_wet(at: TimeAt, own: tuple[Food, ...]) -> bool:
    """Whether a time that only says "cook", or nothing, is one of cooking in liquid."""
    batch, one, mark = at.batch, at.step, at.mark
    if mark.what == "reduce":
        return till_soft(at) and _firm(own)
    if mark.what not in ("cook", *VAGUE_TIMES):
        return False
    said, held = keeping.spoken_of(one, mark), contents(batch.recipe, one, mark)
    if mark.what in VAGUE_TIMES and says("immersed").search(said):
        return bool(own or held.foods)
    if mark.what in VAGUE_TIMES:
        rice = any(f.dish_class in STIRRED for f in (*own, *held.foods)) or usual_class(batch.style) in STIRRED
        return held.wet and rice and mark.low_min >= LEAST_RICE_MIN
    wet = bool(says("wet").search(" ".join(SENTENCE.split(one.text[: mark.start])[-2:]) + said))
    if says("boiled_down").search(said) or (says("fat").search(said) and not says("liquid").search(said)):
        return False
    if not (held.wet or wet):
        return False
    if _crisps(at):
        return False
    soft = till_soft(at) and (_firm(own) or bool(held.foods and not own))
    if held.liquid and (soft or any(f.dish_class in SOFT_SOON for f in own)):
        return True
    steams = wet or bool(covered(Recipe(steps=(one,)), one, mark))
    if _firm(own):
        return steams or mark.low_min >= BRIEF_MIN
    if own:
        return False
    stands = steams and bool(held.foods) and mark.low_min >= LEAST_STEAMED_MIN
    if not is_a(batch.style, "pot"):
        return stands
    return stands or mark.low_min >= (least_cook_min(batch.style) or LEAST_RICE_MIN)


def _bakes_wet(at: TimeAt) -> bool:
    """Whether a time in the oven is a braise under a lid, or a bath: what is raw in it softens in its liquid."""
    batch, one, mark = at.batch, at.step, at.mark
    said = keeping.spoken_of(one, mark)
    if is_a(batch.style, "bath"):
        return _stands_in_bath(one) and "crust" not in said
    if is_a(batch.style, "floured") or not covered(batch.recipe, one, mark):
        return False
    if _crisps(at):
        return False
    if is_a(batch.style, "oven_pot"):
        return paced_by(at) is not None
    held = contents(batch.recipe, one, mark)
    long = raw_foods(batch.recipe) if mark.high_min >= HOUR_MIN else ()
    tough = (f for f in long if f.dish_class in foods.lists("foods")["slow_classes"])
    return held.wet and any(_slow(f) and mark.high_min >= least_min(f.dish_class) for f in (*held.foods, *tough))


def _stands_in_bath(one: Step) -> bool:
    """Whether a step sets its dish in water, and does not leave that to the cook."""
    told = _LEFT_TO_THE_COOK.sub("", one.text)
    return any(BATH.search(said) and not _AT_WILL.match(said) for said in SENTENCE.split(told))


def _slow(food: Food) -> bool:
    """Whether a food in an oven takes its time from the liquid around it: tough meat, dried beans, rice, grains."""
    slow = ("dried_bean", "lentil", "rice", "whole_grain", *foods.lists("foods")["slow_classes"])
    return food.dish_class in slow and not food.cooked


def in_the_oven(one: Step) -> bool:
    """Whether a step names an oven setting or bakes."""
    return any(t.what == "oven" for t in one.temperatures) or bool(re.search(r"\bbak(?:e|ed|ing)\b", one.text, re.I))


def simmered(batch: Batch) -> Iterator[TimeAt]:
    """The times by which a pot stands at a simmer, in order."""
    every = (TimeAt(batch, one, mark) for one in batch.recipe.steps for mark in one.times)
    return (at for at in every if governs(at))
