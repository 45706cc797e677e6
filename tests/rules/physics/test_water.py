import pytest
from hypothesis import given
from hypothesis import strategies as st

from rules.errors import OutOfRange
from rules.physics import air, water

ELEVATIONS = st.floats(air.LOWEST_M, air.HIGHEST_M)


@given(st.floats(0.01, 373.9))
def test_saturation_turns_round(temp_c):
    assert water.saturation_temp_c(water.saturation_pressure_pa(temp_c)) == pytest.approx(temp_c, abs=1e-5)


@given(ELEVATIONS)
def test_boiling_point_and_elevation_turn_round(elevation_m):
    assert water.elevation_from_boiling_m(water.boiling_point_c(elevation_m)) == pytest.approx(elevation_m, abs=0.01)


@given(ELEVATIONS, st.floats(1, 500))
def test_water_boils_cooler_higher_up(elevation_m, climb_m):
    higher = min(elevation_m + climb_m, air.HIGHEST_M)
    assert water.boiling_point_c(higher) <= water.boiling_point_c(elevation_m)


@pytest.mark.parametrize("temp_c", [100, 212, 50, 81.5, 101.5])
def test_a_boil_test_off_the_scale_points_at_the_thermometer(temp_c):
    if temp_c == 100:
        assert water.elevation_from_boiling_m(temp_c) == pytest.approx(-8, abs=1)
        return
    with pytest.raises(OutOfRange, match="melting ice") as fault:
        water.elevation_from_boiling_m(temp_c)
    assert fault.value.low < 82 < 101 < fault.value.high


@pytest.mark.parametrize("pressure_pa", [0, 600, 23e6])
def test_pressures_off_the_saturation_line_are_refused(pressure_pa):
    with pytest.raises(OutOfRange, match="absolute"):
        water.saturation_temp_c(pressure_pa)


@pytest.mark.parametrize("temp_c", [-1, 374])
def test_temperatures_off_the_saturation_line_are_refused(temp_c):
    with pytest.raises(OutOfRange):
        water.saturation_pressure_pa(temp_c)


@given(st.floats(0, 100))
def test_sugar_turns_round(percent):
    assert water.sucrose_percent(water.sucrose_elevation_k(percent)) == pytest.approx(percent, abs=1e-6)


@given(st.floats(0, 100), st.floats(0, 100))
def test_more_sugar_boils_hotter(one, other):
    low, high = sorted((one, other))
    assert water.sucrose_elevation_k(low) <= water.sucrose_elevation_k(high)


def test_burnt_sugar_is_past_boiling():
    with pytest.raises(OutOfRange, match="melts and browns"):
        water.sucrose_percent(75)


@pytest.mark.parametrize("percent", [-1, 101])
def test_impossible_sugar_is_refused(percent):
    with pytest.raises(OutOfRange):
        water.sucrose_elevation_k(percent)


@given(st.floats(0, 200))
def test_salt_raises_the_boil_in_proportion(salt):
    assert water.salt_elevation_k(salt) == pytest.approx(salt / 100 * water.salt_elevation_k(100))


@pytest.mark.parametrize("salt", [-5, 201])
def test_impossible_brine_is_refused(salt):
    with pytest.raises(OutOfRange, match="kilogram of water"):
        water.salt_elevation_k(salt)


@given(st.floats(50_500, 106_000))
def test_without_alcohol_it_is_water(pressure_pa):
    assert water.ethanol_boiling_c(0, pressure_pa) == pytest.approx(water.saturation_temp_c(pressure_pa), abs=1e-6)


@given(st.floats(0, 0.9), st.floats(0.001, 0.05), st.floats(60_000, 101_325))
def test_alcohol_lowers_the_boil(fraction, more, pressure_pa):
    assert water.ethanol_boiling_c(fraction + more, pressure_pa) < water.ethanol_boiling_c(fraction, pressure_pa)


@pytest.mark.parametrize(("fraction", "pressure_pa"), [(40, 101_325), (-0.1, 101_325), (0.4, 10_000)])
def test_impossible_spirits_are_refused(fraction, pressure_pa):
    with pytest.raises(OutOfRange):
        water.ethanol_boiling_c(fraction, pressure_pa)


@pytest.mark.parametrize("temp_c", [-1, 131])
def test_latent_heat_keeps_to_its_range(temp_c):
    with pytest.raises(OutOfRange):
        water.latent_heat_kj_per_kg(temp_c)


def test_water_without_sugar_boils_as_water_and_sugar_without_water_ends_the_table():
    assert water.sucrose_elevation_k(0) == 0
    assert water.sucrose_percent(0) == 0
    assert water.sucrose_percent(60) == 100
    assert water.sucrose_elevation_k(100) == 60


@given(st.floats(0, 40))
def test_a_thin_syrup_lies_near_the_ideal_law(percent):
    """Ebullioscopy, 0.512 K for each mole of sugar (342.3 g) in a kilogram of water; the table is to a tenth or two."""
    ideal_k = 0.512 * percent / (100 - percent) * 1000 / 342.3
    assert water.sucrose_elevation_k(percent) == pytest.approx(ideal_k, abs=0.52)
