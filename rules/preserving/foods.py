"""What may go into which canner: one row a known food, and whatever has no row is unknown."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

from rules.said import Said
from rules.tables import read_csv

FOODS, WORDING = "tables/canning_foods_usda-aib-539.csv", "preserving/foods"
ACID = ("high_acid", "acidify", "pickle", "jam", "ferment")
# tested is a process of these kinds alone; the others are refused in every canner
CANNED = (*ACID, "low_acid")


@dataclass(frozen=True, slots=True)
class Food:
    """How a food is canned, by its own row.

    kind: as at the head of the table; unknown where a food has no row, unnamed where no food was named
    water_min, half_gallon_min: the shortest time printed for boiling water, and for half-gallon jars in it [min]
    pressure_min: the shortest and the longest printed for a pressure canner [min]; None where no process is known
    demands: what the tested process asks of the food; instead: what to do where it is refused
    called: the food by itself, where its row is named as it comes out of the jar
    process: the printed process it takes, by its name in the tables of processes; empty where none is held
    sources: the row's source, and from-memory where nobody opened it
    """

    kind: str
    water_min: float | None = None
    pressure_min: tuple[float, float] | None = None
    half_gallon_min: float | None = None
    demands: Said | None = None
    instead: Said | None = None
    called: str = ""
    process: str = ""
    sources: tuple[str, ...] = ()

    @property
    def acid(self) -> bool:
        """Whether it is acid enough for boiling water."""
        return self.kind in ACID

    @property
    def named(self) -> bool:
        """Whether a food was named at all, known or not."""
        return self.kind != "unnamed"

    @property
    def paired(self) -> bool:
        """Whether its pressure tables print pairs of time and pressure: tomatoes and their kin."""
        return self.kind == "acidify" and self.pressure_min is not None


UNKNOWN, UNNAMED = Food("unknown"), Food("unnamed")


@cache
def foods() -> dict[str, Food]:
    """Every row of the table: a dish of the lexicon, or `class:` and a dish class, which is only ever refused."""
    return {row["food"]: _food(row) for row in read_csv(FOODS).rows}


def _food(row: dict[str, str]) -> Food:
    memory = ("from-memory",) if row["basis"] == "from memory" else ()
    pressure = (float(row["pressure_min"]), float(row["pressure_to_min"])) if row["pressure_min"] else None
    return Food(
        row["kind"],
        _minutes(row["water_min"]),
        pressure,
        _minutes(row["half_gallon_min"]),
        _said(row["demands"]),
        _said(row["instead"]),
        row["called"],
        row["process"],
        (row["source"], *memory),
    )


def _said(cell: str) -> Said | None:
    return Said(WORDING, cell) if cell else None


def _minutes(cell: str) -> float | None:
    return float(cell) if cell else None


def food(dish: str | None, dish_class: str | None) -> Food:
    """How a dish is canned: by its own row and no other; its class can only say what to do instead.

    A dish is not canned as the one it cooks like: that one may be less thick, less fat or more acid.

    source: usda-aib-539

    >>> food("green beans", "tender_vegetable").kind, food("tomatoes", "tender_vegetable").kind
    ('low_acid', 'acidify')
    >>> food("octopus", "cephalopod").kind, food(None, "fruit").kind, food(None, None).kind
    ('unknown', 'unknown', 'unnamed')
    """
    if dish is None and dish_class is None:
        return UNNAMED
    return foods().get(dish or "") or foods().get(f"class:{dish_class}") or UNKNOWN
