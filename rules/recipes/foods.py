"""What a recipe cooks: the foods that its lines, title and steps name, and which of them heat must make safe."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from functools import cache, lru_cache
from typing import Any

from rules import tables
from rules.foods import dishes
from rules.physics.kinetics import softening
from rules.recipe import IngredientLine, Recipe
from rules.recipes.phrases import says, stems, tokens
from rules.remembered import all_of_them, remembered
from rules.safety import SafeTemperature, chart, safe_temperature

SAFETY = "lexicon/recipe_safety.toml"
READY_UNITS = ("can", "jar")
LONGEST_NAME = 6
# How many words before a name may say that it comes cooked: "shredded cooked chicken".
COOKED_WITHIN = 3
POURED = ("", "stock", "soup", "sauce")
_CHOICE = re.compile(r"[,;(]?\s*\bor\b\s*", re.I)
EGG, FISH, POULTRY, COATED = "egg", "fish", "poultry", "battered"


@dataclass(frozen=True, slots=True)
class Food:
    """A food by name, with its dish class and where a text names it. cooked: it comes cooked."""

    name: str
    dish_class: str
    start: int
    end: int
    cooked: bool = False


@cache
def lists(section: str) -> dict[str, Any]:
    """A section of the lexicon of unsafe recipes."""
    found: dict[str, Any] = tables.read_toml(SAFETY)[section]
    return found


@cache
def _names() -> dict[tuple[str, ...], tuple[str, str]]:
    """Every food of the lexicon by the words it is called: its name and class, the class "" for an ingredient."""
    found: dict[tuple[str, ...], tuple[str, str]] = {}
    for dish_class, also in lists("foods")["also"].items():
        found |= {stems(name): (name, dish_class) for name in also}
    for dish in dishes.dishes().values():
        found |= {stems(alias): (dish.name, dish.dish_class) for alias in (dish.name, *dish.heard_as)}
    for row in tables.read_toml("lexicon/ingredients.toml")["ingredient"]:
        for alias in map(stems, (row["name"], *row.get("heard_as", ()))):
            food = found.get(alias[1:]) if alias[0] == "dry" else None
            found.setdefault(alias, food or (row["name"], ""))
    return found


def traits(name: str) -> tuple[str, ...]:
    """What the lexicon says a dish is: "lectin", "perishable"; () for a food that is no dish.

    >>> "lectin" in traits("kidney beans")
    True
    """
    known = dishes.dishes().get(name)
    return known.traits if known else ()


@lru_cache(maxsize=1024)
def foods_in(text: str) -> tuple[Food, ...]:
    """The foods that a text names, by the longest names of the lexicon, in order.

    >>> [(food.name, food.dish_class) for food in foods_in("Brown the chicken thighs, add the chicken stock")]
    [('chicken thighs', 'poultry_pieces'), ('chicken stock', 'stock')]
    >>> [food.cooked for food in foods_in("2 cups shredded cooked chicken")]
    [True]
    """
    return tuple(_found(text, tokens(text)))


def _found(text: str, words: list[tuple[str, int, int]]) -> Iterator[Food]:
    at = 0
    while at < len(words):
        match = _longest(words, at)
        if match is None:
            at += 1
            continue
        (name, dish_class), count = match
        last = at + count
        if not (last < len(words) and words[last][0] in _stemmed("another") and dish_class != ""):
            cooked = _comes_cooked(text, words, at) or words[at][0] in _stemmed("bought_cooked")
            yield Food(name, dish_class, words[at][1], words[last - 1][2], cooked)
        at = last


def _longest(words: list[tuple[str, int, int]], at: int) -> tuple[tuple[str, str], int] | None:
    for count in range(min(LONGEST_NAME, len(words) - at), 0, -1):
        known = _names().get(tuple(word for word, *_ in words[at : at + count]))
        if known:
            return known, count
    return None


@cache
def _stemmed(name: str) -> frozenset[str]:
    return frozenset(word for phrase in lists("foods")[name] for word in stems(phrase))


def _comes_cooked(text: str, words: list[tuple[str, int, int]], at: int) -> bool:
    """Whether the words right before a name say that it comes cooked: no comma and no "and" stands between."""
    for place in range(at - 1, max(-1, at - 1 - COOKED_WITHIN), -1):
        word, _, end = words[place]
        if word in _stemmed("phrase_ends") or text[end : words[place + 1][1]].strip(" -"):
            return False
        if word in _stemmed("cooked"):
            return True
    return False


def ready(line: IngredientLine) -> bool:
    """Whether an ingredient comes cooked: from a can, or left over; not what is dried first, "or 2 cans".

    >>> ready(IngredientLine(line="1 15-ounce can navy beans", item="navy beans", amount=1))
    True
    >>> ready(IngredientLine(line="1 cup dried navy beans, or 2 cans", item="navy beans", amount=1, unit="cup"))
    False
    """
    return line.unit in READY_UNITS or _says_ready(line.line)


@lru_cache(maxsize=4096)
def _says_ready(text: str) -> bool:
    first = _CHOICE.split(text.replace("-", " "))
    told = first[:1] if says(first[0], lists("foods")["raw_first"]) else first
    return any(says(one, lists("foods")["ready"]) for one in told)


@remembered(by=all_of_them)
def raw_foods(recipe: Recipe) -> tuple[Food, ...]:
    """The foods that a recipe lists and cooks from raw, each once; those it names where it lists none."""
    listed = [food for line in recipe.ingredients if not ready(line) for food in foods_in(line.line)]
    return _raw(listed if recipe.ingredients else foods_in(_told(recipe)))


@remembered(by=all_of_them)
def named_foods(recipe: Recipe) -> tuple[Food, ...]:
    """The raw foods that a recipe lists or names anywhere, each once."""
    return _raw((*raw_foods(recipe), *spoken(recipe, _told(recipe))))


@remembered(by=all_of_them)
def spoken(recipe: Recipe, text: str) -> tuple[Food, ...]:
    """The foods that a text of a recipe names, each as its list has it: "the ribs" are its short ribs.

    >>> listed = (IngredientLine(line="4 lb short ribs", item="short ribs"),)
    >>> [food.name for food in spoken(Recipe(ingredients=listed), "Braise the ribs")]
    ['short ribs']
    """
    named = foods_in(text)
    listed = [one for line in recipe.ingredients for one in _listed(line.line, line.unit)] if named else []
    return tuple(_as_listed(food, set(stems(text[food.start : food.end])), listed) for food in named)


@lru_cache(maxsize=4096)
def _listed(line: str, unit: str | None) -> tuple[tuple[frozenset[str], Food], ...]:
    """The foods that a line lists, each with the words that name it there."""
    cooked = unit in READY_UNITS or _says_ready(line)
    return tuple(
        (frozenset(stems(line[food.start : food.end])), replace(food, cooked=food.cooked or cooked))
        for food in foods_in(line)
    )


def _as_listed(food: Food, words: set[str], listed: list[tuple[frozenset[str], Food]]) -> Food:
    meant = [one for said, one in listed if words <= said and one.dish_class not in POURED]
    best = min(meant, key=lambda one: (one.dish_class != food.dish_class, one.cooked), default=None)
    if best is None or not food.dish_class or food.dish_class in POURED:
        return food
    return replace(best, start=food.start, end=food.end, cooked=best.cooked or food.cooked)


def _told(recipe: Recipe) -> str:
    return "\n".join((recipe.title, *(one.text for one in recipe.steps)))


def _raw(foods: Iterable[Food]) -> tuple[Food, ...]:
    return tuple({food.name: food for food in foods if not food.cooked and food.dish_class}.values())


@cache
def _family() -> frozenset[str]:
    """The whole cuts whose minutes count, by the files of the lexicon they stand in."""
    files = (f"lexicon/dishes/{family}.toml" for family in lists("foods")["families"])
    rows = (row for file in files for row in tables.read_toml(file)["dish"])
    return frozenset(
        dish.name for row in rows for dish in dishes.in_row(row) if dish.dish_class in lists("foods")["family_classes"]
    )


def hazard(food: Food, style: str) -> SafeTemperature | None:
    """The safe temperature of a food that heat must make safe; None for a food whose minutes are for texture.

    Poultry, minced meat, pork, fish and stuffing; whole eggs where a dish is made of them. Beef and lamb in one piece
    are braised far beyond their safe temperature.
    source: usda-fsis-safe-temperatures
    """
    told = lists("foods")
    if food.cooked:
        return None
    if food.name in told["stuffing"] or (food.dish_class == COATED and POULTRY in traits(food.name)):
        return next(row for row in chart() if row.kind == POULTRY)
    if food.dish_class in told["egg_classes"]:
        return safe_temperature(food.name, food.dish_class) if style in told["egg_styles"] else None
    if food.dish_class in told["classes"] or food.name in _family():
        return safe_temperature(food.name, food.dish_class) or next(row for row in chart() if row.kind == FISH)
    return None


def softens(food: Food) -> bool:
    """Whether the class of a food has a rate of its own at which it softens."""
    return bool(food.dish_class) and softening(food.dish_class).dish_class == food.dish_class
