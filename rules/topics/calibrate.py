"""Calibrate: the boil test and the barometer.

Elevation known, a boil test shows what the thermometer is off; unknown, it gives the elevation. A weather report's
pressure is reduced to sea level, and is turned back before it is used.
"""

from __future__ import annotations

from dataclasses import replace

from rules.book import Case, Part, Rule, celsius, rule
from rules.errors import within
from rules.model import Caution, Figure, Request
from rules.physics import air, water

WEATHER_PA = 1000.0
DEEP_LOW_PA = 3000.0
RIGHT_K = 0.5
DOUBTFUL_K = 5.0
LOWEST_READING_C, HIGHEST_READING_C = 60.0, 115.0


def elevation_stated(request: Request) -> bool:
    """Whether the elevation is known apart from the boil test itself."""
    return request.pressure_pa is not None or (
        request.elevation_m is not None and request.elevation_from != "boil_test"
    )


def needs(request: Request) -> tuple[str, ...]:
    """A reading, or the elevation to expect one for."""
    known = elevation_stated(request) or request.temperature_c is not None or request.elevation_m is not None
    return () if known else ("reading",)


def weather_k(case: Case) -> float:
    """What 10 hPa of weather does to the boiling point here [K]."""
    high, low = (water.saturation_temp_c(case.here.pressure_pa + sign * WEATHER_PA) for sign in (1, -1))
    return (high - low) / 2


@rule("calibrate.expected", "iapws-r7-97", "us-std-atm-1976")
def expected(case: Case) -> Part | None:
    """What boiling water should read, where the elevation or the barometer is known."""
    if not elevation_stated(case.request):
        return None
    here = case.here.boiling_c
    swing = weather_k(case) if case.request.pressure_pa is None else 0.0
    low, high = (round(here - swing, 2), round(here + swing, 2)) if swing else (None, None)
    by = "for the pressure you read" if case.request.pressure_pa is not None else "in standard air"
    return Part(
        figures=(
            Figure(
                "expected_reading",
                "Boiling water should read",
                round(here, 2),
                "degC",
                low,
                high,
                round(case.sea.boiling_c, 2),
            ),
        ),
        headline=f"At {case.place} a good thermometer reads {case.say.temp(here)} in boiling water."
        if case.request.temperature_c is None
        else "",
        because=f"Water boils at {case.say.temp(here)} at {case.place} {by}."
        + (f" Weather moves that by {case.say.temp_drop(swing)} or so." if swing else ""),
        maths=f"T_sat({round(case.here.pressure_pa):,} Pa) = {here:.2f} °C.",
    )


@rule("calibrate.offset", "iapws-r7-97")
def offset(case: Case) -> Part | None:
    """How much the thermometer is off."""
    reading = case.request.temperature_c
    if reading is None or not elevation_stated(case.request):
        return None
    within(
        "reading in boiling water",
        reading,
        LOWEST_READING_C,
        HIGHEST_READING_C,
        "degC",
        "Check the unit of the reading.",
    )
    off = reading - case.here.boiling_c
    size, boil = case.say.temp_drop(abs(off)), case.say.temp(case.here.boiling_c)
    too, change = ("high", f"Take {size} off") if off > 0 else ("low", f"Add {size} to")
    right = abs(off) <= RIGHT_K
    head = (
        f"Your thermometer is right: {case.say.temp(reading)} is a full boil at {case.place}."
        if right
        else f"Your thermometer reads {size} too {too}: boiling water at {case.place} is {boil}."
    )
    doubt = (
        (
            Caution(
                "note",
                "That is far off: check the elevation, that the water is at a full rolling boil, and that the tip "
                "does not touch the pot.",
                ("common-practice",),
            ),
        )
        if abs(off) > DOUBTFUL_K
        else ()
    )
    return Part(
        figures=(
            celsius("reading", "You read", reading),
            Figure(
                "thermometer_offset", f"Thermometer {'reads too high by' if off >= 0 else 'off by'}", round(off, 2), "K"
            ),
        ),
        headline=head,
        steps=() if right else (f"{change} every reading near the boil.",),
        cautions=doubt,
    )


@rule("calibrate.elevation", "iapws-r7-97", "us-std-atm-1976")
def effective_elevation(case: Case) -> Part | None:
    """The elevation at which standard air boils water so: a boil test without a map, or a barometer."""
    request = case.request
    if request.pressure_pa is not None:
        return _by_barometer(case)
    if elevation_stated(request) or (request.temperature_c is None and request.elevation_m is None):
        return None
    reading = request.temperature_c
    boil_c = case.here.boiling_c if reading is None else reading - request.thermometer_offset_c
    found_m = water.elevation_from_boiling_m(boil_c)
    low_m, high_m = (_elevation_at(water.saturation_pressure_pa(boil_c) + sign * WEATHER_PA) for sign in (1, -1))
    return Part(
        figures=(
            celsius("boiling_point", "Water boils at", boil_c, case.sea.boiling_c),
            Figure("effective_elevation", "You cook as at", round(found_m), "m", round(low_m), round(high_m)),
        ),
        headline=f"Water that boils at {case.say.temp(boil_c)} cooks as at {case.say.elevation(found_m)}.",
        because="In standard air water boils so at that elevation. Weather of 10 hPa (0.3 inHg) moves it some 90 m "
        "(300 ft), and a thermometer 1 °C (2 °F) off moves it 300 m (1,000 ft), so check the thermometer in melting "
        "ice first.",
    )


