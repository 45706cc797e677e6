"""What guests are allergic to, and which dishes hold it as they are usually made."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from typing import Literal

from rules.foods.dishes import dishes
from rules.tables import read_toml

FILE = "lexicon/allergens.toml"
Holds = Literal["yes", "may", "no"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Allergen:
    """A row of the catalogue; see its head."""

    id: str
    heard_as: tuple[str, ...]
    by_itself: tuple[str, ...]
    names: frozenset[str]
    dishes: frozenset[str]
    classes: frozenset[str]
    traits: frozenset[str]
    may: frozenset[str]


@cache
def allergens() -> dict[str, Allergen]:
    """Every allergen by its id, in the order of the file."""
    sets = ("names", "dishes", "classes", "traits", "may")
    return {
        row["id"]: Allergen(
            id=row["id"],
            heard_as=tuple(row["heard_as"]),
            by_itself=tuple(row["by_itself"]),
            **{name: frozenset(row[name]) for name in sets},
        )
        for row in read_toml(FILE)["allergen"]
    }


def holds(id: str, dish: str) -> Holds:
    """Whether a dish holds an allergen as it is usually made; what is in one kitchen's own only its labels tell.

    source: from-memory

    >>> holds("peanut", "satay sauce"), holds("gluten", "gravy"), holds("gluten", "white rice")
    ('yes', 'yes', 'no')
    """
    row, known = allergens()[id], dishes().get(dish)
    if dish in row.dishes or not row.names.isdisjoint(dish.split()):
        return "yes"
    if known is None:
        return "may"
    if known.dish_class in row.classes or not row.traits.isdisjoint(known.traits):
        return "yes"
    return "may" if known.dish_class in row.may else "no"
