"""Units: what a foot, a psi, a cup and a pound are in SI; degrees; rounding to a step."""

from __future__ import annotations

import math

FT_PER_M = 1 / 0.3048
CM_PER_IN = 2.54
PSI_PER_PA = 1 / 6894.757293168
INHG_PER_PA = 1 / 3386.389
# The US teaspoon: a 768th of a gallon of 231 cubic inches
ML_PER_TSP = 4.92892159375
ML_PER_TBSP = 3 * ML_PER_TSP
ML_PER_CUP = 48 * ML_PER_TSP
G_PER_LB = 453.59237


def to_f(temp_c: float) -> float:
    """Fahrenheit from Celsius.

    >>> to_f(100)
    212.0
    """
    return temp_c * 9 / 5 + 32


def to_c(temp_f: float) -> float:
    """Celsius from Fahrenheit.

    >>> to_c(212)
    100.0
    """
    return (temp_f - 32) * 5 / 9


def round_to(value: float, step: float) -> float:
    """Nearest multiple of step, halves away from zero, free of binary dust.

    >>> round_to(92.87, 0.5), round_to(2.5, 1), round_to(-2.5, 1)
    (93.0, 3.0, -3.0)
    """
    return round(math.copysign(math.floor(abs(value) / step + 0.5) * step, value), 6) + 0.0


def time_step_min(time_min: float) -> float:
    """The precision that a cook can use for a time of this length [min]."""
    if time_min < 1:
        return 1 / 12
    if time_min < 2:
        return 0.25
    if time_min < 10:
        return 0.5
    if time_min < 40:
        return 1
    return 5


def round_time_min(time_min: float) -> float:
    """A time at the precision a cook can use: 5 or 15 s, half a minute, one or five minutes, growing with its length.

    >>> round_time_min(7.3), round_time_min(33.4), round_time_min(252)
    (7.5, 33.0, 250.0)
    """
    return round_to(time_min, time_step_min(time_min))
