import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import special

from rules.errors import OutOfRange, UnknownWord
from rules.physics import conduction

SHAPES = list(conduction.FIRST_TERM)


@pytest.mark.parametrize("shape", SHAPES)
@given(half_mm=st.floats(2, 140))
def test_twice_as_thick_takes_four_times_as_long(shape, half_mm):
    thin, thick = (conduction.time_to_centre_min(shape, mm, 1.3e-7, 5, 100, 80) for mm in (half_mm, 2 * half_mm))
    assert thick == pytest.approx(4 * thin)


@given(st.floats(86, 99), st.floats(0.5, 5))
def test_a_cooler_medium_takes_longer(medium_c, cooler_k):
    hot, cool = (conduction.time_to_centre_min("slab", 20, 1.3e-7, 5, t, 75) for t in (medium_c, medium_c - cooler_k))
    assert cool > hot


def test_compact_shapes_are_quicker():
    sphere, cylinder, slab = (conduction.time_to_centre_min(s, 30, 1.3e-7, 5, 100, 80) for s in SHAPES)
    assert sphere < cylinder < slab


@pytest.mark.parametrize("shape", SHAPES)
def test_cooling_mirrors_heating(shape):
    heating = conduction.time_to_centre_min(shape, 30, 1.3e-7, 5, 95, 80)
    cooling = conduction.time_to_centre_min(shape, 30, 1.3e-7, 95, 5, 20)
    assert cooling == pytest.approx(heating)


@pytest.mark.parametrize("target_c", [100, 105, 5, 0])
def test_a_target_out_of_reach_is_refused(target_c):
    with pytest.raises(OutOfRange, match="never passes"):
        conduction.time_to_centre_min("slab", 30, 1.3e-7, 5, 100, target_c)
    with pytest.raises(OutOfRange, match="never passes"):
        conduction.egg_time_min(57, 5, 100, target_c)


@pytest.mark.parametrize("shape", SHAPES)
def test_too_early_for_one_term_is_refused(shape):
    with pytest.raises(OutOfRange, match=r"at least 0\.2"):
        conduction.time_to_centre_min(shape, 30, 1.3e-7, 5, 100, 20)


def test_an_unknown_shape_is_named():
    with pytest.raises(UnknownWord, match="did you mean sphere"):
        conduction.time_to_centre_min("spheer", 30, 1.3e-7, 5, 100, 80)


@pytest.mark.parametrize(("half_mm", "diffusivity"), [(0, 1.3e-7), (30, 1.3e-3)])
def test_impossible_bodies_are_refused(half_mm, diffusivity):
    with pytest.raises(OutOfRange):
        conduction.time_to_centre_min("slab", half_mm, diffusivity, 5, 100, 80)


@given(st.floats(35, 100), st.floats(1, 10), st.floats(82, 100))
def test_a_bigger_egg_takes_longer(mass_g, more_g, water_c):
    small, big = (conduction.egg_time_min(m, 4, water_c, 63) for m in (mass_g, mass_g + more_g))
    assert big > small > 0


@pytest.mark.parametrize("mass_g", [5, 1400])
def test_other_eggs_are_refused(mass_g):
    with pytest.raises(OutOfRange, match="mass of the egg"):
        conduction.egg_time_min(mass_g, 4, 100, 63)


def test_a_barely_warmed_yolk_is_refused():
    with pytest.raises(OutOfRange, match="hotter target"):
        conduction.egg_time_min(57, 20, 100, 30)


@pytest.mark.parametrize(
    ("shape", "coefficient", "root", "within"),
    [
        ("sphere", 2, math.pi, 1e-9),
        ("slab", 4 / math.pi, math.pi / 2, 1e-9),
        # from the Bessel functions; the usual tables round it to four decimals
        ("cylinder", 2 / (special.jn_zeros(0, 1)[0] * special.j1(special.jn_zeros(0, 1)[0])), 2.404826, 1e-4),
    ],
)
def test_the_centre_is_as_warm_then_as_the_series_says(shape, coefficient, root, within):
    """The first term put forward again: coefficient times exp(-root^2 Fo) of the difference is left."""
    seconds = 60 * conduction.time_to_centre_min(shape, 25, 1.4e-7, 5, 100, 75)
    left = coefficient * math.exp(-(root**2) * 1.4e-7 * seconds / 0.025**2)
    assert 100 - 95 * left == pytest.approx(75, rel=within)


def test_an_unknown_shape_is_called_a_shape():
    with pytest.raises(UnknownWord, match=r'^there is no shape "cube"') as fault:
        conduction.time_to_centre_min("cube", 30, 1.3e-7, 5, 100, 80)
    assert fault.value.kind == "shape"
