"""Degrees at points that everybody knows, and times as a kitchen clock is read."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from rules.physics import units

KNOWN = [(-40, -40), (0, 32), (37, 98.6), (100, 212), (60, 140), (73.9, 165.02)]
FIVE_S, FIFTEEN_S = 5 / 60, 15 / 60


@pytest.mark.parametrize(("temp_c", "temp_f"), KNOWN)
def test_degrees_at_known_points(temp_c, temp_f):
    assert units.to_f(temp_c) == pytest.approx(temp_f)
    assert units.to_c(temp_f) == pytest.approx(temp_c)


@pytest.mark.parametrize(
    ("one", "in_other"),
    [
        (units.M_PER_FT * 5280, 1609.344),
        (units.FT_PER_M * 1609.344, 5280),
        (units.PSI_PER_PA * 101_325, 14.6959),
        (units.INHG_PER_PA * 101_325, 29.9213),
        (units.K_PER_F * 180, 100),
        (units.ML_PER_TBSP, 14.7868),
        (units.ML_PER_TSP, 4.92892),
        (units.G_PER_LB / 16, 28.3495),
    ],
)
def test_units_as_printed(one, in_other):
    assert one == pytest.approx(in_other, rel=1e-5)


@pytest.mark.parametrize(
    ("value", "step", "rounded"),
    [(0.1 + 0.2, 0.1, 0.3), (7.5, 5, 10), (-7.5, 5, -10), (7.4, 5, 5), (2.24, 0.5, 2.0), (2.25, 0.5, 2.5)],
)
def test_the_nearest_step_with_halves_away_from_zero(value, step, rounded):
    assert units.round_to(value, step) == rounded


def test_nothing_is_never_minus_nothing():
    assert str(units.round_to(-0.2, 1)) == "0.0"


@given(st.floats(-1e5, 1e5), st.sampled_from([0.01, 0.25, 0.5, 1, 5, 10]))
def test_rounding_moves_by_half_a_step_at_most(value, step):
    assert abs(units.round_to(value, step) - value) <= step / 2 + 1e-6


@pytest.mark.parametrize(
    ("time_min", "step_min"),
    [
        (0.3, FIVE_S), (0.99, FIVE_S), (1, FIFTEEN_S), (1.99, FIFTEEN_S), (2, 0.5), (9.9, 0.5),
        (10, 1), (39.9, 1), (40, 5), (600, 5),
    ],
)  # fmt: skip
def test_the_precision_of_a_time_grows_with_its_length(time_min, step_min):
    assert units.time_step_min(time_min) == pytest.approx(step_min)


@pytest.mark.parametrize(
    ("time_min", "read_min"),
    [(26 / 60, 25 / 60), (1.4, 1.5), (1.1, 1.0), (3.3, 3.5), (9.2, 9.0), (10.4, 10), (33.6, 34), (43, 45), (252, 250)],
)
def test_a_time_is_read_off_a_kitchen_clock(time_min, read_min):
    assert units.round_time_min(time_min) == pytest.approx(read_min, abs=1e-5)
