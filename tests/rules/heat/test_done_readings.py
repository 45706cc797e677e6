"""Readings of the centre: what holds them, and what the boil takes away."""

import pytest

from rules.heat.done_readings import Reading, reading
from rules.physics.ambient import ambient
from rules.physics.units import to_c, to_f

SEA, MILE_HIGH, TEN_THOUSAND_FT = ambient(0), ambient(1524), ambient(3048)


def here_f(low_f, high_f, bound, air):
    return tuple(to_f(t) for t in Reading(to_c(low_f), to_c(high_f), bound).here(air, SEA))


@pytest.mark.parametrize("bound", ["set", "dry"])
@pytest.mark.parametrize("air", [SEA, MILE_HIGH, TEN_THOUSAND_FT])
def test_what_sets_or_melts_by_itself_reads_the_same_anywhere(bound, air):
    assert here_f(170, 300, bound, air) == pytest.approx((170, 300))


# extension tables print water boiling at 203 degF at 5,000 ft and 193 degF at 10,000 ft
@pytest.mark.parametrize(("air", "fall_f"), [(SEA, 0), (MILE_HIGH, 9), (TEN_THOUSAND_FT, 18)])
def test_sugar_over_the_boil_falls_with_it_at_both_ends(air, fall_f):
    assert here_f(234, 240, "above", air) == pytest.approx((234 - fall_f, 240 - fall_f), abs=0.7)


def test_what_the_boil_allows_reads_as_at_sea_level():
    assert here_f(205, 209, "boil", SEA) == pytest.approx((205, 209))
    assert here_f(170, 180, "boil", TEN_THOUSAND_FT) == pytest.approx((170, 180))


def test_a_loaf_stays_a_degree_under_the_boil_and_its_lower_end_falls_as_far():
    """Water boils at 202.9 degF at 5,000 ft, so 205 to 210 degF becomes 1.8 degF under that, and 5 degF below."""
    low, high = here_f(205, 210, "boil", MILE_HIGH)
    assert high == pytest.approx(202.9 - 1.8, abs=0.15)
    assert high - low == pytest.approx(5, abs=0.01)


def test_no_crumb_is_done_under_185_f():
    """Starch has set by then, from common practice; a range that begins there keeps its beginning."""
    assert here_f(190, 210, "boil", TEN_THOUSAND_FT)[0] == pytest.approx(185)
    assert here_f(180, 210, "boil", TEN_THOUSAND_FT)[0] == pytest.approx(180)


@pytest.mark.parametrize("elevation_m", [3000, 4000, 5000, 5500])
def test_the_two_ends_never_cross_or_boil(elevation_m):
    air = ambient(elevation_m)
    low, high = Reading(to_c(190), to_c(210), "boil").here(air, SEA)
    assert low <= high < air.boiling_c


@pytest.mark.parametrize(
    ("dish", "dish_class", "low_f", "high_f", "bound"),
    [
        ("sourdough", "yeast_bread", 205, 210, "boil"),
        ("brioche", "yeast_bread", 185, 195, "boil"),
        (None, "yeast_bread", 190, 210, "boil"),
        ("fudge", "candy", 234, 240, "above"),
        (None, "custard", 170, 180, "set"),
    ],
)
def test_a_dish_goes_before_its_class(dish, dish_class, low_f, high_f, bound):
    found = reading(dish, dish_class)
    assert (to_f(found.low_c), to_f(found.high_c)) == pytest.approx((low_f, high_f), abs=0.01)
    assert found.bound == bound


def test_pasta_is_not_read_at_the_centre():
    assert reading("spaghetti", "pasta") is None
    assert reading(None, "pasta") is None
