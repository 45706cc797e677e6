"""Where water boils, how hard the air presses on it, and on which side of sea level that is."""

from __future__ import annotations

from rules.book import Case, celsius
from rules.explanations.named import Figures, Values, always, at_sea, digits, figure, grouped, here
from rules.model import Figure
from rules.physics import air, water
from rules.physics.ambient import Ambient
from rules.said import Said, elevation, fixed, number, pressure, sentences, temp, temp_drop, yes

NOTICEABLE_K = 0.3
STEP_M = 304.8
# a climb short enough to call the fall of the boil even on it, and the radius of the earth, from memory [m]
NEAR_M, EARTH_M = 50.0, 6_371_000.0
BEANS_SHOW_IT_M, CAKES_SHOW_IT_M = 609.6, 914.4
LOWEST = air.LOWEST_M
# the rule of thumb, and how near it has to be for a cook
RULE_STEP_M, RULE_GOOD_K = 300.0, 1.0
# the air on the highest mountain as it was measured there [Pa], and the warmth of a room [degC]
HIGHEST_LAND_PA, ROOM_C = 33_700.0, 20.0
# from where wheat and rice swell, and under which pectin hardly loosens
STARCH_SWELLS_C, PECTIN_SLOW_C = 65.0, 85.0

say = sentences("why/shared")


def boil_c(ambient: Ambient) -> float:
    """Where water boils [degC]."""
    return ambient.boiling_c


def pressure_pa(ambient: Ambient) -> float:
    """How hard the air presses [Pa]."""
    return ambient.pressure_pa


def pressure_kpa(ambient: Ambient) -> float:
    """How hard the air presses [kPa]."""
    return ambient.pressure_pa / 1000


def standard_pa(ambient: Ambient) -> float:
    """How hard standard air presses at the place [Pa], whatever a barometer says."""
    return air.pressure_pa(ambient.elevation_m)


def standard_share(ambient: Ambient) -> float:
    """The same as a share of sea level [-]."""
    return standard_pa(ambient) / air.SEA_LEVEL_PA


def drop_k(case: Case) -> float:
    """How far water boils under sea level here [K]; negative below sea level."""
    return case.sea.boiling_c - case.here.boiling_c


def side(case: Case) -> str:
    """Whether the kitchen lies `above`, `level` with or `below` the sea, by its boil."""
    if abs(drop_k(case)) < NOTICEABLE_K:
        return "level"
    return "above" if drop_k(case) > 0 else "below"


def at(case: Case) -> Said:
    """Where the kitchen is: "at 7,000 ft (2,130 m)" or "here at sea level"."""
    return say("at", place=case.place, sea=yes(abs(case.here.elevation_m) < 1))


def boils(case: Case) -> Said:
    """A sentence: where water boils here, and how far that is from sea level."""
    return say("boils", at=at(case), boil=temp(case.here.boiling_c), drop=temp_drop(abs(drop_k(case))), side=side(case))


def boiling_equation(case: Case) -> Said:
    """Air pressure and boiling point with their numbers."""
    return say(
        "boiling-equation",
        by="elevation" if case.request.pressure_pa is None else "barometer",
        height=number(case.here.elevation_m, 0),
        sign="minus" if case.here.elevation_m < 0 else "plus",
        pressure=number(case.here.pressure_pa, 0),
        boil=fixed(case.here.boiling_c),
    )


def books(case: Case) -> str:
    """What a cookbook asks for at this elevation: to `adjust`, to `watch` the slow things, or to `keep` to it."""
    if case.here.elevation_m >= CAKES_SHOW_IT_M:
        return "adjust"
    return "watch" if case.here.elevation_m >= BEANS_SHOW_IT_M else "keep"


def step_k(case: Case) -> float:
    """What a thousand feet of climb from sea level take off the boil [K]."""
    return water.boiling_point_c(0) - water.boiling_point_c(STEP_M)


