"""What each ingredient line is in the formula: flour, sugar, liquid, leavening, and in which part of the recipe."""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import cache, lru_cache
from typing import Any

from rules.recipe import IngredientLine, Recipe
from rules.tables import read_csv, read_toml

TABLE = "tables/formula_parts.csv"
FLOURS = ("flour", "starch", "cocoa")
LIQUIDS = ("liquid", "sour_liquid")
LEAVENINGS = ("powder", "soda")
RAISING = ("yeast", *LEAVENINGS)


@dataclass(frozen=True, slots=True)
class Part:
    """The part an ingredient plays, and how much of it is water [percent by mass]."""

    name: str
    water_pct: float


OTHER = Part("other", 0.0)
# Flour with its powder inside: "self-rising", "self-raising".
SELF_RISING = re.compile(r"\bself[- ]r(?:is|ais)ing\b", re.I)
# What is left to the role in the lexicon where the words of the table say nothing.
BY_ROLE = {name: name for name in ("flour", "starch", "sugar", "fat", "egg", "liquid", "yeast", "salt", "acid")}


@cache
def pantry() -> dict[str, dict[str, Any]]:
    """The ingredients of the lexicon by name, with their role, water and weights."""
    return {row["name"]: row for row in read_toml("lexicon/ingredients.toml")["ingredient"]}


@cache
def _words() -> tuple[tuple[tuple[str, ...], Part], ...]:
    rows = [(_tokens(r["words"]), Part(r["part"], float(r["water_pct"]))) for r in read_csv(TABLE).rows]
    return tuple(sorted(rows, key=lambda row: (-len(row[0]), row[0])))


def _tokens(text: str) -> tuple[str, ...]:
    return tuple(
        word.removesuffix("s") for word in re.findall(r"[a-z]+", text.lower().replace("'", "").replace("’", ""))
    )


def _leavening_in(tokens: tuple[str, ...]) -> Part | None:
    """What raises a dough is told by its words anywhere in a name, whatever the brand or the use behind them."""
    for words, part in _words():
        if part.name in RAISING and any(tokens[i : i + len(words)] == words for i in range(len(tokens))):
            return part
    return None


# the ingredients of a folder of recipes; there is no end of names
@lru_cache(maxsize=4096)
def part_of(item: str, role: str | None = None) -> Part:
    """The part an ingredient plays, by the words its name ends with, else by its role in the lexicon.

    >>> part_of("unsalted butter").name, part_of("peanut butter").name, part_of("extra-large eggs").name
    ('fat', 'nut_butter', 'egg')
    >>> part_of("vanilla extract").name, part_of("yeast for bread machines").name
    ('other', 'yeast')
    """
    tokens, known = _tokens(item), pantry().get(item, {})
    named = next((part for words, part in _words() if tokens[-len(words) :] == words), None) or _leavening_in(tokens)
    name = named.name if named else BY_ROLE.get(role or known.get("role", ""), OTHER.name)
    return Part(name, float(known.get("water_pct", named.water_pct if named else OTHER.water_pct)))


@dataclass(frozen=True, slots=True)
class Placed:
    """One ingredient line with its place in the recipe (from zero) and its part."""

    index: int
    line: IngredientLine
    part: Part

    @property
    def mass_g(self) -> float:
        """Mass [g], 0 where it is not known; a baker's percentage of a flour nobody weighed is of 100 g of it."""
        if self.line.mass_g is None and self.line.unit == "percent":
            return self.line.amount or 0.0
        return self.line.mass_mid_g or 0.0

    @property
    def self_rising(self) -> bool:
        """Whether it is flour with baking powder in it."""
        return self.part.name == "flour" and SELF_RISING.search(self.line.item) is not None

    @property
    def water_g(self) -> float:
        """Water it brings [g]."""
        return self.mass_g * self.part.water_pct / 100


def placed(recipe: Recipe) -> tuple[Placed, ...]:
    """Every ingredient line of a recipe with its part, in order."""
    return tuple(Placed(i, line, part_of(line.item, line.role)) for i, line in enumerate(recipe.ingredients))