def _elevation_at(pressure_pa: float) -> float:
    lowest_pa, highest_pa = air.pressure_pa(air.HIGHEST_M), air.pressure_pa(air.LOWEST_M)
    return air.elevation_m(min(max(pressure_pa, lowest_pa), highest_pa))


def _by_barometer(case: Case) -> Part:
    found_m = air.elevation_m(case.here.pressure_pa)
    return Part(
        figures=(
            celsius("boiling_point", "Water boils at", case.here.boiling_c, case.sea.boiling_c),
            Figure("effective_elevation", "You cook as at", round(found_m), "m"),
        ),
        headline=f"Air at {case.say.pressure(case.here.pressure_pa)} cooks as at {case.say.elevation(found_m)}: water "
        f"boils at {case.say.temp(case.here.boiling_c)}.",
        because=f"A barometer at {case.say.pressure(case.here.pressure_pa)} in the kitchen itself is the air of "
        f"{case.say.elevation(found_m)} on a standard day, whatever the map says. A weather report will not do: it is "
        "reduced to sea level.",
    )


@rule("calibrate.how", "common-practice")
def how(case: Case) -> Part:
    """How to make the boil test, and the ice test that needs no elevation."""
    return Part(
        steps=(
            "Boil a deep pot of plain water hard for a minute, hold the tip in the middle, clear of the pot, and "
            "read when it stands.",
            "Then crushed ice with a little water, stirred: it must read 32 °F (0 °C) at every elevation.",
        )
    )


def is_report(request: Request) -> bool:
    """Whether the pressure is one that a weather report reduced to sea level, by the elevation it was given with."""
    if request.pressure_pa is None or request.elevation_m is None or request.elevation_from == "barometer":
        return False
    return bool(air.looks_sea_level_reduced(request.pressure_pa, request.elevation_m))


def air_of_the_day(case: Case) -> Case:
    """The case with the pressure of the place itself where a report's was given."""
    request = case.request
    if not is_report(request) or request.pressure_pa is None or request.elevation_m is None:
        return case
    station_pa = air.station_pressure_pa(request.pressure_pa, request.elevation_m)
    return Case(replace(request, pressure_pa=station_pa))


@rule("calibrate.report", "us-std-atm-1976", "iapws-r7-97")
def report(case: Case) -> Part | None:
    """A weather report's pressure turned back to that of the place, and where water boils by it."""
    if not is_report(case.request):
        return None
    day, told = air_of_the_day(case), case.say.pressure(case.here.pressure_pa)
    here = case.say.pressure(day.here.pressure_pa)
    cooks_as_m = air.elevation_m(day.here.pressure_pa)
    return Part(
        headline=f"{told} is a weather report's figure, reduced to sea level: at {case.place} the air presses with "
        f"{here} today, and water boils at {case.say.temp(day.here.boiling_c)}.",
        figures=(
            Figure("station_pressure", "Pressure at the place itself", round(day.here.pressure_pa / 1000, 2), "kPa"),
            celsius("boiling_point", "Water boils at", day.here.boiling_c, case.sea.boiling_c),
            Figure("effective_elevation", "You cook as at", round(cooks_as_m), "m"),
        ),
        steps=("For canning go by the elevation on a map, never by the weather.",),
        because="Weather services add the weight of the air between the station and the sea, so that maps can be "
        f"compared. A barometer that hangs in a kitchen at {case.place} and is not set for the weather reads about "
        f"{here}.",
        maths=f"p = {round(case.here.pressure_pa):,}·p_std(z)/101,325 = {round(day.here.pressure_pa):,} Pa.",
    )


@rule("calibrate.weather", "us-std-atm-1976", "iapws-r7-97")
def weather(case: Case) -> Part | None:
    """What the weather is worth in elevation: a deep low cooks as if one had climbed."""
    if not elevation_stated(case.request):
        return None
    here = air_of_the_day(case).here
    base_m, low_m = (_elevation_at(here.pressure_pa - drop) for drop in (0.0, DEEP_LOW_PA))
    fall_k = here.boiling_c - water.saturation_temp_c(here.pressure_pa - DEEP_LOW_PA)
    return Part(
        figures=(Figure("deep_low", "A deep low is worth a climb of", round(low_m - base_m), "m"),),
        because=f"A deep low, {case.say.pressure(DEEP_LOW_PA)} under the usual, is worth a climb of "
        f"{case.say.elevation(low_m - base_m)} and takes {case.say.temp_drop(fall_k)} off the boil; a strong high "
        "gives "
        "about as much back.",
        maths=f"dz = {round(low_m - base_m)} m for {round(DEEP_LOW_PA):,} Pa.",
    )


def rules_for(request: Request | None) -> tuple[Rule, ...]:
    """The rules that may speak; a report's pressure may not be taken for that of the place."""
    if request is not None and is_report(request):
        return report, weather, how
    return (report, offset, effective_elevation, expected, weather, how)
