import pytest
from hypothesis import given
from hypothesis import strategies as st

from rules.errors import OutOfRange
from rules.physics import humid_air, water

pressures = st.floats(50_000, 105_000)


@given(st.floats(20, 150), st.floats(0.005, 0.3), pressures)
def test_the_wet_bulb_gives_back_the_humidity(dry_c, humidity, pressure_pa):
    wet_c = humid_air.wet_bulb_c(dry_c, humidity, pressure_pa)
    if wet_c < dry_c - 0.01:
        assert humid_air.humidity_at_wet_bulb(dry_c, wet_c, pressure_pa) == pytest.approx(humidity, rel=1e-3)


@given(st.floats(40, 150), st.floats(0.001, 0.05))
def test_thinner_air_has_a_lower_wet_bulb(dry_c, humidity):
    wet = [humid_air.wet_bulb_c(dry_c, humidity, p) for p in (101_325, 80_000, 60_000)]
    assert wet == sorted(wet, reverse=True)


def test_the_wet_bulb_never_passes_the_air():
    assert humid_air.wet_bulb_c(20.0, 0.5, 101_325) <= 20.0


@pytest.mark.parametrize(("dry_c", "humidity", "pressure_pa"), [(5, 0, 90_000), (20, -0.1, 90_000), (20, 0.01, 20_000)])
def test_what_no_kitchen_has_is_refused(dry_c, humidity, pressure_pa):
    with pytest.raises(OutOfRange):
        humid_air.wet_bulb_c(dry_c, humidity, pressure_pa)


@pytest.mark.parametrize("humidity", [0.9, 1.5, 1.95])
@pytest.mark.parametrize("pressure_pa", [60_000, 101_325])
def test_air_that_is_mostly_steam_has_a_wet_bulb_near_the_boil(humidity, pressure_pa):
    """By Dalton's law such air is over half vapour, so its dew point is a few kelvin under the boil."""
    wet_c = humid_air.wet_bulb_c(180.0, humidity, pressure_pa)
    vapour_pa = pressure_pa * humidity / (0.622 + humidity)
    assert water.saturation_temp_c(vapour_pa) < wet_c < water.saturation_temp_c(pressure_pa)
    assert humid_air.humidity_at_wet_bulb(180.0, wet_c, pressure_pa) == pytest.approx(humidity, rel=1e-3)


def test_air_without_vapour_holds_none_and_air_of_vapour_alone_is_no_air():
    assert humid_air.humidity_ratio(0, 90_000) == 0
    with pytest.raises(OutOfRange, match="cannot exceed"):
        humid_air.humidity_ratio(90_000, 90_000)
