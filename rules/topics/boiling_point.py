"""Boiling point: where water boils here, what the weather does to it, and what a thermometer should read."""

from __future__ import annotations

from rules.book import Case, Part, celsius, rule
from rules.heat.where_water_boils import boiling_point
from rules.model import Figure
from rules.physics import water
from rules.physics.units import FT_PER_M
from rules.say import number

WEATHER_PA = 1000.0


@rule("boiling_point.headline", "iapws-r7-97", "us-std-atm-1976")
def headline(case: Case) -> Part:
    """Where water boils here, in one sentence."""
    here, there = case.say.temp(case.here.boiling_c), case.say.temp(case.there.boiling_c)
    against = f", against {there} at {case.baseline}" if case.moved else ""
    measured = " by your barometer" if case.request.pressure_pa is not None else ""
    return Part(headline=f"Water boils at {here} at {case.place}{measured}{against}.")


@rule("boiling_point.weather", "iapws-r7-97")
def weather(case: Case) -> Part:
    """What a change of weather does: 10 hPa up or down."""
    low, high = (water.saturation_temp_c(case.here.pressure_pa + sign * WEATHER_PA) for sign in (-1, 1))
    swing_k = (high - low) / 2
    return Part(
        figures=(Figure("weather_shift", "For each 10 hPa (0.3 inHg) of weather", round(swing_k, 2), "K"),),
        because=f"Weather moves it too: 10 hPa (0.3 inHg) up or down on the barometer is {number(swing_k, 2)} °C "
        f"({number(swing_k * 1.8, 1)} °F) up or down. A stormy day can take off a full degree."
        if case.request.pressure_pa is None
        else f"This is for the pressure you read. 10 hPa (0.3 inHg) up or down moves it {number(swing_k, 2)} °C "
        f"({number(swing_k * 1.8, 1)} °F); the standard air of {case.place} gives "
        f"{case.say.temp(water.boiling_point_c(case.here.elevation_m))}.",
        maths=f"T_sat({round(case.here.pressure_pa + WEATHER_PA):,} Pa) = {high:.2f} °C, "
        f"T_sat({round(case.here.pressure_pa - WEATHER_PA):,} Pa) = {low:.2f} °C.",
    )


@rule("boiling_point.thermometer", "common-practice")
def thermometer(case: Case) -> Part | None:
    """What the cook's own thermometer will read at the boil, where it is known to be off."""
    offset_k = case.request.thermometer_offset_c
    if abs(offset_k) < 0.05:
        return None
    reading = case.here.boiling_c + offset_k
    return Part(
        figures=(celsius("thermometer_reading", "Your thermometer then reads", reading),),
        because=f"Your thermometer is {case.say.temp_drop(abs(offset_k))} {'high' if offset_k > 0 else 'low'}, so a "
        f"full boil reads {case.say.temp(reading)} on it.",
    )


@rule("boiling_point.rule_of_thumb", "nmsu-e-215", "csu-high-altitude-food-prep")
def rule_of_thumb(case: Case) -> Part | None:
    """The rule of thumb, and how far it is off."""
    feet = case.here.elevation_m * FT_PER_M
    if feet < 1000 or case.request.pressure_pa is not None:
        return None
    by_thumb_c = (212 - feet / 500 - 32) / 1.8
    return Part(
        because=f"The rule of thumb, 1 °F lower for each 500 ft, gives {case.say.temp(by_thumb_c)}; the true slope is "
        "a little less, 0.9 °F (0.5 °C) for each 500 ft."
    )


@rule("boiling_point.no_hotter", "common-practice")
def no_hotter(case: Case) -> Part:
    """What it means at the stove."""
    low = case.here.boiling_c < case.sea.boiling_c - 1
    return Part(
        steps=("Expect every boiled, steamed or simmered food to take longer, and no flame to change that.",)
        if low
        else (),
    )


RULES = (headline, boiling_point, weather, thermometer, rule_of_thumb, no_hotter)
