"""The formula sheet: percentages by hand, gas by the gas law."""

from __future__ import annotations

import pytest

from rules.physics.air import pressure_pa
from rules.recipes.convert import convert
from rules.recipes.sheet import sheet

LODGE_M = 2133.6


def entries(found):
    return {entry.name: entry for entry in found.entries}


def test_the_sheet_of_a_cake(layer_cake) -> None:
    new = convert(layer_cake, to_elevation_m=LODGE_M, style="layer_cake")
    found = sheet(new)
    assert found.flour_g == 281
    lines = entries(found)
    assert lines["sugar"].was == pytest.approx(100 * 300 / 281, abs=0.1)
    assert lines["sugar"].now < lines["sugar"].was
    # a quarter less powder at 7,000 ft: University of Wyoming Extension, Altitude Adjusters
    assert lines["baking powder"].now == pytest.approx(0.75 * lines["baking powder"].was, abs=0.01)
    thin = pressure_pa(0) / pressure_pa(LODGE_M)
    assert lines["gas"].now == pytest.approx(0.75 * thin * lines["gas"].was, rel=0.02)


def test_what_is_added_counts(hand) -> None:
    from rules.recipe import Recipe

    lines = ((454, "butter"), (454, "sugar"), (450, "egg"), (454, "flour"))
    pound = Recipe(ingredients=tuple(hand.line(grams, "g", item, grams) for grams, item in lines))
    new = convert(pound, to_elevation_m=LODGE_M, style="pound_cake")
    added = next(c for c in new.changes if c.item == "water")
    water = entries(sheet(new))["water"]
    assert added.to_value
    assert water.now - water.was > 100 * added.to_value / 454


def test_no_sheet_where_there_is_no_formula(beans, layer_cake) -> None:
    assert sheet(convert(beans, to_elevation_m=LODGE_M, style="beans")) is None
    same = sheet(convert(layer_cake, to_elevation_m=0, style="layer_cake"))
    assert all(entry.was == entry.now for entry in same.entries)
