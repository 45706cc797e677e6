"""Jars: which printed size a jar takes the process of."""

from __future__ import annotations

from functools import cache

from rules.model import Quantity
from rules.tables import read_csv

SIZES = "tables/jar_sizes_common-practice.csv"
ML = {
    "pt": 473.176, "qt": 946.353, "gal": 3785.41, "oz": 29.5735, "fl_oz": 29.5735,
    "ml": 1.0, "cl": 10.0, "dl": 100.0, "l": 1000.0,
}  # fmt: skip
# a jar this size is printed under its own name
NAMED = {(0.5, "pt"): "half_pint", (1.0, "pt"): "pint", (1.0, "qt"): "quart", (0.5, "gal"): "half_gallon"}


@cache
def sizes() -> dict[str, float]:
    """The printed sizes with what a jar of each holds at most [ml], the smallest first."""
    return {row["size"]: float(row["holds_ml"]) for row in read_csv(SIZES).rows}


def size_of(jar: Quantity) -> str | None:
    """The smallest printed size that holds as much as a jar; None for one that is bigger than all.

    >>> size_of(Quantity(4, "oz")), size_of(Quantity(500, "ml")), size_of(Quantity(1, "gal"))
    ('half_pint', 'pint', None)
    """
    held_ml = jar.value * ML[jar.unit]
    return next((size for size, holds_ml in sizes().items() if held_ml <= holds_ml), None)


def by_name(jar: Quantity) -> bool:
    """Whether a jar is called by the name of a printed size."""
    return (jar.value, jar.unit) in NAMED


def fitting(size: str, printed: tuple[str, ...]) -> str | None:
    """The size among those that are printed whose time a jar takes: its own, or the next bigger one.

    >>> fitting("half_pint", ("pint", "quart")), fitting("quart", ("half_pint", "pint"))
    ('pint', None)
    """
    order = list(sizes())
    return next((other for other in order if other in printed and order.index(other) >= order.index(size)), None)
