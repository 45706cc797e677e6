"""The printed times at the elevation of a kitchen, for every style, pack and jar that can be meant."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from rules.model import Request
from rules.preserving import process_times
from rules.preserving.bands import CEILING_FT, whole_feet
from rules.preserving.printed import Row, asked

# where each column for boiling water ends [ft]; the last is printed without an end
COLUMN_ENDS_FT = (1000, 3000, 6000, CEILING_FT)


@dataclass(frozen=True, slots=True)
class Time:
    """A printed time for a jar, style and pack.

    base_min: in the first column [min]; least_min, most_min: here, by one table and by the longer of two
    memory: whether nobody opened the page
    """

    style: str
    pack: str
    jar: str
    base_min: float
    least_min: float
    most_min: float
    memory: bool


def times(request: Request, canner: str) -> tuple[Time, ...]:
    """The printed times of a request here. Empty where nothing is printed, and above the last column."""
    return tuple(_times(request, canner))


def _times(request: Request, canner: str) -> Iterator[Time]:
    for style, pack, jar, row in asked(request, canner):
        if span := span_min(row, request.elevation_m or 0.0):
            yield Time(style, pack, jar, row.minutes[0], *span, row.memory)


def span_min(row: Row, elevation_m: float) -> tuple[float, float] | None:
    """The time of a row at an elevation [min]: by the guide, and by the longer of the two tables for boiling water."""
    if len(row.minutes) == 1:
        return row.minutes[0], row.minutes[0]
    feet = whole_feet(elevation_m)
    column = next((i for i, end_ft in enumerate(COLUMN_ENDS_FT) if feet <= end_ft), None)
    added = process_times.added(process_times.kind_of(row.minutes[0]), elevation_m)
    if column is None or added is None:
        return None
    return row.minutes[column], row.minutes[column] + max(0.0, added.most_min - added.usda.value)
