"""What stands in the pot of a recipe: which of its times cook in liquid, and which food sets the pace of each."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from functools import cache

from rules.baking.batch import Batch
from rules.baking.mark import TimeAt
from rules.baking.styles import is_a, least_cook_min, usual_class
from rules.physics import kinetics
from rules.recipe import IngredientLine, Recipe, Step, TimeMark
from rules.recipes import foods, keeping
from rules.recipes.foods import Food, raw_foods
from rules.recipes.phrases import pattern
from rules.tables import read_toml

WORDS = "lexicon/recipe_pots.toml"
# What a soup is when its title calls it so.
POURED = ("stock", "sauce")
# What cooks in a pot for a short while, and is softened all the same rather than fried.
SOFT_SOON = (
    "pasta", "noodle", "rice", "whole_grain", "porridge", "dumpling", "starchy_root", "root_vegetable", "lentil",
)  # fmt: skip
# What takes up its liquid with stirring, whatever the sentence calls that.
STIRRED = ("rice", "whole_grain", "porridge", "pasta")
# What takes up the liquid it is given, and the style that says how much more it is given higher up.
GRAINS, RICE = ("rice", "whole_grain", "porridge"), "rice"
BATH = re.compile(r"\b(?:water[- ]bath|bain[- ]marie|hot water|boiling water)\b", re.I)
WET_TIMES = ("boil", "simmer", "braise", "poach", "steam")
VAGUE_TIMES = ("other", "mix")
SHORTEST_MIN = 2.0
# Dried beans boiled no longer are soaked quickly, or rid of their poison, which is never shortened.
BEANS_BOILED_MIN = 15.0
# Boiled for so long they are near done, and what follows in the oven is for the rest of the dish.
BEANS_SOFT_MIN = 30.0
# Rice stirred for so long is cooking, whatever the sentence calls it.
LEAST_RICE_MIN = 10.0
# What is boiled for so long is cooked from there on; and a pot under its lid cooks in so short a time.
LEAST_BOILED_MIN = 5.0
LEAST_STEAMED_MIN = 5.0
SALT = "salt"
# From so long on, what went into the pot before counts beside what the sentence names.
LONG_MIN = 40.0
# From so long on, what is tough in a recipe is in the pot, wherever it went in.
HOUR_MIN = 60.0
# A time no longer than this with nothing in it that softens is for the liquid.
BRIEF_MIN = 15.0
# "Simmer the peel 2 hours until soft": softening, in whatever is boiled down afterwards.
TENDER = re.compile(r"[^.;]*?\b(?:until|till)\b[^.;]*?\b(?:soft|tender)\b(?![- ]ball)", re.I)
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
_UNTIL = re.compile(r"\b(?:until|till)\b", re.I)
_SENTENCE = re.compile(r"(?<=[.;!?])\s+|\n+")
# One deed or one food of a list: what is said of a pot is told one after the other.
_DEED = re.compile(r"[.;!?,\n]+\s*|\s+(?:and|then)\s+")


@cache
def _says(name: str) -> re.Pattern[str]:
    return pattern(tuple(read_toml(WORDS)["pot"][name]))


@cache
def _classes(name: str) -> frozenset[str]:
    return frozenset(read_toml(WORDS)["pot"][name])


def _firm(own: tuple[Food, ...]) -> bool:
    """Whether among foods one is more than what is fried first."""
    return any(f.name not in _classes("aromatics") for f in own)


def least_min(dish_class: str) -> float:
    """The shortest time in which a class is what softens [min].

    >>> least_min("collagen_cut"), least_min("rice")
    (40.0, 0.0)
    """
    return float(read_toml(WORDS)["least_min"].get(dish_class, 0.0))


# What went in


@dataclass(frozen=True, slots=True)
class Contents:
    """What stands in the pot at a time.

    foods: raw when they went in, and not cooked since; liquid: one was named; wet: the same, or it boils or simmers
    """

    foods: tuple[Food, ...] = ()
    liquid: bool = False
    wet: bool = False


def contents(recipe: Recipe, one: Step, mark: TimeMark) -> Contents:
    """What the steps up to a time have put into its pot: drained or taken out it is gone."""
    held = Contents()
    for step in recipe.steps[: _place(recipe, one) + 1]:
        if step.component != one.component:
            continue
        text = step.text[: mark.start] if step is one else step.text
        for sentence in _SENTENCE.split(text):
            held = _after(recipe, held, sentence)
    return held


def _place(recipe: Recipe, one: Step) -> int:
    return next((i for i, step in enumerate(recipe.steps) if step is one), len(recipe.steps) - 1)


def _after(recipe: Recipe, held: Contents, sentence: str) -> Contents:
    """The pot after one sentence."""
    if _says("aside").search(sentence):
        return held
    if _says("another").search(sentence):
        held = Contents()
    for deed in _DEED.split(sentence):
        named = _raw_in(recipe, deed)
        if _says("emptied").search(deed):
            held = _taken_out(held, named, deed)
            continue
        liquid = held.liquid or bool(_says("liquid").search(deed))
        held = Contents((*held.foods, *named), liquid, held.wet or liquid or bool(_says("wet").search(deed)))
    return held


def _raw_in(recipe: Recipe, text: str) -> tuple[Food, ...]:
    """The raw foods that a text of a recipe names, and that soften."""
    named = (f for f in foods.spoken(recipe, text) if text[f.start : f.end].lower() not in _classes("no_food"))
    return tuple(f for f in named if not f.cooked and _softens(f))


def _taken_out(held: Contents, named: tuple[Food, ...], deed: str) -> Contents:
    """The pot without what a deed takes out of it; without anything where it names no food."""
    if not named:
        return held if _says("poured_off").search(deed) else Contents()
    gone = {f.name for f in named}
    left = tuple(f for f in held.foods if f.name not in gone)
    return Contents(left, held.liquid, held.wet) if left else Contents()


def _softens(food: Food) -> bool:
    return foods.softens(food) and food.dish_class not in _classes("never")


def covered(recipe: Recipe, one: Step, mark: TimeMark) -> bool | None:
    """Whether the lid is on at a time, by the last word about it; None where nothing is said."""
    place = _place(recipe, one)
    end = next((m.start() for m in _SENTENCE.finditer(one.text, mark.end)), len(one.text))
    said = f"{recipe.steps[place - 1].text if place else ''}\n{one.text[:end]}"
    on, off = ([m.end() for m in _says(name).finditer(said)] for name in ("covered", "uncovered"))
    return max(on, default=-1) > max(off, default=-1) if on or off else None


# Which class sets the pace


def dish_class(batch: Batch) -> str | None:
    """The dish class whose softening sets the pace of the whole pot; None where all of it comes cooked.

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
    if own and (mark.high_min < LONG_MIN or _alone(at, own)) and (found := _of(own, mark)):
        return found
    softened = mark.what in ("bake", "braise") and _softened(batch, one)
    whole = tuple(f for f in raw_foods(batch.recipe) if not (softened and f.dish_class == "dried_bean"))
    held = whole if mark.what == "slow_cook" else contents(batch.recipe, one, mark).foods
    held = tuple(f for f in held if not (softened and f.dish_class == "dried_bean"))
    if mark.high_min >= HOUR_MIN:
        held += tuple(f for f in whole if f.dish_class in foods.lists("foods")["slow_classes"])
    held = tuple(f for f in held if f.dish_class not in _classes("beside")) or held
    if found := _of((*own, *held), mark):
        return found
    unknown = kinetics.GENERAL if _till_soft(at) else None
    if mark.high_min <= BRIEF_MIN:
        return _brief(at) or unknown
    if not batch.recipe.ingredients:
        return (dish_class(batch) if is_a(batch.style, "pot") else _of(whole, mark)) or unknown
    if softened or (is_a(batch.style, "pot") and dish_class(batch)):
        unknown = kinetics.GENERAL
    return _of((f for f in whole if f.dish_class not in _classes("beside")), mark) or unknown


