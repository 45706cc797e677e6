"""Syrup, candy and jam: stages that are counted from the boil."""

from __future__ import annotations

from rules.book import Case, celsius
from rules.explanations.named import Figures, Quantity, Values, always, at_sea, digits, figure, here
from rules.model import Figure
from rules.physics import water
from rules.physics.ambient import Ambient
from rules.physics.units import to_c
from rules.said import fine_drop, temp, temp_drop

SOFT_BALL_C = to_c(235)
# what books call soft ball
SOFT_BALLS_C = (to_c(230), to_c(246))
GEL_ABOVE_BOIL_K = 8 / 1.8


def of_book_c(case: Case) -> float:
    """The soft ball of the cook's own book, where it was said, else the usual one [degC]."""
    said = case.request.temperature_c
    return said if said is not None and SOFT_BALLS_C[0] <= said <= SOFT_BALLS_C[1] else SOFT_BALL_C


def soft_ball_c(case: Case) -> float:
    """Soft ball here [degC]."""
    return of_book_c(case) - (case.sea.boiling_c - case.here.boiling_c)


def sugar_percent(ambient: Ambient, syrup_c: float) -> float:
    """How much sugar is in a syrup that boils at a temperature [%]."""
    return water.sucrose_percent(syrup_c - ambient.boiling_c)


def sugar_figure(case: Case) -> Figure:
    """How much sugar is in the syrup at the soft ball of the book, here and at sea level."""
    of_book = of_book_c(case)
    here, sea = (round(sugar_percent(ambient, of_book), 1) for ambient in (case.here, case.sea))
    return Figure("sugar_in_syrup", "", here, "percent", sea_level=sea)


def gel_c(ambient: Ambient) -> float:
    """Where jam sets [degC]."""
    return ambient.boiling_c + GEL_ABOVE_BOIL_K


def syrup_c(percent: float) -> Quantity:
    """Where a syrup of so much sugar [%] boils [degC]."""
    return lambda ambient: ambient.boiling_c + water.sucrose_elevation_k(percent)


VALUES: Values = {
    "soft_ball": lambda case: temp(soft_ball_c(case)),
    "soft_ball_in_book": lambda case: temp(of_book_c(case)),
    "sugar_as_cooked": lambda case: digits(0)(sugar_percent(case.here, of_book_c(case))),
    "sugar_as_meant": lambda case: digits(0)(sugar_percent(case.sea, of_book_c(case))),
    "gel_apart": always(temp_drop(GEL_ABOVE_BOIL_K)),
    "gel_point": here(temp, gel_c),
    "gel_point_at_sea": at_sea(temp, gel_c),
    "syrup_of_20_apart": lambda case: fine_drop(water.sucrose_elevation_k(20.0)),
    "syrup_of_80_apart": lambda case: temp_drop(water.sucrose_elevation_k(80.0)),
    "syrup_of_80_boils": here(temp, syrup_c(80.0)),
}
FIGURES: Figures = {
    "soft_ball": lambda case: celsius("soft_ball", "", soft_ball_c(case), of_book_c(case)),
    "sugar_in_syrup": sugar_figure,
    "gel_point": figure("gel_point", "degC", gel_c),
    "syrup_boils": figure("syrup_boils", "degC", syrup_c(80.0), 1),
}
