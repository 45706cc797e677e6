"""The liquid of a dish, and how much more of it up high."""

from __future__ import annotations

from dataclasses import replace

import pytest

from rules.amounts import liquid
from rules.amounts.liquid import ABSORBED, BREWED, COVERS, LIQUIDS, PLENTY, needed, ratio, vessel
from rules.book import Case
from rules.foods.dishes import classes, dishes
from rules.model import Quantity, Request
from rules.physics.units import M_PER_FT, ML_PER_CUP
from rules.tables import read_csv

RICE = Request(topic="liquid", dish="white rice", dish_class="rice", elevation_m=9000 * M_PER_FT)
RIBS = Request(topic="liquid", dish="short ribs", dish_class="collagen_cut", elevation_m=2400.0)


@pytest.mark.parametrize("row", read_csv(LIQUIDS).rows, ids=lambda row: f"{row['dish']} {row['vessel']}")
def test_a_row_names_what_there_is(row: dict[str, str]) -> None:
    assert row["dish"] in dishes() or row["dish"].removeprefix("class:") in classes()
    assert row["way"] in (ABSORBED, COVERS, PLENTY, BREWED)
    assert float(row["low"]) <= float(row["amount"]) <= float(row["high"])
    assert row["per"] == "kg" or float(row["g_per_cup"]) > 0


def test_a_cup_of_rice_takes_more_water_the_higher_it_is_cooked() -> None:
    cups = [needed(Case(replace(RICE, elevation_m=m))).here_ml / ML_PER_CUP for m in (0.0, 1500.0, 3000.0)]
    assert cups[0] == pytest.approx(2.0)
    assert cups == sorted(cups)
    assert cups[2] < 2.7


def test_below_two_thousand_feet_nothing_is_added() -> None:
    assert needed(Case(replace(RICE, elevation_m=500.0))).extra_ml == 0


def test_a_big_batch_is_given_half_as_much_more() -> None:
    small, large = (needed(Case(replace(RICE, quantity=Quantity(kg, "kg")))) for kg in (0.5, 5))
    assert large.extra_ml / large.sea_ml == pytest.approx(small.extra_ml / small.sea_ml / 2)


def test_so_many_covers_take_portions_times_rice_times_ratio() -> None:
    found = needed(Case(replace(RICE, portions=80)))
    assert found.of_g == pytest.approx(80 * 41.25, rel=0.01)
    assert found.sea_ml == pytest.approx(found.of_g / 185 * 2 * ML_PER_CUP, rel=0.01)
    assert found.here_ml == pytest.approx(found.sea_ml * 1.1125, rel=0.01)


def test_a_covered_pan_in_steam_takes_less() -> None:
    steamed = replace(RICE, equipment=("combi_oven",))
    assert vessel(steamed) == "steam"
    assert ratio(steamed).ml_per_g < ratio(RICE).ml_per_g
    assert vessel(replace(RICE, counted_in=("pan_2in",))) == "steam"


def test_a_rice_cooker_has_its_own() -> None:
    assert ratio(replace(RICE, equipment=("rice_cooker",))).ml_per_g < ratio(RICE).ml_per_g


def test_a_braise_loses_what_the_longer_simmer_boils_off() -> None:
    shut, open_pot = (needed(Case(replace(RIBS, quantity=Quantity(10, "kg"), covered=c))) for c in (True, False))
    assert 0 < shut.extra_ml < open_pot.extra_ml
    assert needed(Case(replace(RIBS, elevation_m=0.0))).extra_ml == 0


def test_what_is_poured_away_is_the_same_everywhere() -> None:
    pasta = Request(dish="penne", dish_class="pasta", quantity=Quantity(1, "lb"), elevation_m=3000.0)
    assert needed(Case(pasta)).extra_ml == 0


def test_a_dish_without_a_ratio_has_none() -> None:
    assert needed(Case(Request(dish="croissants", dish_class="laminated"))) is None


def test_cups_of_it_are_weighed_by_its_own_cup() -> None:
    assert liquid.amount_g(replace(RICE, quantity=Quantity(4, "cup")), ratio(RICE)) == pytest.approx(4 * 185)
