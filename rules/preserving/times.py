"""The process time in boiling water or open steam: the tested recipe's time, and what the band of the kitchen adds."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

from rules.errors import within
from rules.model import Request
from rules.preserving.bands import Band, bands, in_band, whole_feet

USDA, USU = "canning_time_usda-aib-539", "canning_time_usu-canning-bands"
SHORT, LONG = "short", "long"
SHORT_TO_MIN = 15.0
# every process time that was ever tested lies well within these
SHORTEST_MIN, LONGEST_MIN = 5.0, 180.0


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


def stated_min(request: Request) -> float | None:
    """The process time that the cook read in a recipe [min], the longer end of a range; None where none was given.

    raises: OutOfRange for a time that no tested process has
    """
    if request.time_min is None:
        return None
    hint = "Read the process time in a tested recipe, in the column for 0–1,000 ft."
    return within("process time", request.time_high_min or request.time_min, SHORTEST_MIN, LONGEST_MIN, "min", hint)


@dataclass(frozen=True, slots=True)
class Process:
    """A process time here [min]: least by one table, most by the other; base is what the recipe says."""

    base_min: float
    least_min: float
    most_min: float
    added: Added


def process(request: Request) -> Process | None:
    """The process time at the kitchen of a request, from the time its tested recipe prints; None above every table.

    A recipe that was read for a higher band keeps its time: a process is never shortened here.

    raises: OutOfRange for a time that no tested process has; ValueError where no time was given
    """
    base = stated_min(request)
    if base is None:
        raise ValueError("give the process time that the tested recipe prints")
    here_m, there_m = request.elevation_m or 0.0, request.from_elevation_m or 0.0
    kind = _kind_at(base, there_m)
    here, there = added(kind, here_m), added(kind, there_m)
    if here is None:
        return None
    already = there.least_min if there else here.most_min
    return Process(base, base + max(0.0, here.least_min - already), base + max(0.0, here.most_min - already), here)


def _kind_at(time_min: float, elevation_m: float) -> str:
    """Short or long, for a time read in the band of this elevation; long where both could be, which adds more."""
    at_long = added(LONG, elevation_m)
    return kind_of(time_min - at_long.least_min) if at_long else LONG
