"""Which food sets the pace of a time: what its words name, else what went into the pot before."""

from __future__ import annotations

import re
from collections.abc import Iterable

from rules.baking.batch import Batch
from rules.baking.mark import TimeAt, of_time
from rules.baking.styles import is_a, usual_class
from rules.physics import kinetics
from rules.recipe import Step, TimeMark
from rules.recipes import foods, keeping
from rules.recipes.contents import SENTENCE, classes, contents, least_min, place, raw_in, says, softens
from rules.recipes.foods import Food, raw_foods
from rules.remembered import remembered

# how many times of one deed may stand in a row
MOST_BACK = 8
# What a soup is when its title calls it so.
POURED = ("stock", "sauce")
# What cooks in a pot for a short while, and is softened all the same rather than fried.
SOFT_SOON = (
    "pasta", "noodle", "rice", "whole_grain", "porridge", "dumpling", "starchy_root", "root_vegetable", "lentil",
)  # fmt: skip
WET_TIMES = ("boil", "simmer", "braise", "poach", "steam")
# Boiled for so long they are near done, and what follows in the oven is for the rest of the dish.
BEANS_SOFT_MIN = 30.0
# What is boiled for so long is cooked from there on.
LEAST_BOILED_MIN = 5.0
SALT = "salt"
# From so long on, what went into the pot before counts beside what the sentence names.
LONG_MIN = 40.0
# From so long on, what is tough in a recipe is in the pot, wherever it went in.
HOUR_MIN = 60.0
# A time no longer than this with nothing in it that softens is for the liquid.
BRIEF_MIN = 15.0
# "Simmer the peel 2 hours until soft": softening, in whatever is boiled down afterwards.
TENDER = re.compile(r"[^.;]*?\b(?:until|till)\b[^.;]*?\b(?:soft|tender)\b(?![- ]ball)", re.I)


# What is boiled until it is just firm, whatever its shape is called.
TO_THE_BITE, BITTEN = re.compile(r"\bal dente\b", re.I), "pasta"


def dish_class(batch: Batch) -> str | None:
    """The dish class whose softening sets the pace of the whole pot; None where all of it comes cooked.

    Of what is cooked from raw the slowest decides: dried beans, then meat full of collagen.
    """
    if batch.style == "soup" and (named := first_of(POURED, batch.recipe.title)):
        return named
    if not is_a(batch.style, "slow_pot"):
        return usual_class(batch.style)
    raw = {food.dish_class for food in raw_foods(batch.recipe)}
    slow = ("dried_bean", "lentil", *foods.lists("foods")["slow_classes"])
    if found := next((name for name in slow if name in raw), None):
        return found
    if meats := raw & set(foods.lists("foods")["classes"]):
        return slowest(meats)
    if batch.recipe.ingredients and batch.style == "beans":
        return None
    return usual_class(batch.style) if not batch.recipe.ingredients else "general"


def slowest(classes: Iterable[str]) -> str | None:
    """Of some classes the one that cooler water slows most; None of none.

    >>> slowest(["poultry_pieces", "starchy_root"])
    'starchy_root'
    """
    return min(classes, key=lambda name: (kinetics.softening(name).z_k, name), default=None)


@remembered(by=of_time)
def paced_by(at: TimeAt) -> str | None:
    """The dish class that sets the pace of one time: of what its words name, else of what went into the pot before.

    A class counts that softens in the time given: no cut full of collagen in ten minutes.
    """
    batch, one, mark = at.batch, at.step, at.mark
    if is_a(batch.style, "bath") and mark.what == "bake":
        return usual_class(batch.style)
    own, poured = own_foods(at), _poured(batch)
    if poured and mark.high_min >= max(LONG_MIN, least_min(poured)):
        return poured
    if own and (mark.high_min < LONG_MIN or _alone(at, own)) and (found := of_foods(own, mark)):
        return found
    if not own and to_the_bite(at):
        return BITTEN
    softened = mark.what in ("bake", "braise") and _softened(batch, one)
    whole = tuple(f for f in raw_foods(batch.recipe) if not (softened and f.dish_class == "dried_bean"))
    held = whole if mark.what == "slow_cook" else contents(batch.recipe, one, mark).foods
    held = tuple(f for f in held if not (softened and f.dish_class == "dried_bean"))
    if mark.high_min >= HOUR_MIN:
        held += tuple(f for f in whole if f.dish_class in foods.lists("foods")["slow_classes"])
    held = tuple(f for f in held if f.dish_class not in classes("beside")) or held
    if found := of_foods((*own, *held), mark):
        return found
    unknown = kinetics.GENERAL if till_soft(at) else None
    if mark.high_min <= BRIEF_MIN:
        return _brief(at) or unknown
    if not batch.recipe.ingredients:
        return (dish_class(batch) if is_a(batch.style, "pot") else of_foods(whole, mark)) or unknown
    if softened or (is_a(batch.style, "pot") and dish_class(batch)):
        unknown = kinetics.GENERAL
    return of_foods((f for f in whole if f.dish_class not in classes("beside")), mark) or unknown


