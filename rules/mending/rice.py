"""Rice that stays hard: how much more water it wants at the boil of the place."""

from __future__ import annotations

from rules.amounts import liquid
from rules.baking.change import Change
from rules.book import Case
from rules.mending.causes import Cause
from rules.mending.failed_dish import Bench
from rules.mending.sized import Sized, change_of
from rules.model import Request
from rules.physics.units import ML_PER_TBSP
from rules.said import measure, sentences

say = sentences("mending/rice")
# a first trial where it is not known how high the kitchen lies [tbsp]
TRIAL, LEAST = 2.0, 1.0
COOKER = ("rice_cooker",)


def more_water_tbsp(bench: Bench, equipment: tuple[str, ...] = ()) -> float:
    """How many spoons of water more each cup of rice wants than at sea level [tbsp].

    >>> more_water_tbsp(Bench("rice", 2850.0), COOKER), more_water_tbsp(Bench("rice", 0.0, placed=False))
    (6.0, 2.0)
    """
    if not bench.placed:
        return TRIAL
    cup = Request(
        topic="liquid", dish=bench.dish or "white rice", dish_class="rice", method="simmer", equipment=equipment,
        elevation_m=bench.here_m, from_elevation_m=bench.from_m,
    )  # fmt: skip
    needed = liquid.needed(Case(cup))
    return max(float(round(needed.extra_ml / ML_PER_TBSP)), LEAST) if needed else TRIAL


def rice(cause: Cause, bench: Bench) -> Sized:
    """More water, for a pot."""
    spoons = more_water_tbsp(bench)
    return Sized(_change(cause, spoons), say("water", more=measure(spoons, "tbsp")))


def rice_cooker(cause: Cause, bench: Bench) -> Sized:
    """More water, a soak and a second cycle, for a cooker that switches off by itself."""
    spoons = more_water_tbsp(bench, COOKER)
    return Sized(_change(cause, spoons), say("cooker", more=measure(spoons, "tbsp")))


def _change(cause: Cause, spoons: float) -> Change:
    return change_of(cause, to_value=spoons, to_unit="tbsp", item="water")
