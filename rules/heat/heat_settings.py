"""Settings of fat, ovens, grates, smokers and baths that dishes are cooked at, at sea level."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from functools import cache

from rules.foods.dishes import kin
from rules.physics.units import to_c
from rules.said import Measure, oven_span
from rules.tables import read_csv

SETTINGS = "tables/heat_settings_common-practice.csv"


@dataclass(frozen=True, slots=True)
class Setting:
    """A range of temperatures [degC] and the way the heat comes: deep, pan, still, direct, indirect, cold, bath."""

    low_c: float
    high_c: float
    way: str

    @property
    def middle_c(self) -> float:
        """Middle of the range [degC]."""
        return (self.low_c + self.high_c) / 2

    @property
    def span(self) -> Measure:
        """Both ends of it, to be written."""
        return oven_span(self.low_c, self.high_c)


@cache
def _rows() -> dict[tuple[str, str], Setting]:
    return {
        (r["dish"], r["method"]): Setting(to_c(float(r["low_f"])), to_c(float(r["high_f"])), r["way"])
        for r in read_csv(SETTINGS).rows
    }


def own_setting(dish: str | None, method: str) -> Setting | None:
    """The setting of the dish itself, or of the dish it cooks like; None where it has only its class's.

    source: common-practice
    """
    return next((_rows()[name, method] for name in kin(dish) if (name, method) in _rows()), None)


def setting(dish: str | None, dish_class: str, method: str, equipment: Iterable[str] = ()) -> Setting:
    """The dish's own setting, or that of the dish it cooks like, or its class's, or what the method usually runs at.

    equipment: tells how the method is done where no dish is named: a deep fryer is no pan

    raises: KeyError for a method that has no settings
    source: common-practice

    >>> setting("doughnuts", "fried_dough", "fry").way
    'deep'
    >>> setting(None, "general", "fry", ["deep_fryer"]).way, setting(None, "general", "fry").way
    ('deep', 'pan')
    >>> round(setting(None, "custard", "sous_vide").low_c, 1)
    80.0
    """
    if own := own_setting(dish, method):
        return own
    of_class = _rows().get((f"class:{dish_class}", method), _rows()["class:general", method])
    if dish is not None:
        return of_class
    return next((_rows()[row] for id in equipment if (row := (f"equipment:{id}", method)) in _rows()), of_class)