def climb_per_k(ambient: Ambient) -> float:
    """How far one climbs here for one kelvin less at the boil [m]."""
    low_m = min(max(ambient.elevation_m, air.LOWEST_M + NEAR_M), air.HIGHEST_M - NEAR_M) - NEAR_M
    return 2 * NEAR_M / (water.boiling_point_c(low_m) - water.boiling_point_c(low_m + 2 * NEAR_M))


def gravity_less_percent(ambient: Ambient) -> float:
    """How much weaker gravity is than at the sea [%]: it goes by the square of the way to the earth's middle."""
    return (1 - (EARTH_M / (EARTH_M + ambient.elevation_m)) ** 2) * 100


def lowest_land(case: Case) -> Figure:
    """Where water boils on the lowest dry land."""
    return celsius("lowest_land", "", water.boiling_point_c(LOWEST), case.sea.boiling_c)


def by_rule_c(case: Case) -> float:
    """Where water boils by the rule of thumb, a degree for each 300 m [degC]."""
    return water.boiling_point_c(0) - case.here.elevation_m / RULE_STEP_M


def rule_off(case: Case) -> str:
    """Whether the rule of thumb is as good as a thermometer here, or `off`."""
    return "good" if abs(by_rule_c(case) - case.here.boiling_c) < RULE_GOOD_K else "off"


VALUES: Values = {
    "boil_by_rule": lambda case: temp(by_rule_c(case)),
    "elevation_m": lambda case: number(case.here.elevation_m, 0),
    "rule_fall": lambda case: number(case.here.elevation_m / RULE_STEP_M, 1),
    "rule_left": lambda case: number(by_rule_c(case), 1),
    "rule_step": always(elevation(RULE_STEP_M)),
    "rule_off": rule_off,
    "on_the_top": always(temp(water.saturation_temp_c(HIGHEST_LAND_PA))),
    "room_boils_at": always(pressure(water.saturation_pressure_pa(ROOM_C))),
    "starch_swells": always(temp(STARCH_SWELLS_C)),
    "pectin_slow": always(temp(PECTIN_SLOW_C)),
    "side": side,
    "at": at,
    "place": lambda case: case.place,
    "elevation": lambda case: elevation(case.here.elevation_m),
    "boil": here(temp, boil_c),
    "boil_at_sea": at_sea(temp, boil_c),
    "drop": lambda case: temp_drop(abs(drop_k(case))),
    "boils": boils,
    "boiling_equation": boiling_equation,
    "pressure": here(pressure, pressure_pa),
    "pressure_at_sea": at_sea(pressure, pressure_pa),
    "standard_pressure": here(pressure, standard_pa),
    "standard_share": here(digits(4), standard_share),
    "thousand_feet": always(elevation(STEP_M)),
    "two_thousand_feet": always(elevation(2 * STEP_M)),
    "thousand_feet_take_off": lambda case: temp_drop(step_k(case)),
    "climb_per_k": here(grouped, climb_per_k),
    "climb_per_k_at_sea": at_sea(grouped, climb_per_k),
    "gravity_less": here(digits(2), gravity_less_percent),
    "beans_show_it": always(elevation(BEANS_SHOW_IT_M)),
    "cakes_show_it": always(elevation(CAKES_SHOW_IT_M)),
    "canning_starts": always(elevation(STEP_M)),
    "books": books,
    "lowest_land": always(elevation(LOWEST)),
    "lowest_boil": lambda case: temp(water.boiling_point_c(LOWEST)),
    "lowest_pressure": lambda case: pressure(air.pressure_pa(LOWEST)),
}
FIGURES: Figures = {
    "boiling_point": figure("boiling_point", "degC", boil_c),
    "lowest_land": lowest_land,
    "air_pressure": figure("air_pressure", "kPa", pressure_kpa),
    "station_pressure": figure("station_pressure", "kPa", pressure_kpa),
}
