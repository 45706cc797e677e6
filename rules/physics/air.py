"""Air above sea level: pressure, temperature and density of the standard atmosphere.

Elevation is taken as geopotential height; at 5,500 m that is 5 m of air, or 0.02 degC of boiling point.
"""

from __future__ import annotations

import math

from rules.errors import within

LOWEST_M, HIGHEST_M = -430.0, 5500.0
SEA_LEVEL_PA = 101_325.0
SEA_LEVEL_K = 288.15
LAPSE_K_PER_M = 0.0065
# g0 / (R_air * lapse), with g0 9.80665 m/s2 and R_air 287.05287 J/(kg K)
STANDARD_GRAVITY = 9.80665
EXPONENT = STANDARD_GRAVITY / (287.05287 * LAPSE_K_PER_M)

LOWEST_SEA_LEVEL_PA, HIGHEST_SEA_LEVEL_PA = 87_000.0, 108_500.0
WEATHER_SWING = 0.045

_ELEVATION_HINT = "It is the height of the kitchen above sea level; check the figure and whether it is feet or metres."
_PRESSURE_HINT = "Check the unit of the reading: 1 hPa = 1 mbar = 100 Pa, and 1 inHg = 3386.4 Pa."


def _temperature_ratio(elevation_m: float) -> float:
    within("elevation", elevation_m, LOWEST_M, HIGHEST_M, "m", _ELEVATION_HINT)
    return 1 - LAPSE_K_PER_M * elevation_m / SEA_LEVEL_K


def pressure_pa(elevation_m: float) -> float:
    """Pressure of the standard atmosphere.

    elevation_m: height above sea level [m], -430 to 5500
    returns: pressure [Pa]
    raises: OutOfRange outside that range
    source: iso-2533-1975, us-std-atm-1976, the layer below 11 km

    >>> round(pressure_pa(1500) / 100, 2)
    845.56
    """
    return SEA_LEVEL_PA * math.pow(_temperature_ratio(elevation_m), EXPONENT)


ROUNDING = 1e-9

# `pressure_pa` is also the natural name of an argument, and would hide the function there
_pressure_at = pressure_pa


def elevation_m(pressure_pa: float) -> float:
    """Elevation at which the standard atmosphere has this pressure: pressure_pa turned round.

    pressure_pa: pressure at the place itself [Pa], 50 507 to 106 598, not reduced to sea level
    returns: elevation [m]
    raises: OutOfRange when the elevation would lie outside -430 to 5500 m
    source: iso-2533-1975, us-std-atm-1976

    >>> round(elevation_m(84_556))
    1500
    """
    # a pressure that was worked out from an elevation at the very end of the range may come back a rounding outside it
    low, high = _pressure_at(HIGHEST_M) * (1 - ROUNDING), _pressure_at(LOWEST_M) * (1 + ROUNDING)
    within("air pressure", pressure_pa, low, high, "Pa", _PRESSURE_HINT)
    found = SEA_LEVEL_K / LAPSE_K_PER_M * (1 - math.pow(pressure_pa / SEA_LEVEL_PA, 1 / EXPONENT))
    return min(max(found, LOWEST_M), HIGHEST_M)


def station_pressure_pa(sea_level_pressure_pa: float, elevation_m: float) -> float:
    """Pressure at the place itself, from the sea-level pressure of a weather report.

    Weather services add a column of air to what the station reads. It is taken away again with the column of the
    standard atmosphere: the report times p(elevation) / p(0). On a day 20 K off standard that is some 1.5 % out
    at 2,000 m, or 0.4 degC of boiling point, so a reading at the place itself is always better.

    sea_level_pressure_pa: pressure as reported [Pa], 87 000 to 108 500
    elevation_m: height of the place [m], -430 to 5500
    returns: pressure at the place [Pa]
    raises: OutOfRange outside those ranges
    source: us-std-atm-1976

    >>> round(station_pressure_pa(102_000, 2000) / 100, 1)
    800.2
    """
    reported = within(
        "sea-level pressure",
        sea_level_pressure_pa,
        LOWEST_SEA_LEVEL_PA,
        HIGHEST_SEA_LEVEL_PA,
        "Pa",
        "A figure below this is probably the pressure at the place itself; use it as it is.",
    )
    return reported * pressure_pa(elevation_m) / SEA_LEVEL_PA


