"""Which ingredient a few words name, what role it has in a formula, and what it weighs."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from functools import cache, lru_cache

from assistant.reading.units import Unit, unit_of
from rules import tables
from rules.foods import dishes
from rules.kept import kept
from rules.recipes.phrases import stems

INGREDIENTS = "lexicon/ingredients.toml"
WORDS = "lexicon/recipe_words.toml"
# Units of a list that are less than the piece an ingredient is weighed by: a slice of bread is no loaf.
PARTS_OF_A_PIECE = ("knob", "handful", "slice", "strip", "sheet", "leaf", "sprig", "bunch")
# So many words of a make or a breed may stand before the name: "Alpine Meadow organic extra virgin olive oil".
MOST_WORDS_OF_MAKE = 4
# Dishes that pour like water, and weigh about what it weighs.
WATERY, WATERY_G_PER_CUP = ("stock", "coffee", "tea", "wort"), 240.0


@dataclass(frozen=True, slots=True)
class Ingredient:
    """What is known of an ingredient: masses [g] of a cup, tablespoon, teaspoon or piece, each None where unknown.

    name: "" for a food that is only known as a dish, since the dish's name would be another thing ("chuck roast")
    role: what it does in a formula ("flour", "fat"); for a food that is only known as a dish, the dish class
    """

    name: str
    role: str | None = None
    grams_per_cup: float | None = None
    tbsp_g: float | None = None
    tsp_g: float | None = None
    each_g: float | None = None

    @property
    def of_the_pantry(self) -> bool:
        """Whether it is an ingredient, or one that is like it, rather than a food that is only known as a dish."""
        return bool(self.name) or self.tsp_g is not None or self.tbsp_g is not None

    def mass_g(self, amount: float, unit: Unit | None) -> float | None:
        """Mass [g] of an amount in a unit, None for a bare count; None where it is not known.

        Spoons have weights of their own where the table has them, since a spoon of powder is not a share of a cup.

        >>> Ingredient("honey", "sugar", grams_per_cup=339).mass_g(2, unit_of("cups"))
        678.0
        """
        if unit is not None and unit.name in PARTS_OF_A_PIECE:
            return None
        if unit is None or unit.kind == "count":
            return None if self.each_g is None else amount * self.each_g
        if unit.kind == "mass":
            return amount * unit.size
        if unit.kind != "volume":
            return None
        like_ml = unit.size if unit.name in ("cup", "tbsp", "tsp") else max(amount, 1e-6) * unit.size
        per_ml = self._grams_per_ml(like_ml)
        return None if per_ml is None else amount * unit.size * per_ml

    def _grams_per_ml(self, like_ml: float) -> float | None:
        weighed = [("cup", self.grams_per_cup), ("tbsp", self.tbsp_g), ("tsp", self.tsp_g)]
        pairs = [(grams, _size(name)) for name, grams in weighed if grams]
        nearest = min(pairs, key=lambda pair: abs(math.log(pair[1] / like_ml)), default=None)
        return None if nearest is None else nearest[0] / nearest[1]


def _size(name: str) -> float:
    unit = unit_of(name)
    return unit.size if unit else 1.0


@kept
def _known() -> dict[tuple[str, ...], Ingredient]:
    found: dict[tuple[str, ...], Ingredient] = {}
    for dish in dishes.dishes().values():
        food = Ingredient("", dish.dish_class, WATERY_G_PER_CUP if dish.dish_class in WATERY else None)
        found |= {stems(alias): food for alias in (dish.name, *dish.heard_as)}
    for row in tables.read_toml(INGREDIENTS)["ingredient"]:
        grams = {key: float(row[key]) for key in ("grams_per_cup", "tbsp_g", "tsp_g", "each_g") if key in row}
        aliases = [stems(alias) for alias in (row["name"], *row.get("heard_as", ()))]
        bare = [alias[1:] for alias in aliases if alias[0] == "dry"]
        food_class = next((found[alias].role for alias in (*aliases, *bare) if alias in found), None)
        role = food_class or "other" if row["role"] == "other" else row["role"]
        item = Ingredient(row["name"], role, **grams)
        found |= dict.fromkeys(aliases, item)
    for name, short in tables.read_toml(WORDS)["shorthand"].items():
        found |= dict.fromkeys(map(stems, short), found[stems(name)])
    for name, like in tables.read_toml(WORDS)["like"].items():
        found |= dict.fromkeys(map(stems, like), replace(found[stems(name)], name=""))
    return found


@cache
def _food_words() -> frozenset[str]:
    """The stems of foods of one word, which make another thing of the one they stand before: PEANUT butter."""
    return frozenset(alias[0] for alias in _known() if len(alias) == 1) - neutral()


@cache
def neutral() -> frozenset[str]:
    """The stems of words that leave an ingredient what it is."""
    words = tables.read_toml(WORDS)["lines"]["neutral"]
    return frozenset(stem for word in words for stem in stems(word))


@cache
def _dry_like() -> dict[str, Ingredient]:
    """The first dry food of the classes whose members weigh much the same by the cup."""
    dry = [item for item in _known().values() if item.name.startswith("dry ")]
    return {item.role: item for item in reversed(dry) if item.role in ("rice", "dried_bean", "lentil")}


def _dry(food: Ingredient, tokens: tuple[str, ...]) -> Ingredient:
    """A food known as a dish, with the weights of its dry form where the lexicon has it, or of its like."""
    dry = _known().get(("dry", *tokens)) or _dry_like().get(food.role or "")
    return replace(dry, name="", role=food.role) if dry else food


@lru_cache(maxsize=20_000)
def find(words: str) -> Ingredient | None:
    """The ingredient that the words name, or None.

    The name must end the phrase, and what stands around it may only be words that leave the ingredient what it is:
    "cold unsalted butter, softened" is butter, "apple butter" is not. A name of the pantry goes before that of a dish:
    "warm milk" in a list is milk.
    """
    tokens, known = stems(words), _known()
    for end in range(len(tokens), 0, -1):
        named = [b for b in range(end) if tokens[b:end] in known and set(tokens[:b]) <= neutral()]
        if named:
            begin = next((b for b in named if known[tokens[b:end]].of_the_pantry), named[0])
            item = known[tokens[begin:end]]
            return item if item.name else _dry(item, tokens[begin:end])
        if tokens[end - 1] not in neutral():
            return None
    return None


@lru_cache(maxsize=20_000)
def of_some_make(words: str) -> Ingredient | None:
    """The ingredient at the end of words of which none before it is a food: a make, a breed, a region.

    >>> of_some_make("Alpine Meadow extra virgin olive oil").name, of_some_make("cashew cheese dip")
    ('olive oil', None)
    """
    tokens = stems(words)
    for begin in range(1, min(len(tokens), MOST_WORDS_OF_MAKE + 1)):
        if tokens[begin - 1] in _food_words():
            return None
        if item := _known().get(tokens[begin:]):
            return item if item.name else _dry(item, tokens[begin:])
    return None
