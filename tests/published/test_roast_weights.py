"""Birds and joints by their weight, cells of the printed charts typed again."""

import pytest

from assistant.replies.worded import answer
from rules.model import Quantity, Request
from rules.physics.units import to_f


def at_sea(dish, dish_class, lb, method="roast", **fields):
    return answer(
        Request(dish=dish, dish_class=dish_class, method=method, elevation_m=0.0, quantity=Quantity(lb, "lb"), **fields)
    )


# turkey at 325 degF, from the lightest to the heaviest of a band: 8 to 12 lb 2 3/4 to 3 h, 12 to 14 lb 3 to 3 3/4 h,
# 14 to 18 lb 3 3/4 to 4 1/4 h, 18 to 20 lb 4 1/4 to 4 1/2 h, 20 to 24 lb 4 1/2 to 5 h
@pytest.mark.parametrize(
    ("lb", "low_h", "high_h"), [(10, 2.75, 3), (13, 3, 3.75), (16, 3.75, 4.25), (19, 4.25, 4.5), (22, 4.5, 5)]
)
@pytest.mark.source("usda-roasting-chart")
def test_a_turkey_by_its_weight(lb, low_h, high_h):
    given = at_sea("turkey", "whole_bird", lb)
    assert given.figure("cook_time").value == pytest.approx((low_h + high_h) / 2 * 60, abs=5)
    assert to_f(given.figure("oven").value) == pytest.approx(325, abs=0.5)


@pytest.mark.parametrize(("lb", "low_h", "high_h"), [(10, 3, 3.5), (13, 3.5, 4), (22, 4.75, 5.25)])
@pytest.mark.source("usda-roasting-chart")
def test_a_stuffed_turkey_by_its_weight(lb, low_h, high_h):
    given = at_sea("turkey", "whole_bird", lb, stuffed=True)
    assert given.figure("cook_time").value == pytest.approx((low_h + high_h) / 2 * 60, abs=5)


# 3 to 4 lb 1 1/4 to 1 1/2 h, 5 to 7 lb 2 to 2 1/4 h, both at 350 degF
@pytest.mark.parametrize(("lb", "low_h", "high_h"), [(3.5, 1.25, 1.5), (6, 2, 2.25)])
@pytest.mark.parametrize(("dish", "dish_class"), [("whole chicken", "whole_bird"), ("chicken", "poultry_pieces")])
@pytest.mark.source("usda-roasting-chart")
def test_a_chicken_by_its_weight(dish, dish_class, lb, low_h, high_h):
    given = at_sea(dish, dish_class, lb)
    assert given.figure("cook_time").value == pytest.approx((low_h + high_h) / 2 * 60, abs=5)
    assert to_f(given.figure("oven").value) == pytest.approx(350, abs=0.5)


# minutes a pound at 325 degF
@pytest.mark.parametrize(
    ("dish", "dish_class", "method", "fields", "lb", "low", "high"),
    [
        ("prime rib", "tender_cut", "roast", {"packing": ("with_bones",)}, 5, 23, 25),
        ("prime rib", "tender_cut", "roast", {"packing": ("boneless",)}, 5, 28, 33),
        ("leg of lamb", "tender_cut", "roast", {"packing": ("boneless",)}, 5, 25, 30),
        ("leg of lamb", "tender_cut", "roast", {"packing": ("with_bones",)}, 6, 20, 25),
        ("leg of lamb", "tender_cut", "roast", {"packing": ("with_bones",)}, 8, 15, 20),
        ("pork loin", "tender_cut", "roast", {}, 4, 20, 30),
        ("ham", "cured_meat", "bake", {"precooked": True}, 12, 15, 18),
        ("ham", "cured_meat", "bake", {"precooked": True}, 6, 18, 24),
    ],
)
@pytest.mark.source("usda-roasting-chart")
def test_a_joint_by_its_pounds(dish, dish_class, method, fields, lb, low, high):
    given = at_sea(dish, dish_class, lb, method, **fields)
    assert given.figure("cook_time").value == pytest.approx((low + high) / 2 * lb, abs=5)
    assert to_f(given.figure("oven").value) == pytest.approx(325, abs=0.5)


@pytest.mark.source("usda-roasting-chart")
def test_a_ham_of_which_nothing_is_said_may_be_either():
    cook = at_sea("ham", "cured_meat", 12, "bake").figure("cook_time")
    assert (cook.low, cook.high) == pytest.approx((12 * 15, 12 * 20), abs=5)


@pytest.mark.source("common-practice")
def test_a_weight_far_from_the_printed_ones_tells_nothing():
    usual = answer(Request(dish="turkey", dish_class="whole_bird", method="roast", elevation_m=0.0))
    heap = at_sea("turkey", "whole_bird", 60)
    assert heap.figure("cook_time") == usual.figure("cook_time")


@pytest.mark.source("usda-roasting-chart")
def test_a_heavier_bird_never_takes_less():
    times = [at_sea("turkey", "whole_bird", lb).figure("cook_time").value for lb in range(8, 26)]
    assert times == sorted(times)


# a hotter oven is quicker, and a roast is not done in half the time by 25 degF
@pytest.mark.source("common-practice")
def test_another_oven_moves_the_time_by_weight():
    usual, hotter = (
        at_sea("turkey", "whole_bird", 14, temperature_c=(f - 32) / 1.8).figure("cook_time").value for f in (325, 350)
    )
    assert 0.8 * usual < hotter < usual


# a range that a cook can plan by: not more than a third of the middle to either side
@pytest.mark.parametrize(("dish", "dish_class", "lb"), [("turkey", "whole_bird", 14), ("chicken", "poultry_pieces", 5)])
@pytest.mark.source("usda-roasting-chart")
def test_with_a_weight_the_range_at_7000_ft_is_narrow(dish, dish_class, lb):
    given = answer(
        Request(dish=dish, dish_class=dish_class, method="roast", elevation_m=2133.6, quantity=Quantity(lb, "lb"))
    )
    cook = given.figure("cook_time")
    assert cook.value * 2 / 3 <= cook.low <= cook.value <= cook.high <= cook.value * 4 / 3
