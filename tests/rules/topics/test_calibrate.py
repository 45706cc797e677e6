import pytest
from hypothesis import given
from hypothesis import strategies as st

from assistant.replies.worded import answer
from rules.model import Request
from rules.physics import water


def ask(**fields):
    return answer(Request(topic="calibrate", **fields))


@given(st.floats(-400, 5400), st.floats(-4, 4))
def test_the_offset_is_the_reading_less_the_boil(elevation_m, offset_k):
    reading = water.boiling_point_c(elevation_m) + offset_k
    found = ask(elevation_m=elevation_m, temperature_c=reading).figure("thermometer_offset").value
    assert found == pytest.approx(offset_k, abs=0.0051)


@given(st.floats(-400, 5400))
def test_without_a_map_the_boil_tells_the_elevation(elevation_m):
    told = ask(temperature_c=water.boiling_point_c(elevation_m)).figure("effective_elevation")
    assert told.value == pytest.approx(elevation_m, abs=1)
    assert told.low <= told.value <= told.high


def test_an_elevation_from_the_boil_test_is_not_held_against_the_thermometer():
    told = ask(temperature_c=92.8, elevation_m=2154.0, elevation_from="boil_test")
    assert told.figure("thermometer_offset") is None
    assert told.figure("effective_elevation")


def test_a_good_thermometer_is_told_so():
    assert "is right" in ask(elevation_m=2133.6, temperature_c=93.0).headline


def test_with_no_reading_it_says_what_to_expect():
    assert "199 °F" in ask(elevation_m=2133.6).headline


def test_a_barometer_gives_the_elevation_of_the_day():
    told = ask(pressure_pa=84556.0)
    assert told.figure("effective_elevation").value == pytest.approx(1500, abs=1)
    assert "cooks as at" in told.headline


def test_far_off_is_doubted():
    assert any("far off" in c.text for c in ask(elevation_m=0.0, temperature_c=90.0).cautions)


def test_nothing_known_asks_for_a_reading():
    assert ask().missing == ("reading",)


def test_a_reading_that_cannot_be_is_refused_kindly():
    assert "unit of the reading" in ask(elevation_m=0.0, temperature_c=212.0).cautions[0].text


def test_a_weather_report_is_turned_back_to_the_place():
    """A report of 1,020 hPa at 2,000 m is 800 hPa there; the boil follows."""
    told = ask(pressure_pa=102_000.0, elevation_m=2000.0, elevation_from="stated")
    assert told.figure("station_pressure").value == pytest.approx(80.0, abs=0.05)
    assert told.figure("boiling_point").value == pytest.approx(93.5, abs=0.1)
    assert "reduced to sea level" in told.headline
    assert told.figure("expected_reading") is None


def test_a_barometer_of_the_place_is_taken_as_it_is():
    told = ask(pressure_pa=78_400.0, elevation_m=2133.6, elevation_from="stated")
    assert told.figure("station_pressure") is None
    assert told.figure("effective_elevation").value == pytest.approx(2112, abs=15)


@pytest.mark.parametrize(("elevation_m", "worth_m"), [(0.0, 250), (2133.6, 300)])
def test_a_deep_low_is_worth_a_climb(elevation_m, worth_m):
    """30 hPa: some 8 m for each hPa at sea level, 10 m at 7,000 ft."""
    told = ask(elevation_m=elevation_m)
    assert told.figure("deep_low").value == pytest.approx(worth_m, rel=0.08)


@given(st.floats(-400, 5000))
def test_a_low_never_takes_one_down(elevation_m):
    assert ask(elevation_m=elevation_m).figure("deep_low").value > 200
