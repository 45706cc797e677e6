"""The air of a place: elevation, pressure and where water boils in it."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

from rules.physics import air, water


@dataclass(frozen=True, slots=True)
class Ambient:
    """The air of one place: elevation [m], absolute pressure [Pa] and the boiling point of pure water [degC]."""

    elevation_m: float
    pressure_pa: float
    boiling_c: float


@lru_cache(maxsize=8192)
def ambient(elevation_m: float, pressure_pa: float | None = None) -> Ambient:
    """The air at an elevation [m], by the standard atmosphere or by the station pressure [Pa] that was measured.

    raises: OutOfRange outside -430 to 5,500 m
    source: us-std-atm-1976, iapws-r7-97

    >>> round(ambient(2133.6).boiling_c, 2)
    92.87
    """
    pressure = air.pressure_pa(elevation_m) if pressure_pa is None else pressure_pa
    return Ambient(elevation_m, pressure, water.saturation_temp_c(pressure))
