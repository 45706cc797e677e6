"""Boiling: pure water at any pressure, and with salt, sugar or alcohol in it."""

from __future__ import annotations

import math
from bisect import bisect_right
from functools import cache

from rules.errors import within
from rules.physics import air
from rules.tables import read_csv

ZERO_C_K = 273.15
LOWEST_PA, HIGHEST_PA = 611.213, 22.064e6
LOWEST_C, HIGHEST_C = 0.0, 373.946

# IAPWS R7-97(2012), region 4, coefficients n1 to n10
N1, N2, N3, N4 = 0.11670521452767e4, -0.72421316703206e6, -0.17073846940092e2, 0.12020824702470e5
N5, N6, N7, N8 = -0.32325550322333e7, 0.14915108613530e2, -0.48232657361591e4, 0.40511340542057e6
N9, N10 = -0.23855557567849, 0.65017534844798e3

EBULLIOSCOPIC_K_KG_PER_MOL = 0.512
SALT_G_PER_MOL = 58.443
ETHANOL_G_PER_MOL, WATER_G_PER_MOL = 46.068, 18.015
# Wilson constants of ethanol (1) in water (2) [cal/mol] and liquid molar volumes [cm3/mol]
WILSON_12, WILSON_21, ETHANOL_CM3, WATER_CM3 = 325.0757, 953.2792, 58.68, 18.07
# Antoine constants of ethanol [mmHg, degC]
ANTOINE_A, ANTOINE_B, ANTOINE_C, MMHG_PA = 8.20417, 1642.89, 230.300, 133.322


def saturation_temp_c(pressure_pa: float) -> float:
    """Temperature at which pure water boils.

    pressure_pa: absolute pressure [Pa], 611.213 to 22.064e6
    returns: temperature [degC]
    raises: OutOfRange when the pressure is outside the range above
    source: iapws-r7-97, region 4, backward equation

    >>> round(saturation_temp_c(100_000), 2)
    99.61
    """
    within("pressure", pressure_pa, LOWEST_PA, HIGHEST_PA, "Pa", "Give absolute pressure: gauge plus the air's own.")
    beta = math.pow(pressure_pa / 1e6, 0.25)
    e = beta**2 + N3 * beta + N6
    f = N1 * beta**2 + N4 * beta + N7
    g = N2 * beta**2 + N5 * beta + N8
    d = 2 * g / (-f - math.sqrt(f**2 - 4 * e * g))
    return (N10 + d - math.sqrt((N10 + d) ** 2 - 4 * (N9 + N10 * d))) / 2 - ZERO_C_K


def saturation_pressure_pa(temp_c: float) -> float:
    """Pressure at which pure water boils at this temperature.

    temp_c: temperature [degC], 0 to 373.946
    returns: absolute pressure [Pa]
    raises: OutOfRange when the temperature is outside the range above
    source: iapws-r7-97, region 4, basic equation

    >>> round(saturation_pressure_pa(100))
    101418
    """
    temp_k = within("temperature", temp_c, LOWEST_C, HIGHEST_C, "degC") + ZERO_C_K
    theta = temp_k + N9 / (temp_k - N10)
    a = theta**2 + N1 * theta + N2
    b = N3 * theta**2 + N4 * theta + N5
    c = N6 * theta**2 + N7 * theta + N8
    return 1e6 * (2 * c / (-b + math.sqrt(b**2 - 4 * a * c))) ** 4


def boiling_point_c(elevation_m: float) -> float:
    """Temperature at which pure water boils in the standard atmosphere.

    Weather moves it: 10 hPa is 0.28 degC at sea level and 0.34 degC at 2,000 m.

    elevation_m: height above sea level [m], -430 to 5500
    returns: temperature [degC]
    raises: OutOfRange outside that range
    source: iapws-r7-97 on us-std-atm-1976

    >>> round(boiling_point_c(2133.6), 2)
    92.87
    """
    return saturation_temp_c(air.pressure_pa(elevation_m))


def elevation_from_boiling_m(temp_c: float) -> float:
    """Elevation at which water boils at this temperature: the boil test turned into an elevation.

    A thermometer 1 degC off gives an answer 300 m off.

    temp_c: temperature of boiling pure water [degC], 81.6 to 101.4
    returns: elevation [m]
    raises: OutOfRange when the elevation would lie outside -430 to 5500 m
    source: iapws-r7-97 on us-std-atm-1976

    >>> round(elevation_from_boiling_m(93.32), -1)
    2000.0
    """
    low, high = boiling_point_c(air.HIGHEST_M), boiling_point_c(air.LOWEST_M)
    hint = "Check the unit, then the thermometer in melting ice, where it must read 0 degC, 32 degF."
    return air.elevation_m(saturation_pressure_pa(within("boiling point", temp_c, low, high, "degC", hint)))


def salt_elevation_k(salt_g_per_kg_water: float) -> float:
    """How much table salt raises the boiling point.

    Ideal ebullioscopy, two ions a molecule. Within about 0.2 K of measured brines over the range given; a
    saturated brine boils near 108.7 degC, where the ideal law falls 2 K short.

    salt_g_per_kg_water: grams of sodium chloride in 1 kg of water, 0 to 200
    returns: elevation of the boiling point [K]
    raises: OutOfRange outside that range
    source: atkins-ebullioscopic

    >>> round(salt_elevation_k(10), 3)
    0.175
    """
    salt = within("salt in a kilogram of water", salt_g_per_kg_water, 0, 200, "g")
    return EBULLIOSCOPIC_K_KG_PER_MOL * 2 * salt / SALT_G_PER_MOL


