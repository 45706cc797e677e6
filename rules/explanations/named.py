"""How a named value and a named figure are made of a quantity: something physical that the air of a place decides."""

from __future__ import annotations

from collections.abc import Callable

from rules.book import Case
from rules.model import Figure
from rules.physics.ambient import Ambient
from rules.said import Measure, Value, fixed, number

Quantity = Callable[[Ambient], float]
ValueOf = Callable[[Case], Value]
FigureOf = Callable[[Case], Figure | None]
Values = dict[str, ValueOf]
Figures = dict[str, FigureOf]
Measured = Callable[[float], Measure]


def here(measured: Measured, quantity: Quantity) -> ValueOf:
    """A quantity in the asker's air, as a measure of rules.said."""
    return lambda case: measured(quantity(case.here))


def at_sea(measured: Measured, quantity: Quantity) -> ValueOf:
    """A quantity in standard air at sea level."""
    return lambda case: measured(quantity(case.sea))


def always(value: Value) -> ValueOf:
    """What is the same in every kitchen."""
    return lambda case: value


def digits(count: int) -> Measured:
    """A number with just so many digits after the point."""
    return lambda value: fixed(value, count)


def tenths(value: float) -> Measure:
    """A number to a tenth, without a useless zero."""
    return number(value, 1)


def grouped(value: float) -> Measure:
    """A whole number, thousands set apart."""
    return number(value, 0)


def figure(
    figure_id: str, unit: str, quantity: Quantity, digits: int | None = 2, *, beside_sea_level: bool = True
) -> FigureOf:
    """A figure without its label. digits: None for a whole number."""
    return lambda case: Figure(
        figure_id,
        "",
        round(quantity(case.here), digits),
        unit,
        sea_level=round(quantity(case.sea), digits) if beside_sea_level else None,
    )
