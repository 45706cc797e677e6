"""Readings of the centre that cooks call done, and how elevation moves those that hang on the boil."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

from rules.foods.dishes import kin
from rules.physics.ambient import Ambient
from rules.physics.units import to_c
from rules.tables import read_csv

READINGS = "tables/core_readings_common-practice.csv"
STAGES = "tables/sugar_stages_common-practice.csv"
SWEETS = "tables/candy_stages_common-practice.csv"
UNDER_BOIL_K = 1.0
LEAST_C = to_c(185)


@dataclass(frozen=True, slots=True)
class Reading:
    """A range of readings at sea level [degC]; bound is boil, set or above, as the table explains, or dry: sugar
    with no water left in it.
    """

    low_c: float
    high_c: float
    bound: str

    def here(self, air: Ambient, sea: Ambient) -> tuple[float, float]:
        """The range in this air [degC]: capped by the boil, fallen with it, or unchanged."""
        if self.bound in ("set", "dry"):
            return self.low_c, self.high_c
        if self.bound == "above":
            drop = sea.boiling_c - air.boiling_c
            return self.low_c - drop, self.high_c - drop
        top = air.boiling_c - UNDER_BOIL_K
        fall = max(0.0, self.high_c - top)
        return min(max(self.low_c - fall, LEAST_C), self.low_c, top), min(self.high_c, top)


@cache
def _rows() -> dict[str, Reading]:
    stages = {r["stage"]: r for r in read_csv(STAGES).rows}
    sweets = {r["dish"]: stages[r["stage"]] for r in read_csv(SWEETS).rows}
    return {
        **{r["of"]: _reading(r, r["bound"]) for r in read_csv(READINGS).rows},
        **{dish: _reading(r, "above" if r["shifts"] == "yes" else "dry") for dish, r in sweets.items()},
    }


def _reading(row: dict[str, str], bound: str) -> Reading:
    return Reading(to_c(float(row["low_f"])), to_c(float(row["high_f"])), bound)


def reading(dish: str | None, dish_class: str) -> Reading | None:
    """The reading for a dish, or for its class; None where the centre's reading is not what tells.

    source: common-practice

    >>> reading("sourdough", "yeast_bread").bound, reading("pasta", "pasta")
    ('boil', None)
    """
    return next((_rows()[name] for name in (*kin(dish), f"class:{dish_class}") if name in _rows()), None)
