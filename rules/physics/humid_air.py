"""Moist air at any pressure: what it holds, and the wet bulb, the temperature at which a wet surface settles in it."""

from __future__ import annotations

from rules.errors import within
from rules.physics import water

WATER_TO_AIR = 0.621945
LATENT_0_KJ, VAPOUR_KJ_K, AIR_KJ_K, WATER_KJ_K = 2501.0, 1.86, 1.006, 4.186
LOWEST_C, HIGHEST_C = 0.0, 200.0
LOWEST_PA, HIGHEST_PA = 45_000.0, 110_000.0
LARGEST_HUMIDITY = 2.0
NEAR_BOIL = 0.999_999


def humidity_ratio(vapour_pa: float, pressure_pa: float) -> float:
    """Water that a kilogram of dry air carries, from the vapour's share of the pressure.

    vapour_pa: vapour pressure [Pa], below the air's
    pressure_pa: air pressure [Pa], 45 000 to 110 000
    returns: humidity ratio [kg/kg of dry air]
    raises: OutOfRange outside those ranges
    source: ashrae-fundamentals

    >>> round(1000 * humidity_ratio(642, 100_200), 2)
    4.01
    """
    pressure = within("air pressure", pressure_pa, LOWEST_PA, HIGHEST_PA, "Pa")
    vapour = within("vapour pressure", vapour_pa, 0, pressure * NEAR_BOIL, "Pa", "It cannot exceed the air pressure.")
    return WATER_TO_AIR * vapour / (pressure - vapour)


def humidity_at_wet_bulb(dry_bulb_c: float, wet_bulb_c: float, pressure_pa: float) -> float:
    """Humidity ratio of air whose wet bulb reads so [kg/kg], by the heat balance of adiabatic saturation.

    dry_bulb_c, wet_bulb_c: air and wet bulb [degC], 0 to 200, the wet bulb no warmer and under the boil
    pressure_pa: air pressure [Pa], 45 000 to 110 000
    returns: humidity ratio [kg/kg]; negative where no air could be dry enough to show that wet bulb
    raises: OutOfRange outside those ranges
    source: ashrae-fundamentals

    >>> round(1000 * humidity_at_wet_bulb(22.9, 11.64, 100_200), 2)
    4.01
    """
    dry = within("air temperature", dry_bulb_c, LOWEST_C, HIGHEST_C, "degC")
    wet = within("wet bulb", wet_bulb_c, LOWEST_C, dry, "degC", "It cannot be warmer than the air.")
    saturated = humidity_ratio(water.saturation_pressure_pa(wet), pressure_pa)
    given_up = (LATENT_0_KJ - (WATER_KJ_K - VAPOUR_KJ_K) * wet) * saturated - AIR_KJ_K * (dry - wet)
    return given_up / (LATENT_0_KJ + VAPOUR_KJ_K * dry - WATER_KJ_K * wet)


def wet_bulb_c(dry_bulb_c: float, humidity: float, pressure_pa: float) -> float:
    """Wet bulb of air: a wet surface that air of that kind blows over settles there while it dries.

    dry_bulb_c: air [degC], 0 to 200
    humidity: humidity ratio [kg/kg of dry air], 0 to 2; air already saturated gives its dew point
    pressure_pa: air pressure [Pa], 45 000 to 110 000
    returns: wet bulb [degC], to a thousandth
    raises: OutOfRange outside those ranges, and where the wet bulb would lie below freezing
    source: ashrae-fundamentals, solved for the wet bulb

    >>> round(wet_bulb_c(22.9, 0.00401, 100_200), 1)
    11.6
    """
    humidity = within("humidity ratio", humidity, 0, LARGEST_HUMIDITY, "kg/kg")
    high = min(
        within("air temperature", dry_bulb_c, LOWEST_C, HIGHEST_C, "degC"),
        water.saturation_temp_c(within("air pressure", pressure_pa, LOWEST_PA, HIGHEST_PA, "Pa") * 0.999),
    )
    low = LOWEST_C
    least = humidity_at_wet_bulb(dry_bulb_c, low, pressure_pa)
    within("humidity ratio", humidity, least, LARGEST_HUMIDITY, "kg/kg", "Its wet bulb would lie below freezing.")
    while high - low > 0.0005:
        middle = (low + high) / 2
        if humidity_at_wet_bulb(dry_bulb_c, middle, pressure_pa) < humidity:
            low = middle
        else:
            high = middle
    return (low + high) / 2
