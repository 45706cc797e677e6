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


def drying_equation(case: Case) -> Said:
    """Diffusion of vapour with its numbers."""
    return say("drying-equation", pressure=number(standard_pa(case.here), 0), ratio=fixed(drying(case.here)))


def dries(case: Case) -> Said:
    """A sentence: how fast a surface dries here."""
    return say("dries", at=at(case), percent=drying_percent(case), way="faster" if drop_k(case) > 0 else "slower")


VALUES: Values = {
    "density": here(digits(3), density),
    "density_percent": here(grouped, lambda ambient: density(ambient) * 100),
    "air_temperature": here(temp, outdoors_c),
    "colder": lambda case: temp_drop(abs(colder_k(case))),
    "elevation_km": here(digits(2), lambda ambient: ambient.elevation_m / 1000),
    "dry_air_starts": always(elevation(DRY_FROM_M)),
    "drying_percent": drying_percent,
    "drying_equation": drying_equation,
}
FIGURES: Figures = {
    "air_density": figure("air_density", "factor", density, 3),
    "air_temperature": figure("air_temperature", "degC", outdoors_c, 1),
    "drying": figure("drying", "factor", drying),
}
