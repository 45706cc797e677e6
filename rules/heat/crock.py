"""How long a slow cooker takes: it warms as slowly everywhere, and what is left of its time goes by the boil."""

from __future__ import annotations

HEAT_UP_SHARE, HEAT_UP_MOST_MIN = 0.5, 180.0


def crock_min(time_min: float, factor: float) -> float:
    """Time in the crock here [min]: the heat-up as at the baseline, the rest slowed as in any pot under the boil.

    Half of the baseline time, three hours at most, is taken to be heat-up (common practice).

    time_min: at the baseline [min]
    factor: how many times longer the food takes at the boil here

    >>> crock_min(240, 1.5), crock_min(480, 1.5)
    (300.0, 630.0)
    """
    warm = min(time_min * HEAT_UP_SHARE, HEAT_UP_MOST_MIN)
    return warm + (time_min - warm) * factor
