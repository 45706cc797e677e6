import pytest
from hypothesis import given
from hypothesis import strategies as st

from rules.errors import OutOfRange
from rules.physics import air

ELEVATIONS = st.floats(air.LOWEST_M, air.HIGHEST_M)


@given(ELEVATIONS)
def test_pressure_and_elevation_turn_round(elevation_m):
    assert air.elevation_m(air.pressure_pa(elevation_m)) == pytest.approx(elevation_m, abs=1e-6)


@given(ELEVATIONS, ELEVATIONS)
def test_higher_is_thinner(one_m, other_m):
    low, high = sorted((one_m, other_m))
    assert air.pressure_pa(low) >= air.pressure_pa(high)
    assert air.density_ratio(low) >= air.density_ratio(high)
    assert air.temperature_c(low) >= air.temperature_c(high)


@given(ELEVATIONS)
def test_density_follows_the_gas_law(elevation_m):
    by_gas_law = air.pressure_pa(elevation_m) / 101_325 * 288.15 / (air.temperature_c(elevation_m) + 273.15)
    assert air.density_ratio(elevation_m) == pytest.approx(by_gas_law)


@pytest.mark.parametrize("elevation_m", [-431, 5501, 29_000, float("nan")])
@pytest.mark.parametrize("figure", [air.pressure_pa, air.temperature_c, air.density_ratio])
def test_elevations_out_of_range_are_refused(figure, elevation_m):
    with pytest.raises(OutOfRange, match="feet or metres") as fault:
        figure(elevation_m)
    assert fault.value.unit == "m"


@pytest.mark.parametrize("pressure_pa", [0, 850, 50_000, 107_000])
def test_pressures_out_of_range_are_refused(pressure_pa):
    with pytest.raises(OutOfRange, match="inHg"):
        air.elevation_m(pressure_pa)


def test_both_ends_of_the_range_turn_round():
    assert air.elevation_m(air.pressure_pa(air.LOWEST_M)) == air.LOWEST_M
    assert air.elevation_m(air.pressure_pa(air.HIGHEST_M)) == air.HIGHEST_M


@given(ELEVATIONS)
def test_standard_weather_gives_the_standard_station_pressure(elevation_m):
    assert air.station_pressure_pa(101_325, elevation_m) == pytest.approx(air.pressure_pa(elevation_m))


def test_a_station_reading_is_not_taken_for_a_report():
    with pytest.raises(OutOfRange, match="use it as it is"):
        air.station_pressure_pa(79_000, 2000)


@given(st.floats(0.965, 1.035), st.floats(1000, 5500))
def test_readings_at_height_are_told_apart(weather, elevation_m):
    assert air.looks_sea_level_reduced(101_325 * weather, elevation_m) is True
    assert air.looks_sea_level_reduced(air.pressure_pa(elevation_m) * weather, elevation_m) is False


@pytest.mark.parametrize(
    ("pressure_pa", "elevation_m"), [(101_300, 0), (100_000, 200), (60_000, 1000)], ids=["sea", "low", "neither"]
)
def test_unclear_readings_stay_unclear(pressure_pa, elevation_m):
    assert air.looks_sea_level_reduced(pressure_pa, elevation_m) is None
