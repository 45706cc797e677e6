"""What the formulas of the physics do not hold for is refused with the figure, the range, the unit and a way out.

The ranges are those of the docstrings. Each end is still taken; a hair outside is not.
"""

from __future__ import annotations

import math
from collections.abc import Callable

import pytest

from rules.errors import OutOfRange
from rules.physics import air, conduction, evaporation, humid_air, kinetics, water

INFINITE = math.inf
PLACE = "It is the height of the kitchen above sea level; check the figure and whether it is feet or metres."
READING = "Check the unit of the reading: 1 hPa = 1 mbar = 100 Pa, and 1 inHg = 3386.4 Pa."
REPORT = "A figure below this is probably the pressure at the place itself; use it as it is."
GAUGE = "Give absolute pressure: gauge plus the air's own."
ICE = "Check the unit, then the thermometer in melting ice, where it must read 0 degC, 32 degF."
BURNER = "At the boil the burner sets the rate, not the air; take a surface a few degrees cooler."
SYRUP = "Above that the water is gone and the sugar itself melts and browns, the same at any elevation."
WARM = "The yolk has hardly begun to warm; choose a hotter target."
BEGUN = "The centre has hardly begun to change; choose a target further from the start."
POT = "Give square metres: 0.06 for a 28 cm pot."
PASSED = "A centre never passes the temperature around it; use a hotter medium or a lower target."

# function of the figure, name, low, high, unit, hint
LIMITS: list[tuple[Callable[[float], object], str, float, float, str, str]] = [
    (air.pressure_pa, "elevation", -430, 5500, "m", PLACE),
    (air.temperature_c, "elevation", -430, 5500, "m", PLACE),
    (air.density_ratio, "elevation", -430, 5500, "m", PLACE),
    (air.elevation_m, "air pressure", 50_506.8, 106_597.9, "Pa", READING),
    (lambda p: air.station_pressure_pa(p, 2000), "sea-level pressure", 87_000, 108_500, "Pa", REPORT),
    (water.saturation_temp_c, "pressure", 611.213, 22.064e6, "Pa", GAUGE),
    (water.saturation_pressure_pa, "temperature", 0, 373.946, "degC", ""),
    (water.boiling_point_c, "elevation", -430, 5500, "m", PLACE),
    (water.elevation_from_boiling_m, "boiling point", 81.6, 101.4, "degC", ICE),
    (water.salt_elevation_k, "salt in a kilogram of water", 0, 200, "g", ""),
    (water.sucrose_elevation_k, "sugar", 0, 100, "%", ""),
    (water.sucrose_percent, "boiling-point elevation of the syrup", 0, 60, "K", SYRUP),
    (lambda w: water.ethanol_boiling_c(w, 90_000), "mass fraction of alcohol", 0, 1, "", "Give 0.4 for 40 % by mass."),
    (lambda p: water.ethanol_boiling_c(0.4, p), "pressure", 50_000, 110_000, "Pa", ""),
    (water.latent_heat_kj_per_kg, "temperature", 0, 130, "degC", ""),
    (lambda z: kinetics.rate_factor(95, 100, z), "z", 1, 1000, "K", ""),
    (lambda ea: kinetics.z_from_activation(ea, 95), "activation energy", 5, 1000, "kJ/mol", ""),
    (lambda t: kinetics.z_from_activation(80, t), "temperature", 0, 200, "degC", ""),
    (lambda p: humid_air.humidity_ratio(600, p), "air pressure", 45_000, 110_000, "Pa", ""),
    (
        lambda v: humid_air.humidity_ratio(v, 100_000), "vapour pressure", 0, 99_999.9, "Pa",
        "It cannot exceed the air pressure.",
    ),
    (lambda t: humid_air.humidity_at_wet_bulb(t, 0.0, 90_000), "air temperature", 0, 200, "degC", ""),
    (
        lambda t: humid_air.humidity_at_wet_bulb(40.0, t, 90_000), "wet bulb", 0, 40, "degC",
        "It cannot be warmer than the air.",
    ),
    (lambda p: humid_air.wet_bulb_c(40.0, 0.02, p), "air pressure", 45_000, 110_000, "Pa", ""),
    (lambda p: evaporation.evaporation_rate_kg_m2_h(60, p), "air pressure", 50_000, 110_000, "Pa", ""),
    (
        lambda v: evaporation.evaporation_rate_kg_m2_h(100, 105_000, v), "vapour pressure of the room", 0, 101_418,
        "Pa", "",
    ),
    (lambda a: evaporation.evaporation_rate_ml_min(a, covered=True), "surface of the pot", 0, 5, "m2", POT),
    (
        lambda t: evaporation.extra_liquid_ml(t, 9, 0.06, covered=True, elevation_m=0),
        "time here", 0, 100_000, "min", "",
    ),
    (
        lambda t: evaporation.extra_liquid_ml(9, t, 0.06, covered=True, elevation_m=0),
        "time there", 0, 100_000, "min", "",
    ),
    (evaporation.drying_ratio, "elevation", -430, 5500, "m", PLACE),
    (
        lambda r: conduction.time_to_centre_min("slab", r, 1.3e-7, 5, 100, 80), "half thickness", 1, 300, "mm", ""
    ),
    (
        lambda d: conduction.time_to_centre_min("slab", 30, d, 5, 100, 80), "thermal diffusivity", 5e-8, 5e-7, "m2/s",
        "",
    ),
    (lambda m: conduction.egg_time_min(m, 4, 100, 63), "mass of the egg", 30, 110, "g", ""),
]  # fmt: skip
NAMES = [f"{row[1]} {i}" for i, row in enumerate(LIMITS)]
# of these the docstring gives an end rounded, or the limit is another figure's
ROUNDED = {
    "boiling point", "air pressure", "vapour pressure", "vapour pressure of the room",
    "wet bulb", "air temperature",
}  # fmt: skip


