"""The tables the formula engine reads: shape, sources, and what an accidental edit would change."""

from __future__ import annotations

from itertools import pairwise

import pytest

from assistant.replies.sentences import worded
from rules.baking import bands, components
from rules.baking.styles import ids
from rules.errors import UnknownWord
from rules.tables import read_csv, sources

FT = 0.3048
BANDED = sorted({table for named in bands.TABLES.values() for table in named})
STYLE_ROWS = read_csv(components.TABLE).rows
WITHOUT_TABLE = ("proof", "salt")


@pytest.mark.parametrize("table", BANDED)
def test_a_band_table_is_whole(table) -> None:
    read = read_csv(table)
    assert read.source in sources()
    assert {"elevation_ft", "per", "low", "high"} <= set(read.units)
    for row in read.rows:
        assert row["way"] in ("less", "more")
        assert 0 <= float(row["low"]) <= float(row["high"])
        assert float(row["per"]) > 0
    for component in {row["component"] for row in read.rows}:
        elevations = [p[0] for p in bands.points(table, component)]
        assert elevations == sorted(set(elevations))


def test_the_wyoming_table_is_as_typed() -> None:
    rows = read_csv(bands.UW_CAKE).rows
    assert len(rows) == 12
    assert sum(float(r["low"]) for r in rows if r["component"] == "liquid") == 6
    assert sum(float(r["high"]) for r in rows if r["component"] == "liquid") == 10
    assert sum(float(r["high"]) for r in rows if r["component"] == "sugar") == 6
    assert sum(float(r["low"]) for r in rows if r["component"] == "leavening") == 0.5


@pytest.mark.parametrize("row", STYLE_ROWS, ids=lambda r: f"{r['style']}-{r['component']}")
def test_a_style_row(row) -> None:
    assert row["style"] in ids()
    assert row["component"] in bands.TABLES or row["component"] in WITHOUT_TABLE
    assert row["source"] in sources()
    low, share, high = (float(row[c]) for c in ("share_low", "share", "share_high"))
    assert 0 <= low <= share <= high <= 1
    note = worded(components.share(row["style"], row["component"]).note, "us")
    assert bool(note) == (share == 0), "a share of nothing says why, another needs no note"


def test_a_style_names_a_component_once() -> None:
    pairs = [(r["style"], r["component"]) for r in STYLE_ROWS]
    assert len(pairs) == len(set(pairs))


@pytest.mark.parametrize("component", sorted(bands.TABLES))
def test_a_component_moves_smoothly_and_one_way(component) -> None:
    spans = [bands.change(component, ft * FT) for ft in range(0, 16_000, 50)]
    values = [s.value for s in spans]
    assert values in (sorted(values), sorted(values, reverse=True))
    top = max(abs(v) for v in values)
    assert max(abs(a - b) for a, b in pairwise(values)) <= top / 15
    for span in spans:
        assert span.low <= span.value <= span.high


@pytest.mark.parametrize("component", sorted(bands.TABLES))
def test_below_the_sea_nothing_changes(component) -> None:
    assert bands.change(component, -400) == bands.NOTHING


@pytest.mark.parametrize(("low_ft", "high_ft"), [(0, 7000), (5280, 300), (6000, 9000)])
@pytest.mark.parametrize("component", ["leavening", "sugar", "liquid", "egg", "flour"])
def test_there_and_back_is_one(component, low_ft, high_ft) -> None:
    there = components.ratio("layer_cake", component, low_ft * FT, high_ft * FT)
    back = components.ratio("layer_cake", component, high_ft * FT, low_ft * FT)
    assert there.value * back.value == pytest.approx(1)
    assert there.low <= there.value <= there.high


def test_by_way_of_another_place_is_the_same() -> None:
    direct = components.ratio("layer_cake", "liquid", 0, 2700).value
    first, second = (components.ratio("layer_cake", "liquid", a, b).value for a, b in ((0, 1400), (1400, 2700)))
    assert first * second == pytest.approx(direct)


def test_a_component_that_is_none() -> None:
    with pytest.raises(UnknownWord, match="leavening"):
        bands.change("leavenin", 2000)