@cache
def _sucrose() -> tuple[tuple[float, ...], tuple[float, ...]]:
    rows = read_csv("tables/sucrose_boiling_browne-1912-sucrose.csv").rows
    return tuple(float(row["sucrose_percent"]) for row in rows), tuple(float(row["elevation_k"]) for row in rows)


def _interpolate(at: float, xs: tuple[float, ...], ys: tuple[float, ...]) -> float:
    i = min(max(bisect_right(xs, at), 1), len(xs) - 1)
    return ys[i - 1] + (ys[i] - ys[i - 1]) * (at - xs[i - 1]) / (xs[i] - xs[i - 1])


def sucrose_elevation_k(percent: float) -> float:
    """How far above water a sugar syrup boils.

    Straight lines between the rows of the table. Add the result to the boiling point of water at the place: that
    carries elevation and weather. Rows above 82 % are from memory and good to a few kelvin.

    percent: sucrose by mass [%], 0 to 100
    returns: elevation of the boiling point [K]
    raises: OutOfRange outside that range
    source: browne-1912-sucrose

    >>> sucrose_elevation_k(70)
    6.5
    """
    percents, elevations = _sucrose()
    return _interpolate(within("sugar", percent, 0, 100, "%"), percents, elevations)


def sucrose_percent(elevation_k: float) -> float:
    """Sugar in a syrup that boils so far above water: sucrose_elevation_k turned round.

    elevation_k: boiling point of the syrup less that of water at the place [K], 0 to 60
    returns: sucrose by mass [%]
    raises: OutOfRange outside that range
    source: browne-1912-sucrose

    >>> sucrose_percent(12.0)
    80.0
    """
    percents, elevations = _sucrose()
    hint = "Above that the water is gone and the sugar itself melts and browns, the same at any elevation."
    within("boiling-point elevation of the syrup", elevation_k, 0, elevations[-1], "K", hint)
    return _interpolate(elevation_k, elevations, percents)


def _ethanol_water_pressure_pa(ethanol_mole_fraction: float, temp_c: float) -> float:
    """Vapour pressure of the mixture by modified Raoult's law with Wilson activity coefficients."""
    x, y = ethanol_mole_fraction, 1 - ethanol_mole_fraction
    energy = 1.98721 * (temp_c + ZERO_C_K)
    l12 = WATER_CM3 / ETHANOL_CM3 * math.exp(-WILSON_12 / energy)
    l21 = ETHANOL_CM3 / WATER_CM3 * math.exp(-WILSON_21 / energy)
    slope = l12 / (x + l12 * y) - l21 / (l21 * x + y)
    activity_ethanol = x / (x + l12 * y) * math.exp(y * slope)
    activity_water = y / (y + l21 * x) * math.exp(-x * slope)
    ethanol_pa = MMHG_PA * math.pow(10, ANTOINE_A - ANTOINE_B / (temp_c + ANTOINE_C))
    return activity_ethanol * ethanol_pa + activity_water * saturation_pressure_pa(temp_c)


def ethanol_boiling_c(ethanol_mass_fraction: float, pressure_pa: float) -> float:
    """Temperature at which a mixture of alcohol and water starts to boil.

    Wilson's equation for the liquid, Antoine's for ethanol, IAPWS for water, an ideal vapour: within 0.5 K of
    measured mixtures, and lowest at the azeotrope, about 95 % alcohol by mass.

    ethanol_mass_fraction: grams of ethanol in a gram of the mixture, 0 to 1
    pressure_pa: absolute pressure [Pa], 50 000 to 110 000
    returns: temperature [degC]
    raises: OutOfRange outside those ranges
    source: wilson-ethanol-water

    >>> round(ethanol_boiling_c(0.1, 101_325), 1)
    91.5
    """
    within("mass fraction of alcohol", ethanol_mass_fraction, 0, 1, "", "Give 0.4 for 40 % by mass.")
    within("pressure", pressure_pa, 50_000, 110_000, "Pa")
    ethanol_mol = ethanol_mass_fraction / ETHANOL_G_PER_MOL
    mole_fraction = ethanol_mol / (ethanol_mol + (1 - ethanol_mass_fraction) / WATER_G_PER_MOL)
    low, high = 55.0, 105.0
    while high - low > 1e-9:
        middle = (low + high) / 2
        below = _ethanol_water_pressure_pa(mole_fraction, middle) < pressure_pa
        low, high = (middle, high) if below else (low, middle)
    return (low + high) / 2


def latent_heat_kj_per_kg(temp_c: float) -> float:
    """Heat that boils away a kilogram of water.

    A cubic through the steam-table values at 0, 50, 100 and 130 degC, within 0.1 % of the tables.

    temp_c: temperature [degC], 0 to 130
    returns: heat [kJ/kg]
    raises: OutOfRange outside that range
    source: crc-handbook

    >>> round(latent_heat_kj_per_kg(100), 1)
    2256.4
    """
    t = within("temperature", temp_c, 0, 130, "degC")
    return 2500.9 - 2.38355 * t + 7.565e-4 * t**2 - 1.371e-5 * t**3
