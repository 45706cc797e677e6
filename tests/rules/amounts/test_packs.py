"""Pieces, packs and pans."""

from __future__ import annotations

import pytest

from rules.amounts.packs import PACKS, PIECES, pack, pan_holds_g, pan_holds_raw_g, pans, piece, whole
from rules.amounts.stores import INGREDIENTS, STORES
from rules.baking.parts import pantry
from rules.foods.dishes import classes, dishes
from rules.tables import read_csv


@pytest.mark.parametrize("row", read_csv(PIECES).rows, ids=lambda row: row["dish"])
def test_a_piece_is_of_a_dish_or_a_class(row: dict[str, str]) -> None:
    assert row["dish"] in dishes() or row["dish"].removeprefix("class:") in classes()
    assert row["grams"] or row["portions"]


@pytest.mark.parametrize("row", read_csv(PACKS).rows, ids=lambda row: row["dish"])
def test_a_pack_is_of_a_dish_or_a_class(row: dict[str, str]) -> None:
    assert row["dish"] in dishes() or row["dish"].removeprefix("class:") in classes()
    assert_sold(row)


@pytest.mark.parametrize("row", read_csv(INGREDIENTS).rows, ids=lambda row: row["item"])
def test_a_pack_is_of_an_ingredient_or_its_role(row: dict[str, str]) -> None:
    assert row["item"] in pantry() or row["item"].removeprefix("role:") in {one["role"] for one in pantry().values()}
    assert_sold(row)


def assert_sold(row: dict[str, str]) -> None:
    assert row["store"] in STORES
    if row["split_g"]:
        assert float(row["split_g"]) < float(row["grams"])


def test_a_dish_has_the_piece_of_what_it_cooks_like() -> None:
    assert piece("pulled pork", "collagen_cut") == piece("pork shoulder", "collagen_cut")
    assert piece("polenta", "porridge") is None


def test_what_is_sold_by_the_bag() -> None:
    assert pack("white rice", "rice") == ("bag", 22680.0)
    assert pack("creme brulee", "custard") is None


def test_a_deeper_pan_holds_more() -> None:
    held = [pan_holds_g(pan, "white rice", "rice") for pan in pans()]
    assert held == sorted(held)
    assert len(set(held)) == 3


def test_a_shallow_pan_of_rice_takes_some_four_pounds_dry() -> None:
    """Common practice: 4 to 5 lb of dry rice to a full 2½-inch pan."""
    assert 1600 <= pan_holds_raw_g(pans()[0], "white rice", "rice") <= 2300


def test_a_crumb_over_is_no_further_pan() -> None:
    assert (whole(4.05), whole(4.3)) == (4, 5)
