"""Syrup, candy and jam: stages that are counted from the boil."""

from __future__ import annotations

from rules.book import Case, celsius
from rules.explanations.named import Figures, Quantity, Values, always, at_sea, digits, figure, here
from rules.physics import water
from rules.physics.ambient import Ambient
from rules.physics.units import to_c
from rules.said import fine_drop, temp, temp_drop

SOFT_BALL_C = to_c(235)
GEL_ABOVE_BOIL_K = 8 / 1.8


def soft_ball_c(case: Case) -> float:
    """Soft ball here [degC]."""
    return SOFT_BALL_C - (case.sea.boiling_c - case.here.boiling_c)


def sugar_in_syrup(ambient: Ambient) -> float:
    """How much sugar is in a syrup at the soft ball of the book [%]."""
    return water.sucrose_percent(SOFT_BALL_C - ambient.boiling_c)


def gel_c(ambient: Ambient) -> float:
    """Where jam sets [degC]."""
    return ambient.boiling_c + GEL_ABOVE_BOIL_K


def syrup_c(percent: float) -> Quantity:
    """Where a syrup of so much sugar [%] boils [degC]."""
    return lambda ambient: ambient.boiling_c + water.sucrose_elevation_k(percent)


VALUES: Values = {
    "soft_ball": lambda case: temp(soft_ball_c(case)),
    "soft_ball_in_book": always(temp(SOFT_BALL_C)),
    "sugar_as_cooked": here(digits(0), sugar_in_syrup),
    "sugar_as_meant": at_sea(digits(0), sugar_in_syrup),
    "gel_apart": always(temp_drop(GEL_ABOVE_BOIL_K)),
    "gel_point": here(temp, gel_c),
    "gel_point_at_sea": at_sea(temp, gel_c),
    "syrup_of_20_apart": lambda case: fine_drop(water.sucrose_elevation_k(20.0)),
    "syrup_of_80_apart": lambda case: temp_drop(water.sucrose_elevation_k(80.0)),
    "syrup_of_80_boils": here(temp, syrup_c(80.0)),
}
FIGURES: Figures = {
    "soft_ball": lambda case: celsius("soft_ball", "", soft_ball_c(case), SOFT_BALL_C),
    "sugar_in_syrup": figure("sugar_in_syrup", "percent", sugar_in_syrup, 1),
    "gel_point": figure("gel_point", "degC", gel_c),
    "syrup_boils": figure("syrup_boils", "degC", syrup_c(80.0), 1),
}