def _poured(batch: Batch) -> str | None:
    """What a soup is when its title calls it a stock or a sauce; None for another."""
    return _first_of(POURED, batch.recipe.title) if batch.style == "soup" else None


def _brief(at: TimeAt) -> str | None:
    """What a short boil is for where neither its words nor the pot tell: what the recipe has that boils so soon."""
    batch, mark, said = at.batch, at.mark, keeping.spoken_of(at.step, at.mark)
    known = [f for f in foods.foods_in(said) if not _says("liquid").search(f.name) and f.name != SALT]
    if mark.what not in WET_TIMES or known:
        return None
    soon = _of((f for f in raw_foods(batch.recipe) if f.dish_class in SOFT_SOON), mark)
    named = usual_class(batch.style)
    return soon or (named if is_a(batch.style, "pot") and named in SOFT_SOON else None)


def own_foods(at: TimeAt) -> tuple[Food, ...]:
    """The raw foods that the words of a time name, and that soften; what has boiled before is cooked by then."""
    said = keeping.spoken_of(at.step, at.mark)
    return tuple(f for f in _raw_in(at.batch.recipe, said) if not _boiled_before(at, f))


def _boiled_before(at: TimeAt, food: Food) -> bool:
    """Whether a grain, noodle or potato was boiled in a step before."""
    if food.dish_class not in _classes("once"):
        return False
    recipe = at.batch.recipe
    return any(
        t.what in (*WET_TIMES, "cook", "pressure")
        and t.high_min >= LEAST_BOILED_MIN
        and any(food.name == f.name for f in foods.spoken(recipe, keeping.spoken_of(one, t)))
        for one in recipe.steps[: _place(recipe, at.step)]
        for t in one.times
    )


