"""Recipes that hurt people as they are written: each is told, and its unsafe figures are left as they stand."""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache
from typing import Any

from rules.book import Part, rule
from rules.foods import dishes
from rules.model import Caution
from rules.recipe import Recipe, Step, TempMark
from rules.recipes import canning
from rules.recipes.foods import Food, hazard, lists, raw_foods, ready, spoken, traits
from rules.recipes.keeping import named_inside
from rules.recipes.outcome import Outcome
from rules.recipes.phrases import says
from rules.recipes.roles import apparatus_words
from rules.remembered import all_of_them, remembered
from rules.safety import SafeTemperature
from rules.said import Said, duration, sentences, temp
from rules.tables import read_csv, read_toml

WORDS = "lexicon/recipe_safety.toml"
BATH_TABLE = "tables/sous_vide_poultry_baldwin-sous-vide.csv"
THICKNESS_MM = "30"
CENTRE_SOURCES = ("usda-fsis-safe-temperatures",)
LECTIN = ("lectin_slow_cooker", "lectin_raw")
# Foods of which too low a reading is a stop rather than a taste.
STRICT = ("poultry", "ground_meat")
ROUNDING_K = 0.6
HARD_BOILS = ("boil", "pressure")
HEATS = ("boil", "simmer", "pressure", "braise", "bake", "cook", "fry", "reduce", "doneness", "slow_cook", "sous_vide")
say = sentences("recipes/dangers")


def _stops(cautions: Iterator[Caution]) -> Part | None:
    found = tuple(cautions)
    return Part(cautions=found) if found else None


@rule("recipe.unsafe", "usu-ask-extension", "nchfp", "from-memory")
def as_written(done: Outcome) -> Part | None:
    """What makes people ill in a recipe as it is written: unboiled beans, garlic in oil, honey for an infant."""
    return _as_written(done.batch.recipe)


@remembered(by=all_of_them)
def _as_written(recipe: Recipe) -> Part | None:
    return _stops(_warned_of(recipe))


def _warned_of(recipe: Recipe) -> Iterator[Caution]:
    for row in _rows():
        if named := _meets(recipe, row):
            yield Caution("stop", say("as-written", danger=row["id"], food=named), tuple(row["sources"]))


@rule("recipe.too_low", "usda-fsis-safe-temperatures", "baldwin-sous-vide")
def too_low(done: Outcome) -> Part | None:
    """Readings of the centre, and baths, that leave poultry or minced meat unsafe."""
    return _too_low(done.batch.recipe, done.batch.style)


@rule("recipe.low_acid", "usda-aib-539", "nchfp")
def low_acid(done: Outcome) -> Part | None:
    """Food low in acid that is canned in boiling water."""
    recipe = done.batch.recipe
    if not done.batch.canning or canning.under_pressure(recipe):
        return None
    low = canning.low_acid(recipe)
    return Part(cautions=(Caution("stop", say("low-acid", food=low)),)) if low else None


@cache
def _rows() -> tuple[dict[str, Any], ...]:
    return tuple(read_toml(WORDS)["danger"])


@remembered(by=all_of_them)
def holds_lectin(recipe: Recipe) -> bool:
    """Whether a recipe lists raw beans of the kidney kind, which must be boiled hard before any slow cooking."""
    return _has(recipe, lists("foods")["kidney_kind"]) is not None


@remembered(by=all_of_them)
def lectin(recipe: Recipe) -> bool:
    """Whether a recipe leaves them unboiled."""
    return any(_meets(recipe, row) for row in _rows() if row["id"] in LECTIN)


# What the rows ask


def _meets(recipe: Recipe, row: dict[str, Any]) -> str | None:
    """The food for which a recipe is what a row warns of, or None."""
    named = _has(recipe, row["foods"]) if "foods" in row else _of_trait(recipe, row["trait"], row["class"])
    if named is None or says(_every(recipe), row.get("unless", ())):
        return None
    if "apparatus" in row and not any(_cooked_in(recipe, id) for id in row["apparatus"]):
        return None
    if _boiled(recipe, row.get("boiled_min")) or _heated(recipe, row.get("heated_min")):
        return None
    return named if all(_said(recipe, one) for one in row.get("must", ())) else None


def _every(recipe: Recipe) -> str:
    lines = (line.line for line in recipe.ingredients)
    return "\n".join((recipe.title, *lines, *(one.text for one in recipe.steps), *recipe.notes))


@cache
def _called(names: tuple[str, ...]) -> tuple[str, ...]:
    """The foods by every name the lexicon has for them."""
    known = dishes.dishes()
    heard = {name: known[name].heard_as if name in known else () for name in names}
    return tuple(dict.fromkeys(word for name in names for word in (name, *heard[name])))


