"""By how much: the change that mends a cause, sized for the dish and the elevation."""

from __future__ import annotations

from collections.abc import Callable

from rules.mending.amounts import amount
from rules.mending.causes import Cause
from rules.mending.failed_dish import Bench
from rules.mending.hot_liquids import boil, brew, cooker, fat, gel, stage
from rules.mending.oven_and_rise import oven, proof, time
from rules.mending.rice import rice, rice_cooker
from rules.mending.set_through import set_through
from rules.mending.sized import Sized, change_of

BY: dict[str, Callable[[Cause, Bench], Sized]] = {
    "boil": boil, "cooker": cooker, "stage": stage, "gel": gel, "fat": fat, "brew": brew,
    "rice": rice, "rice_cooker": rice_cooker, "set": set_through,
}  # fmt: skip
BY_WHAT: dict[str, Callable[[Cause, Bench, bool], Sized]] = {"oven": oven, "time": time, "proof": proof}


def sized(cause: Cause, bench: Bench, *, further: bool = False) -> Sized:
    """The change of a cause for the dish on the bench.

    further: it helped before; half a step more from where it stands now
    source: the tables of the component where they change it in this direction, else a first trial of common practice
    """
    if not cause.by:
        return Sized(change_of(cause), bench.told(cause.say))
    if cause.by in BY:
        return BY[cause.by](cause, bench)
    return BY_WHAT.get(cause.what, amount)(cause, bench, further)
