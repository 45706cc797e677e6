"""What one guest gets, by how it is served."""

from __future__ import annotations

import pytest

from rules.amounts.portion import BUFFET_OVER, HEAD, PORTION, SERVINGS, WAYS, head, over, portion, serving, way_of
from rules.foods.dishes import PORTIONS, classes, dishes
from rules.model import Quantity, Request
from rules.tables import read_csv

STATES = {
    "dry", "raw", "bone_in", "bird", "unpeeled", "untrimmed", "in_shell", "shell_on", "dough", "batter", "finished",
    "in_pot", "salad", "plain",
}  # fmt: skip


def rice(**changes: object) -> Request:
    return Request(topic="order", dish="white rice", dish_class="rice", **changes)  # type: ignore[arg-type]


@pytest.mark.parametrize("row", read_csv(PORTIONS).rows, ids=lambda row: row["dish"])
def test_how_it_is_bought_is_a_state_that_is_worded(row: dict[str, str]) -> None:
    assert row["state"] in STATES


@pytest.mark.parametrize("row", read_csv(SERVINGS).rows, ids=lambda row: row["dish"])
def test_the_usual_way_has_its_share(row: dict[str, str]) -> None:
    assert row["usual"] in (*WAYS, HEAD)
    assert row["usual"] == HEAD or row[row["usual"]]
    assert all(0 < float(row[way]) <= 1.6 for way in WAYS if row[way])
    assert row["dish"] in dishes() or row["dish"].removeprefix("class:") in classes()


def test_a_side_is_less_than_a_main() -> None:
    assert head(rice(course="side")).raw_g < head(rice(course="main")).raw_g


def test_a_way_in_which_it_is_not_served_is_the_usual_one() -> None:
    assert way_of(rice(course="starter")) == "side"


def test_the_weight_that_the_cook_wants_on_the_plate_counts() -> None:
    brisket = Request(
        dish="beef brisket", dish_class="collagen_cut", quantity=Quantity(6, "oz"), quantity_of=PORTION, portions=10
    )
    one = head(brisket)
    assert one.cooked_g == pytest.approx(170, abs=1)
    assert one.raw_g == pytest.approx(170 / portion("beef brisket", "collagen_cut").yields, abs=2)


def test_a_buffet_is_made_over() -> None:
    assert over("buffet") == 1 + BUFFET_OVER
    assert over("main") == 1


@pytest.mark.parametrize("name", classes())
def test_every_class_can_be_served(name: str) -> None:
    served = serving(None, name)
    assert served.usual in served.shares
    assert portion(None, name).raw_g > 0