def _has(recipe: Recipe, names: list[str]) -> str | None:
    """The first of these foods that a recipe lists raw, or names in its title where it lists nothing."""
    lines = [line.line for line in recipe.ingredients if not ready(line)] or [recipe.title]
    for name in names:
        if any(says(line, _called((name,))) for line in lines):
            return name.removeprefix("dry ")
    return None


def _of_trait(recipe: Recipe, trait: str, dish_class: str) -> str | None:
    """The first raw food of a class with a trait of the lexicon."""
    found = (food.name for food in raw_foods(recipe) if food.dish_class == dish_class)
    return next((name for name in found if trait in traits(name)), None)


def _cooked_in(recipe: Recipe, apparatus: str) -> bool:
    return says("\n".join((recipe.title, *(one.text for one in recipe.steps))), apparatus_words(apparatus))


def _boiled(recipe: Recipe, least_min: float | None) -> bool:
    """Whether something in it boils hard, or stands under pressure, for so long."""
    if least_min is None:
        return False
    return any(t.what in HARD_BOILS and t.low_min >= least_min for one in recipe.steps for t in one.times) or any(
        t.what == "pressure" for one in recipe.steps for t in one.times
    )


def _heated(recipe: Recipe, least_min: float | None) -> bool:
    """Whether anything in it is cooked hot for so long, or is brought to the boil without a time."""
    if least_min is None:
        return False
    timed = any(t.what in HEATS and t.high_min >= least_min for one in recipe.steps for t in one.times)
    return timed or any(cue.what in ("boil", "simmer") for one in recipe.steps for cue in one.cues)


def _said(recipe: Recipe, condition: dict[str, Any]) -> bool:
    every = _every(recipe)
    where = {"recipe": [every], "sentence": every.replace(". ", ".\n").split("\n")}
    return any(
        says(text, condition["any"])
        and ("and" not in condition or says(text, condition["and"]))
        and not says(text, condition.get("but", ()))
        for text in where[condition["in"]]
    )


# What the tables ask


@remembered(by=all_of_them)
def _too_low(recipe: Recipe, style: str) -> Part | None:
    return _stops(_too_cool_inside(recipe, style))


def _too_cool_inside(recipe: Recipe, style: str) -> Iterator[Caution]:
    for one in recipe.steps:
        food = _strict_food(recipe, style, one)
        safe = hazard(food, style) if food else None
        if food is None or safe is None:
            continue
        reached = [t.high_c for t in one.temperatures if t.what == "food"]
        for mark in one.temperatures:
            if named_inside(mark) and max(reached) < safe.temp_c - ROUNDING_K:
                said = say("core-too-low", food=food.name, figure=temp(mark.low_c), safe=temp(safe.temp_c))
                yield Caution("stop", said, CENTRE_SOURCES)
            elif mark.what == "bath" and safe.kind == "poultry":
                yield from _bath(one, food, mark, safe)


def _strict_food(recipe: Recipe, style: str, one: Step) -> Food | None:
    """The food of a step whose reading is strict: one it names, else the only kind the recipe cooks."""
    own = [food for food in spoken(recipe, one.text) if food.dish_class]
    risky = [food for food in own if _strict(food, style)]
    if risky or any(hazard(food, style) for food in own):
        return next(iter(risky), None)
    every = raw_foods(recipe)
    meats = [food for food in every if hazard(food, style) or food.dish_class in ("tender_cut", "collagen_cut")]
    return meats[0] if meats and all(_strict(food, style) for food in meats) else None


def _strict(food: Food, style: str) -> bool:
    safe = hazard(food, style)
    return safe is not None and safe.kind in STRICT


def _bath(one: Step, food: Food, mark: TempMark, safe: SafeTemperature) -> Iterator[Caution]:
    """A bath for poultry against the printed table: hot enough, and long enough for a piece of 30 mm.

    source: baldwin-sous-vide, table 4.1
    """
    printed = (row for row in read_csv(BATH_TABLE).rows if row["thickness_mm"] == THICKNESS_MM)
    rows = [(float(row["bath_c"]), float(row["time_min"])) for row in printed]
    reached = [minutes for bath_c, minutes in rows if bath_c <= mark.low_c + ROUNDING_K]
    given = max((t.low_min for t in one.times if t.what in ("sous_vide", "other", "cook", "hold")), default=None)
    if not reached:
        yield Caution("stop", _too_cool(food, mark, safe))
    elif given is not None and given < min(reached):
        least = duration(min(reached))
        yield Caution("stop", say("bath-too-short", food=food.name, figure=temp(mark.low_c), least=least))


def _too_cool(food: Food, mark: TempMark, safe: SafeTemperature) -> Said:
    return say("bath-too-cool", food=food.name, figure=temp(mark.low_c), safe=temp(safe.temp_c))
