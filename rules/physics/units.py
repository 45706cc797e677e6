"""Units: what a foot, a psi, a cup and a pound are in SI; degrees; rounding to a step."""

from __future__ import annotations

import math

M_PER_FT = 0.3048
FT_PER_M = 1 / M_PER_FT
CM_PER_IN = 2.54
PSI_PER_PA = 1 / 6894.757293168
INHG_PER_PA = 1 / 3386.389
K_PER_F = 5 / 9
ML_PER_CUP = 236.588
ML_PER_TBSP = ML_PER_CUP / 16
ML_PER_TSP = ML_PER_CUP / 48
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