@pytest.mark.parametrize(("work", "name", "low", "high", "unit", "hint"), LIMITS, ids=NAMES)
def test_the_ends_are_taken_and_a_hair_outside_is_refused_in_so_many_words(
    work: Callable[[float], object], name: str, low: float, high: float, unit: str, hint: str
) -> None:
    hair = 5e-3 if name in ROUNDED else 1e-7
    inside = (low + (high - low) * hair, high - (high - low) * hair) if name in ROUNDED else (low, high)
    for value in inside:
        work(value)
    for value in (low - (high - low) * hair, high + (high - low) * hair, math.nan):
        with pytest.raises(OutOfRange) as refused:
            work(value)
        fault = refused.value
        assert (fault.name, fault.unit, fault.hint) == (name, unit, hint)
        if name not in ROUNDED:
            assert (fault.low, fault.high) == pytest.approx((low, high))


@pytest.mark.parametrize("work", [
    lambda t: conduction.time_to_centre_min("slab", 30, 1.3e-7, 5, 100, t),
    lambda t: conduction.egg_time_min(57, 5, 100, t),
])  # fmt: skip
@pytest.mark.parametrize("target_c", [5.0, 100.0, 120.0])
def test_a_centre_never_passes_what_is_around_it(work: Callable[[float], object], target_c: float) -> None:
    with pytest.raises(OutOfRange) as refused:
        work(target_c)
    fault = refused.value
    assert (fault.name, fault.low, fault.high, fault.unit, fault.hint) == ("target temperature", 5, 100, "degC", PASSED)


def test_one_term_of_the_series_wants_a_fourier_number_of_a_fifth() -> None:
    with pytest.raises(OutOfRange) as refused:
        conduction.time_to_centre_min("slab", 30, 1.3e-7, 5, 100, 12)
    fault = refused.value
    assert (fault.name, fault.low, fault.high, fault.unit, fault.hint) == ("Fourier number", 0.2, INFINITE, "", BEGUN)


def test_an_egg_that_has_hardly_begun_to_warm_is_refused() -> None:
    with pytest.raises(OutOfRange) as refused:
        conduction.egg_time_min(57, 4, 100, 20)
    fault = refused.value
    name = "share of the temperature difference left"
    assert (fault.name, fault.low, fault.high, fault.unit, fault.hint) == (name, 0, 0.76, "", WARM)


def test_a_surface_at_the_boil_is_refused() -> None:
    evaporation.evaporation_rate_kg_m2_h(99.9, 101_325)
    with pytest.raises(OutOfRange) as refused:
        evaporation.evaporation_rate_kg_m2_h(100.1, 101_325)
    fault = refused.value
    assert (fault.name, fault.low, fault.high, fault.unit) == ("vapour pressure of the surface", 0, 101_325, "Pa")
    assert fault.hint == BURNER


@pytest.mark.parametrize("dry_c", [-0.1, 200.1])
def test_air_that_no_oven_has_is_refused(dry_c: float) -> None:
    with pytest.raises(OutOfRange) as refused:
        humid_air.wet_bulb_c(dry_c, 0.02, 90_000)
    fault = refused.value
    assert (fault.name, fault.low, fault.high, fault.unit, fault.hint) == ("air temperature", 0, 200, "degC", "")


def test_air_too_dry_for_a_wet_bulb_above_freezing_is_refused() -> None:
    with pytest.raises(OutOfRange) as refused:
        humid_air.wet_bulb_c(5, 0.0, 90_000)
    fault = refused.value
    assert (fault.name, fault.unit, fault.hint) == ("humidity ratio", "kg/kg", "Its wet bulb would lie below freezing.")
    with pytest.raises(OutOfRange) as refused:
        humid_air.wet_bulb_c(40, 2.1, 90_000)
    assert (refused.value.name, refused.value.low, refused.value.high) == ("humidity ratio", 0, 2)
    assert (refused.value.unit, refused.value.hint) == ("kg/kg", "")
