"""What stands in the pot of a recipe: which of its times cook in liquid, and which food sets their pace."""

from __future__ import annotations

import re

from rules.baking.batch import Batch
from rules.baking.mark import TimeAt
from rules.baking.styles import is_a, least_cook_min, usual_class
from rules.physics import kinetics
from rules.recipe import Step
from rules.recipes import foods, keeping
from rules.recipes.foods import raw_foods

# What a soup is when its title calls it so.
POURED = ("stock", "sauce")
# What cooks in a pot for a short while, and is softened all the same rather than fried.
SOFT_SOON = ("pasta", "noodle", "rice", "whole_grain", "dumpling", "starchy_root", "lentil")
BATH = re.compile(r"\b(?:water[- ]bath|bain[- ]marie|hot water|boiling water)\b", re.I)
# A pot that keeps its steam, in the oven or on the stove.
COVERED = re.compile(r"\b(?:covered|cover|lid|dutch oven|foil|tightly|casserole)\b", re.I)
UNCOVERED = re.compile(r"\buncover(?:ed)?\b", re.I)
# Words by which "cook 20 minutes" is seen to be cooking in liquid.
IN_LIQUID = re.compile(
    r"\b(?:boil(?:s|ing|ed)?|simmer(?:s|ing|ed)?|water|stock|broth|liquid|cover(?:ed)?|(?:low|gentle) heat|absorbed)\b",
    re.I,
)
WET_TIMES = ("boil", "simmer", "braise", "poach", "steam")
SHORTEST_MIN = 3.0
# Dried beans boiled no longer are soaked quickly, or rid of their poison, which is never shortened.
BEANS_BOILED_MIN = 15.0
# Boiled for so long they are near done, and what follows in the oven is for the rest of the dish.
BEANS_SOFT_MIN = 30.0
# Rice stirred for so long is cooking, whatever the sentence calls it.
LEAST_RICE_MIN = 10.0
# "Simmer the peel 2 hours until soft": softening, in whatever is boiled down afterwards.
TENDER = re.compile(r"[^.;]*?\b(?:until|till)\b[^.;]*?\b(?:soft|tender)\b(?![- ]ball)", re.I)
# "Boil the water and salt 5 minutes": nothing in it softens.
_WATER_ALONE = re.compile(
    r"\b(?:boil|simmer)\s+(?:the\s+)?(?:water|brine|syrup|vinegar|sugar|wine)(?:(?:,|\s+and)\s+(?:the\s+)?\w+)*\s*$",
    re.I,
)


def dish_class(batch: Batch) -> str | None:
    """The dish class whose softening sets the pace of the pot; None where all of it comes cooked.

    Of what is cooked from raw the slowest decides: dried beans, then meat full of collagen.
    """
    if batch.style == "soup" and (named := _first_of(POURED, batch.recipe.title)):
        return named
    if not is_a(batch.style, "slow_pot"):
        return usual_class(batch.style)
    raw = {food.dish_class for food in raw_foods(batch.recipe)}
    slow = ("dried_bean", "lentil", *foods.lists("foods")["slow_classes"])
    if found := next((name for name in slow if name in raw), None):
        return found
    if meats := raw & set(foods.lists("foods")["classes"]):
        return min(meats, key=lambda name: (kinetics.softening(name).z_k, name))
    if batch.recipe.ingredients and batch.style == "beans":
        return None
    return usual_class(batch.style) if not batch.recipe.ingredients else "general"


def paced_by(at: TimeAt) -> str | None:
    """The dish class that sets the pace of one time: the slowest food its own clause names, else that of the pot."""
    batch, one, mark = at.batch, at.step, at.mark
    whole = dish_class(batch)
    own = [f for f in foods.spoken(batch.recipe, keeping.spoken_of(one, mark)) if not f.cooked]
    own_classes = {f.dish_class for f in own if foods.softens(f) and f.dish_class not in ("soup", "stock", "sauce")}
    if not own_classes and whole == "dried_bean" and mark.what in ("bake", "braise") and _softened(batch, one):
        return "general"
    if whole in own_classes or not own_classes:
        return whole
    return min(own_classes, key=lambda name: (kinetics.softening(name).z_k, name))


def _softened(batch: Batch, one: Step) -> bool:
    """Whether dried beans have had their boil in the steps before."""
    before = batch.recipe.steps[: batch.recipe.steps.index(one)]
    return any(t.what in WET_TIMES and t.high_min >= BEANS_SOFT_MIN for step in before for t in step.times)


def governs(at: TimeAt) -> bool:
    """Whether a time is one of cooking in liquid or steam, or in a bath, and so follows the boiling point.

    A loaf baked with steam is baked; a sauce boiled down goes by the burner, since a pot loses water as fast here.
    """
    batch, one, mark = at.batch, at.step, at.mark
    softens = not is_a(batch.style, "boiled_down") or TENDER.match(one.text, mark.end)
    if mark.low_min < SHORTEST_MIN or not softens:
        return False
    said = keeping.spoken_of(one, mark)
    if mark.what in WET_TIMES:
        brief = mark.what == "boil" and mark.high_min <= BEANS_BOILED_MIN and dish_class(batch) == "dried_bean"
        alone = _WATER_ALONE.search(one.text[: mark.start])
        return not (brief or alone or (mark.what == "steam" and in_the_oven(one)))
    if mark.what == "bake":
        if is_a(batch.style, "bath"):
            return bool(BATH.search(one.text)) and "crust" not in said
        return is_a(batch.style, "oven_pot") and bool(COVERED.search(said)) and not UNCOVERED.search(said)
    told = mark.what == "cook" or (mark.what == "other" and batch.style == "rice" and mark.low_min >= LEAST_RICE_MIN)
    if not told or not is_a(batch.style, "pot") or not IN_LIQUID.search(one.text[: mark.end]):
        return False
    least_min = least_cook_min(batch.style) or SHORTEST_MIN
    return mark.low_min >= least_min or _first_of(SOFT_SOON, one.text[: mark.start]) is not None


def _first_of(classes: tuple[str, ...], text: str) -> str | None:
    """The first of these classes of which a text names a food."""
    return next((food.dish_class for food in foods.foods_in(text) if food.dish_class in classes), None)


def in_the_oven(one: Step) -> bool:
    """Whether a step names an oven setting or bakes."""
    return any(t.what == "oven" for t in one.temperatures) or bool(re.search(r"\bbak(?:e|ed|ing)\b", one.text, re.I))


def minutes(batch: Batch) -> float:
    """Minutes the pot stands at a simmer by the recipe, all its steps together [min]."""
    marks = [t for one in batch.recipe.steps for t in one.times if governs(TimeAt(batch, one, t))]
    return sum((t.low_min + t.high_min) / 2 for t in marks)
