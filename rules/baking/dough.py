"""A baker's formula weighed out for so much dough."""

from __future__ import annotations

import math
from collections.abc import Sequence

# below this a scale of a tenth of a gram is worth its while [g]
FINE_BELOW_G, FINE_STEP_G, STEP_G = 2000.0, 0.1, 1.0


def weighed(parts: Sequence[float], dough_g: float) -> tuple[float, ...]:
    """The weights [g] of the parts of a formula that make up so much dough [g], to the last gram.

    parts: in any one unit, percent of the flour or grams
    returns: weights that sum to the dough; what rounding leaves goes where it is smallest against the part
    raises: ValueError where there is nothing to weigh
    source: common-practice (total dough weight over total percentage)

    >>> weighed((100, 70, 20, 2), 9600)
    (5000.0, 3500.0, 1000.0, 100.0)
    >>> sum(weighed((100, 71, 13, 2.2), 10000))
    10000.0
    """
    total = sum(parts)
    if total <= 0 or dough_g <= 0:
        raise ValueError("a dough needs parts and a weight above zero")
    step = FINE_STEP_G if dough_g < FINE_BELOW_G else STEP_G
    exact = [part / total * dough_g / step for part in parts]
    low = [math.floor(weight + 1e-9) for weight in exact]
    left = round(dough_g / step) - sum(low)
    for at in sorted(range(len(parts)), key=lambda i: low[i] - exact[i])[:left]:
        low[at] += 1
    return tuple(round(weight * step, 1) for weight in low)
