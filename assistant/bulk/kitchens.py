"""The kitchens of a group, from a table: name, elevation, units."""

from __future__ import annotations

import csv
import io
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path

from assistant.bulk.faults import Fault
from assistant.errors import AssistantError
from rules.model import Units

NAME, ELEVATION, UNITS = "name", "elevation", "units"
SYSTEMS: tuple[Units, ...] = ("us", "metric")


class BadKitchens(AssistantError, ValueError):
    """A table of kitchens of which nothing can be read; the message says what is wrong and how it should look."""


@dataclass(frozen=True, slots=True)
class Place:
    """What a conversion goes by: elevation [m], and the units that stand first in its words."""

    elevation_m: float
    units: Units


@dataclass(frozen=True, slots=True)
class Kitchens:
    """Kitchens by name, in the order of the table, each with its place; and the rows that tell of none."""

    names: tuple[str, ...]
    places: tuple[Place, ...]
    faults: tuple[Fault, ...]

    @property
    def distinct(self) -> tuple[Place, ...]:
        """The places, each once: kitchens at the same one share their conversions."""
        return tuple(dict.fromkeys(self.places))


def read_kitchens(path: Path) -> Kitchens:
    """The kitchens of a CSV file with the columns name, elevation (7000 ft, 2134 m, a town) and, if wanted, units.

    raises: BadKitchens where the file or its columns are not there, or no row tells of a kitchen
    """
    found: dict[str, Place] = {}
    faults: list[Fault] = []
    for line, row in _rows(path):
        try:
            name, place = _kitchen(row)
            if name in found:
                raise BadKitchens(f"there is a kitchen of that name already: {name}; give each a name of its own")
        except AssistantError as fault:
            faults.append(Fault(kind="kitchen", kitchen=row.get(NAME, ""), line=line, problem=str(fault)))
        else:
            found[name] = place
    if not found:
        raise BadKitchens(f"{path} tells of no kitchen{f'; in line {faults[0].line}: {faults[0]}' if faults else ''}")
    return Kitchens(tuple(found), tuple(found.values()), tuple(faults))


def _rows(path: Path) -> Iterator[tuple[int, dict[str, str]]]:
    """Every row that is not empty, with the line it ends in."""
    try:
        text = path.read_bytes().decode("utf-8-sig", errors="replace")
    except OSError as fault:
        raise BadKitchens(f"{path} cannot be read ({(fault.strerror or 'no such file').lower()})") from None
    table = csv.reader(io.StringIO(text, newline=""))
    head = [cell.strip().lower() for cell in next(_told(table), [])]
    if missing := [column for column in (NAME, ELEVATION) if column not in head]:
        raise BadKitchens(
            f"{path} has no column {' and none '.join(missing)}; its first line should be name,elevation,units, "
            "and each line after it a kitchen: Timberfold Lodge,7000 ft,us"
        )
    for cells in _told(table):
        yield table.line_num, dict(zip(head, (cell.strip() for cell in cells), strict=False))


def _told(table: Iterable[list[str]]) -> Iterator[list[str]]:
    try:
        yield from (cells for cells in table if any(cell.strip() for cell in cells))
    except csv.Error as fault:
        raise BadKitchens(f"the table of kitchens is no CSV: {fault}") from None


def _kitchen(row: dict[str, str]) -> tuple[str, Place]:
    name, units = row.get(NAME, ""), row.get(UNITS, "").lower()
    if not name:
        raise BadKitchens("this line has no name of a kitchen")
    if units and units not in SYSTEMS:
        raise BadKitchens(
            f"units {units!r} are none of {', '.join(SYSTEMS)}; leave them out to have those of the elevation"
        )
    heard = _place(row.get(ELEVATION, ""))
    return name, Place(heard.elevation_m, next((system for system in SYSTEMS if system == units), heard.units))


@lru_cache(maxsize=65_536)
def _place(text: str) -> Place:
    from assistant.understanding.elevation_told import elevation_told

    if not text:
        raise BadKitchens("this line has no elevation; say 7000 ft, 2134 m or a town")
    heard = elevation_told(text)
    return Place(heard.elevation_m or 0.0, heard.units)
