"""Calibrate: the boil test and the barometer.

Elevation known, a boil test shows what the thermometer is off; unknown, it gives the elevation. A weather report's
pressure is reduced to sea level, and is turned back before it is used.
"""

from __future__ import annotations

from dataclasses import replace

from rules.book import Case, Part, Rule, celsius, rule
from rules.errors import within
from rules.heat.where_water_boils import boiling_figure
from rules.model import Caution, Figure, Request
from rules.physics import air, water
from rules.said import Said, elevation, fixed, number, pressure, sentences, temp, temp_drop, together, yes

say = sentences("topics/calibrate")

WEATHER_PA = 1000.0
DEEP_LOW_PA = 3000.0
RIGHT_K = 0.5
# the form of a question after whether the thermometer is broken
BROKEN = "broken"
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
    label, sea = say("expected-label"), round(case.sea.boiling_c, 2)
    by = "map" if case.request.pressure_pa is None else "barometer"
    return Part(
        figures=(Figure("expected_reading", label, round(here, 2), "degC", low, high, sea),),
        headline=say("expected", place=case.place, boil=temp(here)) if case.request.temperature_c is None else "",
        because=together(
            say("expected-because", boil=temp(here), place=case.place, by=by),
            say("weather-moves", swing=temp_drop(swing)) if swing else "",
        ),
        maths=say("expected-maths", pressure=number(case.here.pressure_pa, 0), boil=fixed(here)),
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
    right, way = abs(off) <= RIGHT_K, "high" if off > 0 else "low"
    doubt = Caution("note", say("far-off"), ("common-practice",))
    return Part(
        figures=(
            celsius("reading", say("reading-label"), reading),
            Figure("thermometer_offset", say("too-high") if off >= 0 else say("off-by"), round(off, 2), "K"),
        ),
        headline=_verdict(case, reading, "right" if right else way),
        steps=() if right else (say("correct", size=temp_drop(abs(off)), way=way),),
        cautions=(doubt,) if abs(off) > DOUBTFUL_K else (),
    )


def _verdict(case: Case, reading_c: float, way: str) -> Said:
    if way == "right":
        return say("right", reading=temp(reading_c), place=case.place)
    size = temp_drop(abs(reading_c - case.here.boiling_c))
    return say("wrong", size=size, way=way, place=case.place, boil=temp(case.here.boiling_c))


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
            boiling_figure(case, boil_c),
            Figure("effective_elevation", say("cooks-as-at"), round(found_m), "m", round(low_m), round(high_m)),
        ),
        headline=say(
            "by-boil", boil=temp(boil_c), found=elevation(found_m), doubted=yes(BROKEN in request.forms and found_m > 0)
        ),
        because=say("by-boil-because"),
    )


def _elevation_at(pressure_pa: float) -> float:
    lowest_pa, highest_pa = air.pressure_pa(air.HIGHEST_M), air.pressure_pa(air.LOWEST_M)
    return air.elevation_m(min(max(pressure_pa, lowest_pa), highest_pa))


def _by_barometer(case: Case) -> Part:
    found_m, read = air.elevation_m(case.here.pressure_pa), pressure(case.here.pressure_pa)
    return Part(
        figures=(
            boiling_figure(case, case.here.boiling_c),
            Figure("effective_elevation", say("cooks-as-at"), round(found_m), "m"),
        ),
        headline=say("by-barometer", pressure=read, found=elevation(found_m), boil=temp(case.here.boiling_c)),
        because=say("by-barometer-because", pressure=read, found=elevation(found_m)),
    )


@rule("calibrate.how", "common-practice")
def how(case: Case) -> Part:
    """How to make the boil test, and the ice test that needs no elevation."""
    return Part(steps=(say("boil-test"), say("ice-test")))


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
    day = air_of_the_day(case).here
    told_pa, here_pa = case.here.pressure_pa, day.pressure_pa
    told, here = pressure(told_pa), pressure(here_pa)
    return Part(
        headline=say("report", report=told, place=case.place, pressure=here, boil=temp(day.boiling_c)),
        figures=(
            Figure("station_pressure", say("station-label"), round(here_pa / 1000, 2), "kPa"),
            boiling_figure(case, day.boiling_c),
            Figure("effective_elevation", say("cooks-as-at"), round(air.elevation_m(here_pa)), "m"),
        ),
        steps=(say("canning-by-map"),),
        because=say("report-because", place=case.place, pressure=here),
        maths=say("report-maths", report=number(told_pa, 0), here=number(here_pa, 0)),
    )


@rule("calibrate.weather", "us-std-atm-1976", "iapws-r7-97")
def weather(case: Case) -> Part | None:
    """What the weather is worth in elevation: a deep low cooks as if one had climbed."""
    if not elevation_stated(case.request):
        return None
    here = air_of_the_day(case).here
    base_m, low_m = (_elevation_at(here.pressure_pa - drop) for drop in (0.0, DEEP_LOW_PA))
    climb_m = low_m - base_m
    fall_k = here.boiling_c - water.saturation_temp_c(here.pressure_pa - DEEP_LOW_PA)
    return Part(
        figures=(Figure("deep_low", say("deep-low-label"), round(climb_m), "m"),),
        because=say(
            "deep-low",
            low=pressure(DEEP_LOW_PA),
            climb=elevation(climb_m),
            fall=temp_drop(fall_k),
        ),
        maths=say("deep-low-maths", climb=fixed(climb_m, 0), low=number(DEEP_LOW_PA, 0)),
    )


def rules_for(request: Request | None) -> tuple[Rule, ...]:
    """The rules that may speak; a report's pressure may not be taken for that of the place."""
    if request is not None and is_report(request):
        return report, weather, how
    return (report, offset, effective_elevation, expected, weather, how)