def _poured(batch: Batch) -> str | None:
    """What a soup is when its title calls it a stock or a sauce; None for another."""
    return first_of(POURED, batch.recipe.title) if batch.style == "soup" else None


def _brief(at: TimeAt) -> str | None:
    """What a short boil is for where neither its words nor the pot tell: what the recipe has that boils so soon."""
    batch, mark, said = at.batch, at.mark, keeping.spoken_of(at.step, at.mark)
    known = [f for f in foods.foods_in(said) if not says("liquid").search(f.name) and f.name != SALT]
    if mark.what not in WET_TIMES or known:
        return None
    soon = of_foods((f for f in raw_foods(batch.recipe) if f.dish_class in SOFT_SOON), mark)
    named = usual_class(batch.style)
    return soon or (named if is_a(batch.style, "pot") and named in SOFT_SOON else None)


@remembered(by=of_time)
def own_foods(at: TimeAt) -> tuple[Food, ...]:
    """The raw foods that the words of a time name, and that soften; what has boiled before is cooked by then.

    A second time of the same deed is of the same food: "poach the eggs 3 minutes for soft, 4 minutes for firm yolks".
    back: how many times before it may be gone by
    """
    named = raw_in(at.batch.recipe, keeping.spoken_of(at.step, at.mark))
    for _ in range(MOST_BACK):
        if named or not (before := _same_deed(at)):
            break
        at = TimeAt(at.batch, at.step, before)
        named = raw_in(at.batch.recipe, keeping.spoken_of(at.step, at.mark))
    return tuple(f for f in named if not _boiled_before(at, f))


def _same_deed(at: TimeAt) -> TimeMark | None:
    """The time right before one in its sentence, where both are of the same deed."""
    earlier = [t for t in at.step.times if t.end <= at.mark.start]
    last = earlier[-1] if earlier else None
    apart = last is None or SENTENCE.search(at.step.text, last.end, at.mark.start)
    return None if apart or last is None or last.what != at.mark.what else last


def _boiled_before(at: TimeAt, food: Food) -> bool:
    """Whether a grain, noodle or potato was boiled in a step before."""
    if food.dish_class not in classes("once"):
        return False
    recipe = at.batch.recipe
    return any(
        t.what in (*WET_TIMES, "cook", "pressure")
        and t.high_min >= LEAST_BOILED_MIN
        and any(food.name == f.name for f in foods.spoken(recipe, keeping.spoken_of(one, t)))
        for one in recipe.steps[: place(recipe, at.step)]
        for t in one.times
    )


def _alone(at: TimeAt, own: tuple[Food, ...]) -> bool:
    """Whether what a sentence cooks stands right behind its verb: "boil the potatoes"."""
    said = keeping.spoken_of(at.step, at.mark)
    return any(keeping.ALONE.search(said[: food.start]) for food in own)


def of_foods(held: Iterable[Food], mark: TimeMark) -> str | None:
    """The class that sets the pace among foods, of those that soften in the time given."""
    return slowest({f.dish_class for f in held if softens(f) and mark.high_min >= least_min(f.dish_class)})


def _softened(batch: Batch, one: Step) -> bool:
    """Whether dried beans have had their boil in the steps before."""
    before = batch.recipe.steps[: place(batch.recipe, one)]
    return any(t.what in WET_TIMES and t.high_min >= BEANS_SOFT_MIN for step in before for t in step.times)


def till_soft(at: TimeAt) -> bool:
    """Whether a time runs until something is soft or tender."""
    return bool(TENDER.search(keeping.spoken_of(at.step, at.mark)))


def to_the_bite(at: TimeAt) -> bool:
    """Whether a time runs until something is al dente."""
    return bool(TO_THE_BITE.search(keeping.spoken_of(at.step, at.mark)))


def first_of(classes: tuple[str, ...], text: str) -> str | None:
    """The first of these classes of which a text names a food."""
    return next((food.dish_class for food in foods.foods_in(text) if food.dish_class in classes), None)