def looks_sea_level_reduced(pressure_pa: float, elevation_m: float) -> bool | None:
    """Whether a reading is likely reduced to sea level, as weather reports are.

    Weather moves the pressure of a place by some 4.5 % at most (common practice). A reading that fits only
    the sea-level value gives True, one that fits only the value of the elevation False.

    pressure_pa: the reading [Pa]
    elevation_m: height of the place [m], -430 to 5500
    returns: True, False, or None when it fits both or neither: then ask
    raises: OutOfRange when the elevation is outside its range

    >>> looks_sea_level_reduced(101_900, 2133.6), looks_sea_level_reduced(78_400, 2133.6)
    (True, False)
    >>> looks_sea_level_reduced(100_500, 150) is None
    True
    """
    reduced = _near(pressure_pa, SEA_LEVEL_PA)
    as_read = _near(pressure_pa, _pressure_at(elevation_m))
    return None if reduced == as_read else reduced


def _near(pressure: float, standard: float) -> bool:
    return abs(pressure / standard - 1) <= WEATHER_SWING


def temperature_c(elevation_m: float) -> float:
    """Air temperature of the standard atmosphere.

    elevation_m: height above sea level [m], -430 to 5500
    returns: temperature [degC]
    raises: OutOfRange outside that range
    source: iso-2533-1975, us-std-atm-1976

    >>> round(temperature_c(2000), 2)
    2.0
    """
    return SEA_LEVEL_K * _temperature_ratio(elevation_m) - 273.15


def density_ratio(elevation_m: float) -> float:
    """Air density as a fraction of that at sea level.

    It says how much oxygen a burner gets and how much heat the air of an oven carries.

    elevation_m: height above sea level [m], -430 to 5500
    returns: fraction [-]
    raises: OutOfRange outside that range
    source: iso-2533-1975, us-std-atm-1976

    >>> round(density_ratio(2133.6), 3)
    0.811
    """
    return math.pow(_temperature_ratio(elevation_m), EXPONENT - 1)


TROPOPAUSE_M, TROPOPAUSE_PA, TROPOPAUSE_K = 11_000.0, 22_632.06, 216.65
# the next layer of the standard begins there
ISOTHERMAL_TO_PA = 5_474.89


def height_of_m(pressure_pa: float) -> float:
    """Height above sea level at which the standard atmosphere has this pressure, far above any kitchen.

    pressure_pa: pressure [Pa], 5 474.89 to 106 598
    returns: height [m], up to 20 000
    raises: OutOfRange outside that range
    source: us-std-atm-1976, the layers below 11 km and from there to 20 km

    >>> round(height_of_m(26_436)), round(height_of_m(12_044.6))
    (10000, 15000)
    """
    within("air pressure", pressure_pa, ISOTHERMAL_TO_PA, _pressure_at(LOWEST_M) * (1 + ROUNDING), "Pa")
    if pressure_pa >= TROPOPAUSE_PA:
        return SEA_LEVEL_K / LAPSE_K_PER_M * (1 - math.pow(pressure_pa / SEA_LEVEL_PA, 1 / EXPONENT))
    fall_per_m = EXPONENT * LAPSE_K_PER_M / TROPOPAUSE_K
    return TROPOPAUSE_M - math.log(pressure_pa / TROPOPAUSE_PA) / fall_per_m


def weight_kg_per_m2(pressure_pa: float) -> float:
    """What the air over a square metre weighs, whose push is this pressure [Pa], by standard gravity [kg/m²].

    source: us-std-atm-1976

    >>> round(weight_kg_per_m2(101_325))
    10332
    """
    return pressure_pa / STANDARD_GRAVITY