def _alone(at: TimeAt, own: tuple[Food, ...]) -> bool:
    """Whether what a sentence cooks stands right behind its verb: "boil the potatoes"."""
    said = keeping.spoken_of(at.step, at.mark)
    return any(keeping.ALONE.search(said[: food.start]) for food in own)


def _of(held: Iterable[Food], mark: TimeMark) -> str | None:
    """The class that sets the pace among foods, of those that soften in the time given."""
    return slowest({f.dish_class for f in held if _softens(f) and mark.high_min >= least_min(f.dish_class)})


def _softened(batch: Batch, one: Step) -> bool:
    """Whether dried beans have had their boil in the steps before."""
    before = batch.recipe.steps[: _place(batch.recipe, one)]
    return any(t.what in WET_TIMES and t.high_min >= BEANS_SOFT_MIN for step in before for t in step.times)


# Which times follow the boiling point


def governs(at: TimeAt) -> bool:
    """Whether a time is one of cooking in liquid or steam, or in a bath, and so follows the boiling point.

    It goes by the words of the step and the foods in its pot, whatever the style: a loaf baked with steam is baked, and
    a sauce boiled down goes by the burner, since a pot loses water as fast here.
    """
    batch, one, mark = at.batch, at.step, at.mark
    if mark.high_min < SHORTEST_MIN:
        return False
    own = own_foods(at)
    soft = TENDER.match(one.text, mark.end) or any(f.dish_class in SOFT_SOON for f in own)
    if is_a(batch.style, "boiled_down") and not soft:
        return False
    if mark.what == "bake":
        return _bakes_wet(at)
    if mark.what in WET_TIMES:
        return _boils(at, own)
    return _cooks_wet(at, own)


def _boils(at: TimeAt, own: tuple[Food, ...]) -> bool:
    """Whether a time that says boil, simmer, braise, poach or steam is one in which something softens."""
    one, mark = at.step, at.mark
    if mark.what == "boil" and mark.high_min <= BEANS_BOILED_MIN and _beans(at, own):
        return False
    if _WATER_ALONE.search(one.text[: mark.start]) or _BROUGHT.search(one.text[: mark.start]):
        return False
    if mark.what == "steam" and in_the_oven(one):
        return False
    if _till_soft(at):
        return True
    said = keeping.spoken_of(one, mark)
    if _crisps(at):
        return False
    if _says("boiled_down").search(said):
        return mark.high_min >= LONG_MIN
    if _firm(own):
        return True
    if _says("dissolved").search(said) or _drawn_in_fat(at, said):
        return False
    return not (mark.high_min <= BRIEF_MIN and _says("thickened").search(one.text))


