"""Printed elevation bands: which one a kitchen is in, and what stands in it."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from rules.physics.units import FT_PER_M
from rules.said import Said, number, sentences
from rules.tables import read_csv

# no canning table that was found was made for kitchens above this, whether or not it says so
CEILING_FT = 10_000
NEAR_EDGE_FT = 200
say = sentences("preserving/bands")


@dataclass(frozen=True, slots=True)
class Band:
    """A band of a printed table. high_ft is None where it is printed as "above"; value is the cell."""

    low_ft: int
    high_ft: int | None
    value: float
    source: str

    @property
    def said(self) -> Said:
        """The band as it is printed: `1,001–3,000 ft`, `above 6,000 ft`."""
        if self.high_ft is None:
            return say("open", low_ft=number(self.low_ft - 1))
        return say("closed", low_ft=number(self.low_ft), high_ft=number(self.high_ft))


def whole_feet(elevation_m: float) -> int:
    """An elevation as the tables print it, in whole feet; below sea level, where water boils hotter, the lowest band.

    >>> whole_feet(304.8), whole_feet(305), whole_feet(-50)
    (1000, 1001, 0)
    """
    return max(0, round(elevation_m * FT_PER_M))


def in_band(bands: Iterable[Band], feet: int) -> Band | None:
    """The band that holds this elevation [ft], or None where the table has none for it."""
    if feet > CEILING_FT:
        return None
    return next((b for b in bands if b.low_ft <= feet and (b.high_ft is None or feet <= b.high_ft)), None)


def bands(file: str, column: str, **where: str) -> tuple[Band, ...]:
    """The bands of a table in data/tables, for the rows in which the named columns hold the given words."""
    table = read_csv(f"tables/{file}.csv")
    return tuple(
        Band(
            int(row["low_ft"]),
            int(row["high_ft"]) if row["high_ft"] else None,
            float(row[column]),
            row.get("source", table.source),
        )
        for row in table.rows
        if all(row[name] == word for name, word in where.items())
    )


def near_edge(band: Band, feet: int) -> bool:
    """Whether the elevation lies so close under the next band that a map should be asked."""
    return band.high_ft is not None and band.high_ft - feet < NEAR_EDGE_FT


def empty_jars_min(elevation_m: float) -> float:
    """The guide's boil for empty jars [min]: 10 below 1,000 ft, and one more for each additional 1,000 ft.

    source: usda-aib-539; csu-preserve-smart prints 15 min at 5,000 ft

    >>> empty_jars_min(304), empty_jars_min(305), empty_jars_min(1560)
    (10.0, 11.0, 15.0)
    """
    return 10.0 + max(0, whole_feet(elevation_m) // 1000)


def ten_minutes_and_more(elevation_m: float) -> float:
    """The boil of home-canned food before tasting [min]: 10, and one more for each 1,000 ft.

    Begun thousands count, from 1,000 ft up: a toxin is at stake, so of two readings of the guide it is the longer.

    source: usda-aib-539; csu-preserve-smart prints 15 min at 5,000 ft

    >>> ten_minutes_and_more(0), ten_minutes_and_more(1524), ten_minutes_and_more(1676.4)
    (10.0, 15.0, 16.0)
    """
    feet = whole_feet(elevation_m)
    return 10.0 + (-(-feet // 1000) if feet >= 1000 else 0)
