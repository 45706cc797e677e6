"""The process time in boiling water or open steam: the tested recipe's time, and what the band of the kitchen adds."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from functools import cache

from rules.model import Request
from rules.preserving.bands import Band, bands, in_band, whole_feet
from rules.preserving.printed import shortest_min
from rules.preserving.vessel import BOILING_WATER, PRESSURE, food_of, has_canner, in_half_gallons, named, vessel

USDA, USU = "canning_time_usda-aib-539", "canning_time_usu-canning-bands"
SHORT, LONG = "short", "long"
SHORT_TO_MIN = 15.0
# every process time that was ever tested lies well within these
SHORTEST_MIN, LONGEST_MIN = 5.0, 180.0
NO_TIME = (math.inf, -math.inf)


@dataclass(frozen=True, slots=True)
class Added:
    """What the printed tables add to a process of one kind at one elevation [min].

    usda: the band of the USDA guide; usu: the band of Utah State's tables, None where they have none
    """

    usda: Band
    usu: Band | None

    @property
    def least_min(self) -> float:
        """The smaller addition of the two tables."""
        return min(self.usda.value, self.usu.value) if self.usu else self.usda.value

    @property
    def most_min(self) -> float:
        """The larger one, which is the safe one."""
        return max(self.usda.value, self.usu.value) if self.usu else self.usda.value

    @property
    def differ(self) -> bool:
        """Whether the two tables disagree."""
        return self.least_min != self.most_min


@cache
def _bands(file: str, process: str) -> tuple[Band, ...]:
    return bands(file, "add_min", process=process)


def added(process: str, elevation_m: float) -> Added | None:
    """What to add to a short or long process at an elevation [m]; None above the last band of every table.

    process: "short", 5 to 15 min in the column for 0-1,000 ft, or "long", 20 min and more
    source: usda-aib-539, usu-canning-bands

    >>> added("long", 2133.6).usda.value, added("long", 2743.2).usu.value
    (15.0, 20.0)
    """
    feet = whole_feet(elevation_m)
    usda = in_band(_bands(USDA, process), feet)
    return Added(usda, in_band(_bands(USU, process), feet)) if usda else None


def kind_of(base_min: float) -> str:
    """Whether a process is read in the short or the long tables, by its time in the column for 0-1,000 ft [min].

    A time between the two is read as long, which adds more.
    """
    return SHORT if base_min <= SHORT_TO_MIN else LONG


def given(request: Request) -> bool:
    """Whether the cook named a time."""
    return request.time_min is not None


def base_min(request: Request) -> float | None:
    """The process time that the cook read for the canner that is asked for [min], the longer end of a range.

    None where no time was given, or one that no table prints for the food, the jar and the canner at the elevation it
    was read for: it was read for another canner, or wrongly. Under pressure the canner must have been named.

    source: usda-aib-539, by the shortest and longest times in data/tables/canning_foods_usda-aib-539.csv
    """
    if request.time_min is None:
        return None
    time = request.time_high_min or request.time_min
    low, high = _under_pressure(request) if vessel(request) == PRESSURE else _in_water(request)
    return time if low <= time <= high else None


def _under_pressure(request: Request) -> tuple[float, float]:
    """The shortest and longest time that can be right in a pressure canner [min]; an empty span where none can."""
    if not named_pressure(request):
        return NO_TIME
    low, high = food_of(request).pressure_min or NO_TIME
    return max(low, shortest_min(request, PRESSURE) or low), high


def named_pressure(request: Request) -> bool:
    """Whether the cook told that the canner is one under pressure: named it, its gauge, or owns one."""
    return named(request) == PRESSURE or has_canner(request)


def _in_water(request: Request) -> tuple[float, float]:
    """The same for boiling water and open steam, at the elevation the recipe was read for."""
    food = food_of(request)
    least = (food.half_gallon_min if in_half_gallons(request) else food.water_min) or SHORTEST_MIN
    least = max(least, shortest_min(request, BOILING_WATER) or least)
    there = added(kind_of(least), request.from_elevation_m or 0.0)
    return least + (there.least_min if there else 0.0), LONGEST_MIN


def longest_min(request: Request) -> float | None:
    """How long the process of a request is here [min]; the shortest that is printed where no time was given.

    None where neither time nor food is known, and above every table. The shortest is of the column for 0-1,000 ft,
    wherever the recipe was read.
    """
    if base_min(request) is None:
        least = food_of(request).water_min
        request = replace(request, time_min=least, time_high_min=None, from_elevation_m=None)
    found = process(request)
    return found.most_min if found else None


@dataclass(frozen=True, slots=True)
class Process:
    """A process time here [min]: least by one table, most by the other; base is what the recipe says."""

    base_min: float
    least_min: float
    most_min: float
    added: Added


def process(request: Request) -> Process | None:
    """The process time in water at the kitchen of a request, from the time that its tested recipe prints.

    A recipe that was read for a higher band keeps its time: a process is never shortened here. One that is said to be
    for a place above every table is taken for one of the lowest band.

    returns: None above every table, and where the cook gave no time that can be right
    """
    base = base_min(request)
    if base is None:
        return None
    here_m, there_m = request.elevation_m or 0.0, request.from_elevation_m or 0.0
    kind = _kind_at(base, there_m)
    here, there = added(kind, here_m), added(kind, there_m)
    if here is None:
        return None
    already = there.least_min if there else 0.0
    return Process(base, base + max(0.0, here.least_min - already), base + max(0.0, here.most_min - already), here)


def _kind_at(time_min: float, elevation_m: float) -> str:
    """Short or long, for a time read in the band of this elevation; long where both could be, which adds more."""
    at_long = added(LONG, elevation_m)
    return kind_of(time_min - at_long.least_min) if at_long else LONG
