"""What the weather does to the boil, and what a thermometer in it tells."""

from __future__ import annotations

from rules.book import Case
from rules.explanations.named import Figures, Values, always, figure, here
from rules.physics import air, water
from rules.physics.ambient import Ambient
from rules.physics.units import round_to
from rules.said import Value, elevation, fine_drop, pressure, temp, yes

SWING_PA = 1000.0
CLIMB_M = 300.0


def high_k(ambient: Ambient) -> float:
    """What a swing of the barometer upwards adds to the boil [K]."""
    return water.saturation_temp_c(ambient.pressure_pa + SWING_PA) - ambient.boiling_c


def low_k(ambient: Ambient) -> float:
    """What a swing downwards takes off the boil [K]."""
    return ambient.boiling_c - water.saturation_temp_c(ambient.pressure_pa - SWING_PA)


def climb_m(ambient: Ambient) -> float:
    """The climb [m] that takes as much off."""
    slope_k_m = (water.boiling_point_c(0) - water.boiling_point_c(CLIMB_M)) / CLIMB_M
    return round_to(low_k(ambient) / slope_k_m, 10)


def reading_c(case: Case) -> float | None:
    """The cook's own reading [degC], where it is one that water can boil at."""
    reading, lowest, highest = case.request.temperature_c, *map(water.boiling_point_c, (air.HIGHEST_M, air.LOWEST_M))
    return reading if reading is not None and lowest <= reading <= highest else None


def reading(case: Case) -> Value:
    """The cook's own reading at a full boil, in words; empty where there is none."""
    found = reading_c(case)
    return "" if found is None else temp(found)


def reading_belongs_to(case: Case) -> Value:
    """The elevation that has its boil there."""
    found = reading_c(case)
    return "" if found is None else elevation(water.elevation_from_boiling_m(found))


def by_map(case: Case) -> Value:
    """Where water boils on a standard day at the elevation of the map."""
    return temp(water.boiling_point_c(case.here.elevation_m))


def cooks_as_at(case: Case) -> Value:
    """The elevation where standard air presses as it does in the kitchen."""
    return elevation(air.elevation_m(case.here.pressure_pa))


VALUES: Values = {
    "boil_by_map": by_map,
    "cooks_as_at": cooks_as_at,
    "barometer": lambda case: "none" if case.request.pressure_pa is None else "read",
    "weather_swing": always(pressure(SWING_PA)),
    "weather_rise": here(fine_drop, high_k),
    "weather_fall": here(fine_drop, low_k),
    "weather_climb": here(elevation, climb_m),
    "reading_given": lambda case: yes(reading_c(case) is not None),
    "reading": reading,
    "reading_belongs_to": reading_belongs_to,
    "ice": always(temp(0.0)),
}
FIGURES: Figures = {"weather_drop": figure("weather_drop", "K", low_k, beside_sea_level=False)}
