"""Boiling point: where water boils here, what the weather does to it, and what a thermometer should read."""

from __future__ import annotations

from rules.book import Case, Part, celsius, rule
from rules.heat.where_water_boils import boiling_point
from rules.model import Figure
from rules.physics import water
from rules.physics.units import FT_PER_M
from rules.said import Said, fixed, number, sentences, temp, temp_drop

say = sentences("topics/boiling_point")

WEATHER_PA = 1000.0
# how far a stated boil may be off to be right as books round it, and to be nearly right [K]
ROUNDED_K, NEAR_K = 0.7, 3.0


@rule("boiling_point.stated", "iapws-r7-97", "us-std-atm-1976")
def stated(case: Case) -> Part | None:
    """Whether a boil that was stated is the one of this place."""
    said_c = case.request.temperature_c
    if said_c is None:
        return None
    apart_k = abs(said_c - case.here.boiling_c)
    verdict = "yes" if apart_k <= ROUNDED_K else "nearly" if apart_k <= NEAR_K else "no"
    return Part(
        headline=say(
            "stated",
            verdict=verdict,
            said=temp(said_c),
            here=temp(case.here.boiling_c),
            place=case.place,
            apart=temp_drop(apart_k),
            way="high" if said_c > case.here.boiling_c else "low",
        )
    )


@rule("boiling_point.headline", "iapws-r7-97", "us-std-atm-1976")
def headline(case: Case) -> Part | None:
    """Where water boils here, in one sentence; nothing where that was said beside a figure of the asker's."""
    if case.request.temperature_c is not None:
        return None
    return Part(
        headline=say(
            "headline",
            here=temp(case.here.boiling_c),
            place=case.place,
            by="map" if case.request.pressure_pa is None else "barometer",
            moved="yes" if case.moved else "no",
            there=temp(case.there.boiling_c),
            baseline=case.baseline,
        )
    )


@rule("boiling_point.weather", "iapws-r7-97")
def weather(case: Case) -> Part:
    """What a change of weather does: 10 hPa up or down."""
    low, high = (water.saturation_temp_c(case.here.pressure_pa + sign * WEATHER_PA) for sign in (-1, 1))
    swing_k = (high - low) / 2
    return Part(
        figures=(Figure("weather_shift", say("weather-label"), round(swing_k, 2), "K"),),
        because=_weather_why(case, swing_k),
        maths=say(
            "weather-maths",
            over=number(case.here.pressure_pa + WEATHER_PA, 0),
            high=fixed(high),
            under=number(case.here.pressure_pa - WEATHER_PA, 0),
            low=fixed(low),
        ),
    )


def _weather_why(case: Case, swing_k: float) -> Said:
    in_c, in_f = number(swing_k, 2), number(swing_k * 1.8, 1)
    if case.request.pressure_pa is None:
        return say("weather", celsius=in_c, fahrenheit=in_f)
    standard = temp(water.boiling_point_c(case.here.elevation_m))
    return say("weather-read", celsius=in_c, fahrenheit=in_f, place=case.place, standard=standard)


@rule("boiling_point.thermometer", "common-practice")
def thermometer(case: Case) -> Part | None:
    """What the cook's own thermometer will read at the boil, where it is known to be off."""
    offset_k = case.request.thermometer_offset_c
    if abs(offset_k) < 0.05:
        return None
    reading = case.here.boiling_c + offset_k
    return Part(
        figures=(celsius("thermometer_reading", say("thermometer-label"), reading),),
        because=say(
            "thermometer",
            off=temp_drop(abs(offset_k)),
            way="high" if offset_k > 0 else "low",
            reading=temp(reading),
        ),
    )


@rule("boiling_point.rule_of_thumb", "nmsu-e-215", "csu-high-altitude-food-prep")
def rule_of_thumb(case: Case) -> Part | None:
    """The rule of thumb, and how far it is off."""
    feet = case.here.elevation_m * FT_PER_M
    if feet < 1000 or case.request.pressure_pa is not None:
        return None
    by_thumb_c = (212 - feet / 500 - 32) / 1.8
    return Part(because=say("rule-of-thumb", by_thumb=temp(by_thumb_c)))


@rule("boiling_point.no_hotter", "common-practice")
def no_hotter(case: Case) -> Part:
    """What it means at the stove."""
    low = case.here.boiling_c < case.sea.boiling_c - 1
    return Part(steps=(say("no-hotter"),) if low else ())


RULES = (stated, headline, boiling_point, weather, thermometer, rule_of_thumb, no_hotter)
