"""The airport nearest to a position, for its elevation: what stands in for a device that does not tell its own."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from math import asin, cos, radians, sin, sqrt
from typing import Any

from rules.physics.units import M_PER_FT

# of the sphere that has the volume of the earth
EARTH_KM = 6371.0
# further off, its elevation tells nothing of a kitchen
FURTHEST_KM = 80.0
# so many degrees of latitude are further than that
FURTHEST_DEG = 1.0


@dataclass(frozen=True, slots=True)
class Airport:
    """An airport. distance_km: from the position that was told [km]"""

    name: str
    elevation_m: float
    distance_km: float


def nearest(latitude: float, longitude: float) -> Airport | None:
    """The nearest airport to a position [degrees]; None where none is near enough to tell anything.

    >>> nearest(39.25, -106.29).name
    'Lake County Airport'
    """
    near = (row for row in _airports().values() if abs(row["lat"] - latitude) < FURTHEST_DEG)
    found = min(((_apart_km(latitude, longitude, row), row["icao"], row) for row in near), default=None)
    if found is None or found[0] > FURTHEST_KM:
        return None
    distance_km, _, row = found
    return Airport(str(row["name"]), float(row["elevation"]) * M_PER_FT, distance_km)


def _apart_km(latitude: float, longitude: float, row: Mapping[str, Any]) -> float:
    """How far an airport is from a position, along the great circle."""
    here, there = radians(latitude), radians(row["lat"])
    turn = radians(row["lon"] - longitude)
    half = sin((there - here) / 2) ** 2 + cos(here) * cos(there) * sin(turn / 2) ** 2
    return 2 * EARTH_KM * asin(min(1.0, sqrt(half)))


@cache
def _airports() -> Mapping[str, Mapping[str, Any]]:
    import airportsdata

    return airportsdata.load("ICAO")
