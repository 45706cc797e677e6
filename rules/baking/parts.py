"""What each ingredient line is in the formula: flour, sugar, liquid, leavening, and in which part of the recipe."""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import cache
from typing import Any

from rules.recipe import IngredientLine, Recipe
from rules.tables import read_csv, read_toml

TABLE = "tables/formula_parts.csv"
FLOURS = ("flour", "starch", "cocoa")
LIQUIDS = ("liquid", "sour_liquid")
LEAVENINGS = ("powder", "soda")
NOT_BATTER = re.compile(
    r"frosting|icing|glaze|filling|streusel|crumb|topping|sauce|syrup|custard|ganache|curd|cream\b|finish|coating"
    r"|egg wash|garnish|drizzle|soak|sugar for|for serving|to serve|for frying"
    r"|levain|poolish|biga\b|pre-?ferment|starter",
    re.I,
)
NOT_IN_FORMULA = re.compile(
    r"(?<!more )(?<!extra )\bfor (?:the )?"
    r"(?:dusting|rolling|greasing|brushing|frying|sprinkling|coating|finishing|garnish|serving|pans?|egg wash)\b"
    r"|(?<!more )(?<!extra )\bto (?:dust|roll|grease|brush|fry|sprinkle|coat|finish|garnish|serve)\b",
    re.I,
)


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


@cache
def part_of(item: str, role: str | None = None) -> Part:
    """The part an ingredient plays, by the words its name ends with, else by its role in the lexicon.

    >>> part_of("unsalted butter").name, part_of("peanut butter").name, part_of("extra-large eggs").name
    ('fat', 'nut_butter', 'egg')
    >>> part_of("vanilla extract").name
    'other'
    """
    tokens, known = _tokens(item), pantry().get(item, {})
    named = next((part for words, part in _words() if tokens[-len(words) :] == words), None)
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


def batter(recipe: Recipe) -> tuple[Placed, ...]:
    """The lines of the dough, batter or foam itself: not frosting or filling, not what the pan is greased with.

    A sub-recipe counts when it holds flour, leavening or eggs and its name is not that of a finish. Where none does
    (a meringue, a pan of caramel), the whole recipe counts.
    """
    lines = [p for p in placed(recipe) if not NOT_IN_FORMULA.search(p.line.line)]
    core = {"flour", "powder", "soda", "yeast", "starter"}
    named = {p.line.component for p in lines if p.part.name in core and not NOT_BATTER.search(p.line.component)}
    chosen = tuple(p for p in lines if p.line.component in named)
    return chosen or tuple(p for p in lines if not NOT_BATTER.search(p.line.component)) or tuple(lines)
