"""Usual formulas, printed yields, and what is bought for a dish."""

from __future__ import annotations

from itertools import groupby

import pytest

from rules.amounts.makings import MAKINGS, is_the, share_of
from rules.amounts.portion import portion
from rules.amounts.stores import kept
from rules.amounts.yields import TABLES, trimmed
from rules.baking.parts import pantry
from rules.foods.dishes import classes, dishes
from rules.recipes.formulas import at
from rules.tables import read_csv, sources
from rules.topics.order.taken import energy_kj, is_made, needs, of_dish

ROWS = read_csv(MAKINGS).rows
HIGH_M = 2133.6


def class_of(dish: str) -> str:
    return dish.removeprefix("class:") if dish.startswith("class:") else dishes()[dish].dish_class


@pytest.mark.parametrize("row", ROWS, ids=lambda row: f"{row['dish']}, {row['item']}")
def test_an_ingredient_is_known_and_has_a_store(row: dict[str, str]) -> None:
    assert row["dish"] in dishes() or row["dish"].removeprefix("class:") in classes()
    assert row["item"] in pantry() or row["item"] in dishes()
    assert row["item"] == "water" or row["dish"] == row["item"] or kept(row["item"]).store != "other"


@pytest.mark.parametrize(
    ("dish", "rows"), [(dish, list(rows)) for dish, rows in groupby(ROWS, key=lambda row: row["dish"])]
)
def test_dough_and_batter_are_whole(dish: str, rows: list[dict[str, str]]) -> None:
    one = portion(None if dish.startswith("class:") else dish, class_of(dish))
    if one.state in ("dough", "batter"):
        assert sum(float(row["share"]) for row in rows) == pytest.approx(1.0, abs=0.02)


@pytest.mark.parametrize("table", TABLES)
def test_a_yield_is_of_a_dish_and_says_where_it_comes_from(table: str) -> None:
    read = read_csv(table)
    assert sources()[read.source].basis in ("published", "published, read in a reprint", "from memory")
    for row in read.rows:
        assert row["food"] in dishes()
        swells = portion(row["food"], class_of(row["food"])).state == "dry"
        assert (1 < float(row["share"]) <= 4) if swells else (0 < float(row["share"]) <= 1)


def test_trim_never_leaves_less_than_what_is_cooked_of_it() -> None:
    assert trimmed("onions").share == 0.90  # type: ignore[union-attr]
    assert portion("onions", "tender_vegetable").yields == 0.78


def test_an_ingredient_has_a_share_by_any_of_its_names() -> None:
    assert share_of("bread flour", "pancakes", "quick_bread") == share_of(
        "all-purpose flour", "pancakes", "quick_bread"
    )
    assert share_of("eggs", "pancakes", "quick_bread") == 0.09
    assert share_of("sugar", "short ribs", "collagen_cut") is None
    assert not is_the("butter", "baking powder")


def test_at_its_own_elevation_a_formula_stays_what_it_is() -> None:
    for one in at("cornbread", "quick_bread", HIGH_M, HIGH_M):
        assert one.here == one.there


def test_up_high_a_formula_has_less_leavening_and_more_liquid() -> None:
    changes = {one.item: one.change for one in at("cornbread", "quick_bread", 0.0, HIGH_M)}
    assert changes["baking powder"] < -0.1
    assert changes["granulated sugar"] < 0 < changes["whole milk"]
    assert changes["salt"] == 0


def test_a_formula_of_a_pot_stays_what_it_is() -> None:
    assert all(one.change == 0 for one in at("tomato soup", "soup", 0.0, HIGH_M))


def test_what_is_bought_for_a_braise_is_the_meat_and_its_stock() -> None:
    bought = {need.item: need for need in needs(of_dish("oxtail", portions=40, elevation_m=HIGH_M))}
    assert set(bought) == {"oxtail", "stock"}
    assert bought["oxtail"].change == 0 < bought["stock"].change


def test_only_its_recipe_tells_what_goes_into_a_chowder() -> None:
    assert is_made(of_dish("clam chowder", portions=10))
    assert not is_made(of_dish("tomato soup", portions=10))
    assert needs(of_dish("clam chowder", portions=10)) == ()


def test_the_heat_of_a_pot_grows_with_the_time() -> None:
    braise = of_dish("oxtail", portions=80, elevation_m=HIGH_M)
    short, long = (energy_kj(braise, minutes, 200.0) for minutes in (200.0, 320.0))
    assert short < 0 < long
