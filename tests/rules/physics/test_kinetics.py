import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from rules.errors import OutOfRange
from rules.physics import kinetics
from rules.tables import BadTable, read_csv

CLASSES = [row["dish_class"] for row in read_csv("tables/softening_z.csv").rows]
TEMPS = st.floats(80, 125)
Z = st.floats(10, 150)


@given(TEMPS, TEMPS, Z)
def test_there_and_back_is_one(here_c, there_c, z_k):
    there_and_back = kinetics.rate_factor(here_c, there_c, z_k) * kinetics.rate_factor(there_c, here_c, z_k)
    assert there_and_back == pytest.approx(1)


@given(TEMPS, Z)
def test_z_cooler_is_ten_times_longer(temp_c, z_k):
    assert kinetics.rate_factor(temp_c - z_k, temp_c, z_k) == pytest.approx(10)


@pytest.mark.parametrize("z_k", [0, -20, float("nan")])
def test_impossible_z_is_refused(z_k):
    with pytest.raises(OutOfRange):
        kinetics.rate_factor(95, 100, z_k)


@given(st.floats(20, 400), st.floats(80, 125))
def test_z_has_the_slope_of_the_arrhenius_law(ea_kj_per_mol, temp_c):
    """Half a kelvin either side of temp_c, so that curvature does not count."""
    low_k, high_k = temp_c + 273.15 - 0.5, temp_c + 273.15 + 0.5
    arrhenius = math.exp(ea_kj_per_mol * 1000 / 8.31446 * (1 / low_k - 1 / high_k))
    z_k = kinetics.z_from_activation(ea_kj_per_mol, temp_c)
    assert kinetics.rate_factor(temp_c - 0.5, temp_c + 0.5, z_k) == pytest.approx(arrhenius, rel=1e-4)


@pytest.mark.parametrize(("ea_kj_per_mol", "temp_c"), [(0, 95), (80, -300)])
def test_impossible_activation_is_refused(ea_kj_per_mol, temp_c):
    with pytest.raises(OutOfRange):
        kinetics.z_from_activation(ea_kj_per_mol, temp_c)


@pytest.mark.parametrize("dish_class", CLASSES)
def test_each_class_has_its_row_with_a_reason(dish_class):
    soft = kinetics.softening(dish_class)
    assert soft.dish_class == dish_class
    assert soft.note


def test_other_classes_fall_back_to_general():
    assert kinetics.softening("layer_cake") == kinetics.softening("general")


def test_only_beans_stop_softening():
    assert [c for c in CLASSES if kinetics.softening(c).threshold_c is not None] == ["dried_bean"]


def test_a_crossed_range_is_refused():
    with pytest.raises(BadTable, match="z_low_k <= z_k"):
        kinetics.Softening("x", 30, 20, 40, None, "common-practice", "")


@pytest.mark.parametrize("zs", [(0.5, 0.5, 0.5), (20, 20, 40), (20, 40, 40)])
def test_a_range_may_be_narrow(zs):
    soft = kinetics.Softening("x", *zs, None, "common-practice", "")
    assert (soft.z_low_k, soft.z_k, soft.z_high_k) == zs


@pytest.mark.parametrize("zs", [(0, 20, 40), (-5, 20, 40), (20, 40, 30)])
def test_a_range_that_is_none_is_refused_with_the_class(zs):
    with pytest.raises(BadTable, match=r"softening_z.csv: noodle: write 0 < z_low_k <= z_k <= z_high_k$"):
        kinetics.Softening("noodle", *zs, None, "common-practice", "")
