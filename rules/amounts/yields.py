"""What publications give for a food: what trimming leaves of it, and what it comes to cooked."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

from rules.foods.dishes import kin
from rules.tables import read_csv

# what was read goes before what is remembered
TABLES = (
    "tables/yields_usda-fbg-2012.csv",
    "tables/yields_usda-ah-102.csv",
    "tables/yields_usda-sr-legacy.csv",
    "tables/yields_usda-recipes-for-schools.csv",
    "tables/yields_usda-food-buying-guide.csv",
)
COOKED = "cooked"


@dataclass(frozen=True, slots=True)
class Yield:
    """A printed yield. step: cooked, pared, peeled or trimmed; share: of the weight that is bought; item: the row."""

    step: str
    share: float
    source: str
    item: str


@cache
def _rows() -> dict[str, tuple[Yield, ...]]:
    found: dict[str, tuple[Yield, ...]] = {}
    for table in map(read_csv, TABLES):
        for row in table.rows:
            one = Yield(row["step"], float(row["share"]), table.source, row["item"])
            found[row["food"]] = (*found.get(row["food"], ()), one)
    return found


def _of(dish: str | None) -> tuple[Yield, ...]:
    return next((_rows()[name] for name in kin(dish) if name in _rows()), ())


def cooked(dish: str | None) -> Yield | None:
    """What it comes to cooked, of the weight that is bought; None where no publication at hand says it.

    >>> cooked("ground beef").share, cooked("short ribs")
    (0.74, None)
    """
    return next((one for one in _of(dish) if one.step == COOKED), None)


def trimmed(dish: str | None) -> Yield | None:
    """What trimming or paring leaves of it; None where no publication at hand says it.

    >>> trimmed("potatoes").share
    0.81
    """
    return next((one for one in _of(dish) if one.step != COOKED), None)
