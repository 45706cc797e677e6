"""Heat, and the gas that gives it: to bring water to the boil, to melt snow, and to keep a pot at it."""

from __future__ import annotations

from dataclasses import dataclass, replace

from rules.book import Case
from rules.heat import pressure, wet
from rules.model import Request
from rules.physics import kinetics
from rules.physics.ambient import Ambient

# water as it is drawn in the hills, and snow as it lies [degC]
COLD_C, SNOW_C = 5.0, -5.0
WATER_KJ_KG_K, ICE_KJ_KG_K, MELTING_KJ_KG = 4.19, 2.1, 334.0
# heat of a kilogram of camping gas, and the share of it that goes into the pot: in the wind, usual, sheltered
GAS_KJ_PER_G = 46.0
SHARES = (0.35, 0.45, 0.55)
# so long on a small flame under a lid takes as much gas as it took to the boil [min]; a cooker takes half
HOLD_MIN, COOKER_HOLDS = 30.0, 0.5
# a meal that nobody names: pasta, rice or potatoes for so long at sea level, in a pot and in a cooker [min]
MEAL_MIN, MEAL_IN_COOKER_MIN = 20.0, 7.0
# classes that are done with the boil
ONLY_BOILED = ("water", "tea", "coffee", "instant_dried")


@dataclass(frozen=True, slots=True)
class Meal:
    """Fuel of a meal, in what it takes to bring its water to the boil at sea level: open, in a cooker, boiled alone."""

    open_pot: float
    cooker: float
    boiled: float


def boil_kj_l(air: Ambient) -> float:
    """Heat that brings a litre of cold water to the boil [kJ].

    source: computed

    >>> from rules.physics.ambient import ambient
    >>> round(boil_kj_l(ambient(0))), round(boil_kj_l(ambient(4000)))
    (398, 342)
    """
    return WATER_KJ_KG_K * (air.boiling_c - COLD_C)


def snow_kj_l(air: Ambient) -> float:
    """Heat that makes a litre of boiling water of snow [kJ].

    source: computed

    >>> from rules.physics.ambient import ambient
    >>> round(snow_kj_l(ambient(4000)))
    707
    """
    return MELTING_KJ_KG - ICE_KJ_KG_K * SNOW_C + WATER_KJ_KG_K * air.boiling_c


def gas_g(heat_kj: float) -> tuple[float, float, float]:
    """Gas for some heat [g]: sheltered, usual, in the wind.

    source: common-practice

    >>> tuple(round(grams) for grams in gas_g(343))
    (14, 17, 21)
    """
    low, mid, high = (heat_kj / GAS_KJ_PER_G / share for share in reversed(SHARES))
    return low, mid, high


def meal(case: Case, air: Ambient) -> Meal:
    """The fuel of what is cooked, in this air.

    source: common-practice
    """
    request = replace(case.request, elevation_m=air.elevation_m, pressure_pa=None, from_elevation_m=None)
    in_pot, under = _minutes(request, "simmer", MEAL_MIN), _minutes(request, "pressure_cook", MEAL_IN_COOKER_MIN)
    boiled = (air.boiling_c - COLD_C) / (100 - COLD_C)
    top_c = pressure.inside_c(air, pressure.gauge_pa(case))
    cooker = (top_c - COLD_C) / (100 - COLD_C) + COOKER_HOLDS * under / HOLD_MIN
    return Meal(boiled + in_pot / HOLD_MIN, cooker, boiled)


def _minutes(request: Request, method: str, usual_min: float) -> float:
    """How long it cooks: by its own time where a table has one, else that of a usual meal [min]."""
    case = Case(replace(request, method=method, time_min=None, time_high_min=None))
    at = pressure.heats(case, pressure.gauge_pa(case)) if method == "pressure_cook" else OPEN.heats(case)
    time = wet.wet_time(case, at) if case.dish_class != kinetics.GENERAL else None
    if time:
        return time.likely_min
    return usual_min * kinetics.rate_factor(at.here_c, at.table_c, kinetics.softening(case.dish_class).z_k)


OPEN = wet.Pot("simmer", "liquid", below_boil_k=2.0)
