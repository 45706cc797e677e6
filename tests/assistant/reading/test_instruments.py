"""Barometers, boil tests, gauges and temperatures.

Pressures by us-std-atm-1976: 84 556 Pa at 1,500 m, 79 501 Pa at 2,000 m; there iapws-r7-97 has water boil at 95.0 and
93.3 degC; from memory, to the digits that are written.
"""

from __future__ import annotations

import pytest

from assistant.answering import understand
from rules.model import Kitchen

PSI_PA = 6894.757


@pytest.mark.parametrize(
    ("text", "elevation_m"),
    [
        ("barometer reads 845.56 hPa", 1500),
        ("station pressure 795.0 mbar", 2000),
        ("24.97 inHg how long for rice", 1500),
        ("24.97 inches of mercury", 1500),
        ("the barometer in the kitchen reads 24.97 inches", 1500),
        ("barometer 24.97, how long for rice", 1500),
        ("station pressure is 795", 2000),
    ],
)
def test_a_barometer_tells_the_elevation(text: str, elevation_m: float) -> None:
    request = understand(text)
    assert request.elevation_from == "barometer"
    assert request.elevation_m == pytest.approx(elevation_m, abs=5)
    assert request.pressure_pa is not None


@pytest.mark.parametrize(
    ("text", "elevation_m"),
    [
        ("my water boils at 203 F", 1500),
        ("my water boils at 95.0 C", 1500),
        ("water boils at 203", 1500),
        ("my kettle boils at 93.3 degrees", 2000),
        ("thermometer reads 203 in boiling water", 1500),
        ("how long for eggs if my water's boiling at 203", 1500),
        ("soft ball when my water boils at 203", 1500),
    ],
)
def test_a_boil_test_tells_the_elevation(text: str, elevation_m: float) -> None:
    request = understand(text)
    assert request.elevation_from == "boil_test"
    # a degree Fahrenheit is 170 m
    assert request.elevation_m == pytest.approx(elevation_m, abs=30)
    assert request.temperature_c == pytest.approx(95.0 if elevation_m == 1500 else 93.3, abs=0.1)


@pytest.mark.parametrize("text", ["why does water boil at 212", "is 100 C always the boiling point of water"])
def test_what_everybody_knows_is_no_boil_test(text: str) -> None:
    assert understand(text).elevation_m is None


def test_a_stated_elevation_wins_over_a_boil_test() -> None:
    request = understand("my thermometer reads 198 in boiling water at 7,000 ft")
    assert (request.elevation_from, request.elevation_m) == ("stated", pytest.approx(2133.6))
    assert request.temperature_c == pytest.approx(92.2, abs=0.1)


@pytest.mark.parametrize("text", ["29.92 inHg and I'm at 7,000 ft", "weather report 1013 hPa, elevation 2,100 m"])
def test_a_weather_report_is_noted_and_not_used(text: str) -> None:
    request = understand(text)
    assert request.elevation_from == "stated"
    assert request.pressure_pa is None
    assert "reduced to sea level" in request.unused[0].reason


def test_a_weather_report_alone_is_asked_about() -> None:
    request = understand("the barometer says 29.92 inHg")
    assert request.elevation_m is None
    assert request.unused[0].kind == "elevation"


def test_the_kitchens_barometer_offset_is_taken_off() -> None:
    request = understand("barometer reads 850.56 hPa", kitchen=Kitchen(barometer_offset_pa=500.0))
    assert request.elevation_m == pytest.approx(1500, abs=5)


@pytest.mark.parametrize(
    ("text", "psi"),
    [
        ("beans in the pressure cooker at 15 psi", 15),
        ("15 pounds in the pressure cooker at 7,000 ft", None),
        ("pressure cooker at 15 pounds", 15),
        ("pressure cook 4 pounds of beans", None),
        ("pressure cook beans at low pressure", 7),
        ("how long for 15 pounds of brisket", None),
        ("what pressure does the cooker reach, station pressure 805 hPa", None),
    ],
)
def test_a_gauge(text: str, psi: float | None) -> None:
    assert understand(text).gauge_pa == (None if psi is None else pytest.approx(psi * PSI_PA))


@pytest.mark.parametrize(
    ("text", "temp_c"),
    [
        ("short ribs at 325 how long", 162.8),
        ("325 oven short ribs 7000 ft", 162.8),
        ("bake muffins at 350 at 7000", 176.7),
        ("cook sugar to 340 at 7000", 171.1),
        ("fry at 177 C", 177),
        ("350 degrees for a cake", 176.7),
        ("how long for rice at 7,000", None),
        ("oven at 350 for 30 minutes, 12 muffins", 176.7),
        ("meatloaf 350 sea level, what oven at 6500", 176.7),
        ("bake 300 cookies at 7000 ft", None),
    ],
)
def test_a_temperature(text: str, temp_c: float | None) -> None:
    assert understand(text).temperature_c == (None if temp_c is None else pytest.approx(temp_c, abs=0.1))


def test_degrees_are_celsius_in_a_metric_kitchen() -> None:
    assert understand("bake at 180 degrees", kitchen=Kitchen(units="metric")).temperature_c == 180
