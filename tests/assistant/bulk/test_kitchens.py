"""A table of kitchens: what it may hold, and what becomes of rows that tell of no kitchen."""

from __future__ import annotations

from pathlib import Path

import pytest

from assistant.bulk.kitchens import BadKitchens, Place, read_kitchens


def told(tmp_path: Path, text: str | bytes) -> Path:
    path = tmp_path / "kitchens.csv"
    path.write_bytes(text if isinstance(text, bytes) else text.encode())
    return path


def test_elevations_are_read_in_feet_in_metres_and_by_town(tmp_path: Path) -> None:
    read = read_kitchens(
        told(tmp_path, 'Name,Elevation,Units\nLodge,"7,000 ft",\nDock,30 m,us\nDepot,Santa Fe,metric\n')
    )
    assert read.names == ("Lodge", "Dock", "Depot")
    lodge, dock, depot = read.places
    assert lodge == Place(2133.6, "us")
    assert dock == Place(30.0, "us")
    # Santa Fe lies at 7,199 ft by the U.S. Geological Survey; its airport, by which towns are found, below it
    assert depot.elevation_m == pytest.approx(2194, abs=300)
    assert depot.units == "metric"


def test_kitchens_at_one_elevation_share_it(tmp_path: Path) -> None:
    read = read_kitchens(told(tmp_path, "name,elevation,units\nA,7000 ft,us\nB,2133.6 m,us\nC,7000 ft,metric\n"))
    assert read.distinct == (Place(2133.6, "us"), Place(2133.6, "metric"))


@pytest.mark.parametrize(
    ("row", "says"),
    [
        ("Attic,up high,", "up high"),
        ("Attic,,", "no elevation"),
        ("Attic,30000 ft,", "higher than any mountain"),
        (",7000 ft,", "no name"),
        ("Attic,7000 ft,furlongs", "furlongs"),
        ("Lodge,5000 ft,", "already"),
    ],
)
def test_a_row_that_tells_of_no_kitchen_stops_no_other(tmp_path: Path, row: str, says: str) -> None:
    read = read_kitchens(told(tmp_path, f"name,elevation,units\nLodge,7000 ft,us\n\n{row}\nDock,30 m,\n"))
    assert read.names == ("Lodge", "Dock")
    (fault,) = read.faults
    assert (fault.kind, fault.line) == ("kitchen", 4)
    assert says in fault.problem


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("", "name,elevation,units"),
        ("kitchen,height\nLodge,7000 ft\n", "no column name and none elevation"),
        ("name,elevation\n", "no kitchen"),
        (b"\xff\xfe\x00", "name,elevation,units"),
    ],
)
def test_a_table_of_no_kitchens_says_how_it_should_look(tmp_path: Path, text: str | bytes, says: str) -> None:
    with pytest.raises(BadKitchens, match=says):
        read_kitchens(told(tmp_path, text))


def test_a_table_that_is_not_there(tmp_path: Path) -> None:
    with pytest.raises(BadKitchens, match="cannot be read"):
        read_kitchens(tmp_path / "none.csv")
