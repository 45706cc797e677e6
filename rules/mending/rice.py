"""Rice that stays hard: how much more water it wants at the boil of the place."""

from __future__ import annotations

from rules.baking.change import Change
from rules.mending.causes import Cause
from rules.mending.failed_dish import Bench
from rules.mending.sized import Sized, change_of
from rules.physics.units import FT_PER_M
from rules.said import measure, sentences

say = sentences("mending/rice")
# a tablespoon more to each cup for every 4,000 ft, as cooks do; a first trial is two
FT_A_SPOON, FEWEST, MOST, TRIAL = 4000.0, 1.0, 4.0, 2.0


def more_water_tbsp(bench: Bench) -> float:
    """How many spoons of water more each cup of rice wants [tbsp].

    >>> more_water_tbsp(Bench("rice", 2850.0)), more_water_tbsp(Bench("rice", 0.0, placed=False))
    (2.0, 2.0)
    """
    if not bench.placed:
        return TRIAL
    return min(max(float(round(bench.here_m * FT_PER_M / FT_A_SPOON)), FEWEST), MOST)


def rice(cause: Cause, bench: Bench) -> Sized:
    """More water, for a pot."""
    return Sized(_change(cause, bench), say("water", spoons=measure(more_water_tbsp(bench), "tbsp")))


def rice_cooker(cause: Cause, bench: Bench) -> Sized:
    """More water, a soak and a second cycle, for a cooker that switches off by itself."""
    return Sized(_change(cause, bench), say("cooker", spoons=measure(more_water_tbsp(bench), "tbsp")))


def _change(cause: Cause, bench: Bench) -> Change:
    spoons = more_water_tbsp(bench)
    return change_of(cause, to_value=spoons, to_low=FEWEST, to_high=MOST, to_unit="tbsp", item="water")