def _till_soft(at: TimeAt) -> bool:
    """Whether a time runs until something is soft or tender."""
    return bool(TENDER.search(keeping.spoken_of(at.step, at.mark)))


def _crisps(at: TimeAt) -> bool:
    """Whether a time runs until something is brown, crisp or only warm."""
    waited = _UNTIL.split(keeping.spoken_of(at.step, at.mark), maxsplit=1)[1:]
    return any(_says("crisped").search(text) for text in waited)


def _beans(at: TimeAt, own: tuple[Food, ...]) -> bool:
    """Whether dried beans are what a short boil is for."""
    classes = {f.dish_class for f in own} or {f.dish_class for f in raw_foods(at.batch.recipe)}
    return "dried_bean" in classes


def _drawn_in_fat(at: TimeAt, said: str) -> bool:
    """Whether what simmers is fat with something in it."""
    wet = _says("liquid").search(said) or contents(at.batch.recipe, at.step, at.mark).liquid
    return not wet and bool(_says("fat").search(at.step.text, 0, at.mark.end))


def _cooks_wet(at: TimeAt, own: tuple[Food, ...]) -> bool:
    """Whether a time that only says "cook", or nothing, is one of cooking in liquid."""
    batch, one, mark = at.batch, at.step, at.mark
    if mark.what == "reduce":
        return _till_soft(at) and _firm(own)
    if mark.what not in ("cook", *VAGUE_TIMES):
        return False
    said, held = keeping.spoken_of(one, mark), contents(batch.recipe, one, mark)
    if mark.what in VAGUE_TIMES and _says("immersed").search(said):
        return bool(own or held.foods)
    if mark.what in VAGUE_TIMES:
        rice = any(f.dish_class in STIRRED for f in (*own, *held.foods)) or usual_class(batch.style) in STIRRED
        return held.wet and rice and mark.low_min >= LEAST_RICE_MIN
    wet = bool(_says("wet").search(" ".join(_SENTENCE.split(one.text[: mark.start])[-2:]) + said))
    if _says("boiled_down").search(said) or (_says("fat").search(said) and not _says("liquid").search(said)):
        return False
    if not (held.wet or wet):
        return False
    if _crisps(at):
        return False
    soft = _till_soft(at) and (_firm(own) or bool(held.foods and not own))
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
        return bool(BATH.search(one.text)) and "crust" not in said
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


def _slow(food: Food) -> bool:
    """Whether a food in an oven takes its time from the liquid around it: tough meat, dried beans, rice, grains."""
    slow = ("dried_bean", "lentil", "rice", "whole_grain", *foods.lists("foods")["slow_classes"])
    return food.dish_class in slow and not food.cooked


def _first_of(classes: tuple[str, ...], text: str) -> str | None:
    """The first of these classes of which a text names a food."""
    return next((food.dish_class for food in foods.foods_in(text) if food.dish_class in classes), None)


def in_the_oven(one: Step) -> bool:
    """Whether a step names an oven setting or bakes."""
    return any(t.what == "oven" for t in one.temperatures) or bool(re.search(r"\bbak(?:e|ed|ing)\b", one.text, re.I))


def simmered(batch: Batch) -> Iterator[TimeAt]:
    """The times by which a pot stands at a simmer, in order."""
    every = (TimeAt(batch, one, mark) for one in batch.recipe.steps for mark in one.times)
    return (at for at in every if governs(at))


def is_grain(line: IngredientLine) -> bool:
    """Whether an ingredient is a grain that cooks from raw."""
    return not foods.ready(line) and any(f.dish_class in GRAINS and not f.cooked for f in foods.foods_in(line.line))


def poured_in(line: IngredientLine) -> bool:
    """Whether a liquid is what the pot simmers in: no cream that finishes it, no water to soak or boil something in."""
    return line.role != "dairy" and not _says("not_poured").search(line.line)


def drained(recipe: Recipe, one: Step, mark: TimeMark) -> bool:
    """Whether what cooks for a time is drained after it: boiled in plenty of water, of which any amount will do."""
    place = _place(recipe, one)
    then = "\n".join((one.text[mark.end :], *(step.text for step in recipe.steps[place + 1 : place + 2])))
    return bool(_says("drained").search(then))
