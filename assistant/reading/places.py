"""Elevations of places by name. Where only an airport is known its elevation stands near the town's."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache
from typing import Any

from rules import tables
from rules.physics.units import M_PER_FT

# from here on a place is in the hills [m]
HILLS_M = 700.0


@cache
def _rows() -> dict[str, dict[str, Any]]:
    path = "lexicon/places.toml"
    rows = tables.read_toml(path)["place"] if tables.data_path(path).is_file() else []
    return {row["name"]: row for row in rows}


@cache
def _airports() -> Mapping[str, Mapping[str, Any]]:
    import airportsdata

    return airportsdata.load("IATA")


def names_dishes(place: str) -> bool:
    """Whether dishes are called after a place: Santa Fe enchiladas, Madras curry."""
    return bool(_rows().get(place, {}).get("names_dishes", False))


def is_baseline(place: str) -> bool:
    """Whether a place is so wide and low that it tells where a recipe is from, but never where a kitchen is: Ohio."""
    return bool(_rows().get(place, {}).get("baseline_only", False))


def height_unit(place: str) -> str:
    """The unit of heights about a place of the lexicon; empty in the lowlands, whose cooks may be anywhere.

    >>> height_unit("Leadville"), height_unit("Zermatt"), height_unit("London")
    ('ft', 'm', '')
    """
    if _rows().get(place, {}).get("feet", False):
        return "ft"
    return "m" if (elevation_m(place) or 0.0) >= HILLS_M else ""


def elevation_m(place: str) -> float | None:
    """Elevation of a place of the lexicon [m], or None where neither it nor its airport is known."""
    row = _rows().get(place, {})
    if "elevation_m" in row:
        return float(row["elevation_m"])
    airport = _airports().get(str(row.get("airport", "")).upper())
    return float(airport["elevation"]) * M_PER_FT if airport else None
