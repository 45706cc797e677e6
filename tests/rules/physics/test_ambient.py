"""A barometer goes before the standard atmosphere, and the elevation stays what it is."""

import pytest

from rules.physics.ambient import ambient


def test_a_measured_pressure_decides_where_water_boils():
    """99.61 degC at 1 bar is of the steam tables."""
    air = ambient(2133.6, 100_000)
    assert (air.elevation_m, air.pressure_pa) == (2133.6, 100_000)
    assert air.boiling_c == pytest.approx(99.61, abs=0.01)


def test_without_one_the_air_is_the_standard_atmosphere():
    """795.0 hPa at 2,000 m is of the printed tables."""
    air = ambient(2000)
    assert air.pressure_pa == pytest.approx(79_495, abs=10)
    assert air.boiling_c == pytest.approx(93.3, abs=0.1)
