import pytest

from rules.engine import answer
from rules.model import Request


def ask(**fields):
    return answer(Request(topic="doneness", **fields))


@pytest.mark.parametrize("dish_class", ["poultry_pieces", "ground_meat", "tender_cut", "fish", "egg", "casserole"])
def test_safe_temperatures_do_not_move(dish_class):
    low, high = (ask(dish_class=dish_class, elevation_m=m).figure("safe_temperature") for m in (0.0, 3048.0))
    assert low == high
    assert high.value == high.sea_level


def test_no_elevation_is_needed():
    assert ask(dish="chicken thighs", dish_class="poultry_pieces").missing == ()


def test_the_whole_chart_where_no_food_is_named():
    assert len(ask().figures) == 7


def test_a_braise_cannot_reach_203_up_here():
    high, low = (ask(dish="short ribs", dish_class="collagen_cut", elevation_m=m) for m in (2133.6, 0.0))
    assert any("cannot reach it" in c.text for c in high.cautions)
    assert not any("cannot reach it" in c.text for c in low.cautions)


@pytest.mark.parametrize(("dish", "dish_class"), [("turkey burgers", "ground_meat"), ("chicken sausage", "sausage")])
def test_ground_poultry_counts_as_poultry(dish, dish_class):
    assert "165 °F" in ask(dish=dish, dish_class=dish_class).headline


def test_a_food_without_a_row_is_said_so():
    given = ask(dish="pasta", dish_class="pasta")
    assert "no safe temperature" in given.headline
    assert any("white core" in step for step in given.steps)
