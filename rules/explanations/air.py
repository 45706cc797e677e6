"""Thin air: what it weighs, how cold it is, and how fast things dry in it."""

from __future__ import annotations

from rules.book import Case
from rules.explanations.boil import at, drop_k, standard_pa
from rules.explanations.named import Figures, Values, always, digits, figure, grouped, here
from rules.physics import air
from rules.physics.ambient import Ambient
from rules.physics.evaporation import drying_ratio
from rules.physics.units import round_to
from rules.said import Measure, Said, elevation, fixed, number, sentences, temp, temp_drop

DRY_FROM_M = 762.0

say = sentences("why/shared")


def density(ambient: Ambient) -> float:
    """What a given volume of standard air weighs, and how much oxygen it holds, as a share of sea level [-]."""
    return air.density_ratio(ambient.elevation_m)


def oven_air(ambient: Ambient) -> float:
    """What the air of an oven weighs, as a share of sea level at the same setting [-]: as its pressure."""
    return air.pressure_pa(ambient.elevation_m) / air.pressure_pa(0.0)


def outdoors_c(ambient: Ambient) -> float:
    """How warm standard air is [degC]."""
    return air.temperature_c(ambient.elevation_m)


def colder_k(case: Case) -> float:
    """How much colder standard air is than at sea level [K]."""
    return outdoors_c(case.sea) - outdoors_c(case.here)


def drying(ambient: Ambient) -> float:
    """How fast a surface dries in equally damp air, as a multiple of sea level [-]."""
    return drying_ratio(ambient.elevation_m)


def drying_percent(case: Case) -> Measure:
    """How much faster, or below sea level more slowly, a surface dries [%]."""
    return number(round_to(abs(drying(case.here) - 1) * 100, 1))


def drying_moving_percent(case: Case) -> Measure:
    """The same where the air moves: in a stream the film of vapour thins as well, so it goes with the root [%].

    source: computed
    """
    return number(round_to(abs(drying(case.here) ** 0.5 - 1) * 100, 1))


def drying_equation(case: Case) -> Said:
    """Diffusion of vapour with its numbers."""
    return say("drying-equation", pressure=number(standard_pa(case.here), 0), ratio=fixed(drying(case.here)))


def dries(case: Case) -> Said:
    """A sentence: how fast a surface dries here."""
    return say("dries", at=at(case), percent=drying_percent(case), way="faster" if drop_k(case) > 0 else "slower")


VALUES: Values = {
    "density": here(digits(3), density),
    "density_percent": here(grouped, lambda ambient: density(ambient) * 100),
    "oven_air": here(digits(3), oven_air),
    "oven_air_percent": here(grouped, lambda ambient: oven_air(ambient) * 100),
    "air_temperature": here(temp, outdoors_c),
    "colder": lambda case: temp_drop(abs(colder_k(case))),
    "elevation_km": here(digits(2), lambda ambient: ambient.elevation_m / 1000),
    "dry_air_starts": always(elevation(DRY_FROM_M)),
    "drying_percent": drying_percent,
    "drying_moving_percent": drying_moving_percent,
    "drying_equation": drying_equation,
}
FIGURES: Figures = {
    "air_density": figure("air_density", "factor", density, 3),
    "oven_air_density": figure("oven_air_density", "factor", oven_air, 3),
    "air_temperature": figure("air_temperature", "degC", outdoors_c, 1),
    "drying": figure("drying", "factor", drying),
}
