"""Heat, and the gas that gives it: to bring water to the boil, to melt snow, and to keep a pot at it."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

from rules.book import Case
from rules.heat import pressure, wet
from rules.model import Request
from rules.physics import kinetics
from rules.physics.ambient import Ambient
from rules.physics.evaporation import BELOW_BOIL_K, DEPTH_TO_WIDTH, evaporation_rate_ml_min, surface_m2
from rules.physics.water import latent_heat_kj_per_kg

# water as it is drawn in the hills, and snow as it lies [degC]
COLD_C, SNOW_C = 5.0, -5.0
WATER_KJ_KG_K, ICE_KJ_KG_K, MELTING_KJ_KG = 4.19, 2.1, 334.0
# heat of a kilogram of camping gas, and the share of it that goes into the pot: in the wind, usual, sheltered
GAS_KJ_PER_G = 46.0
SHARES = (0.35, 0.45, 0.55)
# so long on a small flame under a lid takes as much gas as it took to the boil [min]; a cooker takes half
HOLD_MIN, COOKER_HOLDS = 30.0, 0.5
# the walls of a pot in the still air of a warm kitchen, and the largest pot that is reckoned with [l]
STILL_AIR_W_M2_K, ROOM_C, LARGEST_POT_L = 10.0, 22.0, 40.0
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


def held_kw(litres: float, air: Ambient, *, covered: bool) -> float:
    """Heat that keeps a pot of a kitchen at a bare simmer: what its walls and its steam lose [kW].

    litres: what stands in all the pots; more than LARGEST_POT_L stands in several
    source: computed, ashrae-applications

    >>> from rules.physics.ambient import ambient
    >>> round(held_kw(20, ambient(0), covered=True), 2), round(held_kw(20, ambient(0), covered=False), 2)
    (0.32, 1.01)
    """
    pots = max(1, math.ceil(litres / LARGEST_POT_L))
    top_m2 = surface_m2(max(litres, 1.0) / pots * 1000)
    across_m = math.sqrt(top_m2 / (math.pi / 4))
    walls_m2 = math.pi * across_m * across_m * DEPTH_TO_WIDTH
    lost_w = STILL_AIR_W_M2_K * (top_m2 + walls_m2) * (air.boiling_c - BELOW_BOIL_K - ROOM_C)
    steam_g_s = evaporation_rate_ml_min(top_m2, covered=covered, elevation_m=air.elevation_m) / 60
    return pots * (lost_w / 1000 + steam_g_s * latent_heat_kj_per_kg(air.boiling_c) / 1000)


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
