import pytest

from assistant.replies.worded import answer
from rules.model import Request


def ask(**fields):
    return answer(Request(topic="boiling_point", **fields))


def test_the_answer_is_the_headline():
    assert ask(elevation_m=2133.6).headline == (
        "Water boils at 199 °F (93 °C) at 7,000 ft (2,130 m), against 212 °F (100 °C) at sea level."
    )


def test_metric_comes_first_for_a_metric_asker():
    assert ask(elevation_m=2000.0, units="metric").headline.startswith("Water boils at 93.5 °C (200 °F)")


def test_weather_matters_more_the_higher():
    low, high = (ask(elevation_m=m).figure("weather_shift").value for m in (0.0, 3048.0))
    assert 0.25 < low < high < 0.45


def test_a_barometer_outweighs_the_map():
    stormy = ask(elevation_m=2133.6, pressure_pa=77000.0)
    assert stormy.figure("boiling_point").value < ask(elevation_m=2133.6).figure("boiling_point").value
    assert "by your barometer" in stormy.headline


@pytest.mark.parametrize("offset_c", [1.5, -1.5])
def test_a_thermometer_that_is_off_is_told(offset_c):
    given = ask(elevation_m=1500.0, thermometer_offset_c=offset_c)
    reads = given.figure("thermometer_reading").value
    assert reads == pytest.approx(given.figure("boiling_point").value + offset_c, abs=0.011)


def test_it_is_asked_where_the_kitchen_is():
    assert ask().missing == ("elevation",)
