"""The staff of heights at the side of every page: how high the kitchen stands, and where water boils on the way up."""

from __future__ import annotations

from dataclasses import dataclass

from assistant.replies.quantities import Say
from rules.model import Kitchen, Units
from rules.physics.ambient import ambient
from rules.physics.units import FT_PER_M, to_f

HEIGHT, FOOT, TOP = 600.0, 570.0, 30.0
# the marks, from the sea up, in the units they are written in
MARKS: dict[Units, tuple[int, ...]] = {"us": tuple(range(0, 16_000, 2_000)), "metric": tuple(range(0, 5_000, 500))}


@dataclass(frozen=True, slots=True)
class Mark:
    """A mark. y: where it stands on the drawing; high: the height it is for; boils: where water boils there"""

    y: float
    high: str
    boils: str


@dataclass(frozen=True, slots=True)
class Place:
    """The place of a person as the head of a page tells it."""

    name: str
    elevation: str
    boils: str
    how: str
    y: float


def staff(units: Units) -> tuple[Mark, ...]:
    """The marks, the lowest first."""
    return tuple(_mark(high, units) for high in MARKS[units])


def place(kitchen: Kitchen) -> Place | None:
    """Where a kitchen stands; None where nobody knows."""
    if kitchen.elevation_m is None:
        return None
    say, air = Say(kitchen.units), ambient(kitchen.elevation_m, kitchen.pressure_pa)
    return Place(
        name=kitchen.name,
        elevation=say.elevation(kitchen.elevation_m),
        boils=say.temp(air.boiling_c),
        how="barometer" if kitchen.pressure_pa is not None else "",
        y=_y(kitchen.elevation_m, kitchen.units),
    )


def _mark(high: int, units: Units) -> Mark:
    elevation_m = high / FT_PER_M if units == "us" else float(high)
    boil_c = ambient(elevation_m).boiling_c
    boils = f"{to_f(boil_c):.0f} °F" if units == "us" else f"{boil_c:.0f} °C"
    return Mark(_y(elevation_m, units), f"{high:,} {'ft' if units == 'us' else 'm'}", boils)


def _y(elevation_m: float, units: Units) -> float:
    """Where a height stands on the drawing; what lies beyond an end stands at it."""
    highest = MARKS[units][-1]
    high = elevation_m * FT_PER_M if units == "us" else elevation_m
    return round(FOOT - (FOOT - TOP) * min(max(high / highest, 0.0), 1.0), 1)
