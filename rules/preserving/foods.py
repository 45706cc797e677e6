"""What may go into which canner: acid enough for boiling water, only under pressure, or not at all."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

from rules.dishes import kin
from rules.tables import read_csv

FOODS = "tables/canning_foods_usda-aib-539.csv"
ACID = ("high_acid", "acidify", "pickle", "jam")


@dataclass(frozen=True, slots=True)
class Food:
    """How a food is canned. kind: high_acid, acidify, pickle, jam, low_acid, untested or unknown.

    instead: for a food that has no tested process, what to do with it
    """

    kind: str
    instead: str = ""

    @property
    def acid(self) -> bool:
        """Whether boiling water does."""
        return self.kind in ACID


@cache
def _foods() -> dict[str, Food]:
    return {row["food"]: Food(row["kind"], row["instead"]) for row in read_csv(FOODS).rows}


@cache
def food(dish: str | None, dish_class: str | None) -> Food:
    """How a dish is canned: by the longest words of its name that the table knows, else by its class.

    A dish that cooks like another is canned as that one unless the table knows its own name.

    source: usda-aib-539

    >>> food("green beans", "tender_vegetable").kind, food("tomatoes", "tender_vegetable").kind
    ('low_acid', 'acidify')
    >>> food(None, None).kind
    'unknown'
    """
    known = _foods()
    if dish not in known:
        dish = next(reversed(kin(dish)), None)
    by_class = known.get(f"class:{dish_class}", Food("unknown"))
    if by_class.kind in ("jam", "pickle") and dish not in known:
        return by_class
    padded = f" {dish or ''} "
    named = [words for words in known if not words.startswith("class:") and f" {words} " in padded]
    return known[max(named, key=len)] if named else by_class
