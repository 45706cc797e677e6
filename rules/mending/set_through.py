"""What sets when its middle is hot enough, in steam or a water bath: how much longer that takes here."""

from __future__ import annotations

from math import log

from rules.mending.causes import Cause
from rules.mending.failed_dish import Bench
from rules.mending.oven_and_rise import timed
from rules.mending.sized import Sized, trial

# where the middle has set [degC]: custard by its egg, the crumb of a steamed dough by its starch
SETS_C = {"custard": 79.0, "cheesecake": 68.0}
CRUMB_C, COLD_C = 82.0, 20.0
MOST = 2.5


def set_through(cause: Cause, bench: Bench) -> Sized:
    """More time: until heat from water or steam of this place has set the middle."""
    if not bench.placed:
        return timed(cause, bench, trial(cause).value)
    return timed(cause, bench, max(longer(bench), 1.1), sources=("computed", "iapws-r7-97"))


def longer(bench: Bench) -> float:
    """How many times as long the middle takes to set as at sea level [-], by how heat soaks in; at most 2.5.

    >>> round(longer(Bench("custard", 1850.0)), 2)
    1.2
    """
    sets_c = SETS_C.get(bench.dish_class, CRUMB_C)
    if bench.boil_c - sets_c < 1:
        return MOST
    here, there = (log((hot_c - COLD_C) / (hot_c - sets_c)) for hot_c in (bench.boil_c, bench.sea_boil_c))
    return min(here / there, MOST)
