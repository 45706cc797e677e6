"""The foods that the drill asks about: rows of data/tables/drill_foods_common-practice.csv."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

from rules.errors import UnknownWord
from rules.tables import read_csv

FOODS = "tables/drill_foods_common-practice.csv"


@dataclass(frozen=True, slots=True)
class Food:
    """A food of the drill.

    of: the class the rules know it by, or its row in the chart of safe temperatures
    figures: what recipes for it say at sea level [min; of fried food degF]
    """

    name: str
    of: str
    figures: tuple[float, ...] = ()


def foods(asked: str, of: str | None = None) -> tuple[Food, ...]:
    """The foods of a kind of question, in the order of the table.

    of: only those of this class
    raises: UnknownWord for a kind that is not in the table

    >>> foods("tough")[0].name
    'short ribs'
    """
    if asked not in _foods():
        raise UnknownWord.among("kind of question", asked, _foods())
    return tuple(food for food in _foods()[asked] if of in (None, food.of))


@cache
def _foods() -> dict[str, tuple[Food, ...]]:
    found: dict[str, tuple[Food, ...]] = {}
    for row in read_csv(FOODS).rows:
        food = Food(row["food"], row["known_as"], tuple(map(float, row["figures"].split())))
        found[row["asked"]] = (*found.get(row["asked"], ()), food)
    return found
