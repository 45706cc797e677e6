"""Times in a step: what is baked, what is simmered, what rises, and what stays."""

from __future__ import annotations

from rules.baking import bands, components, wet_dish, yeast
from rules.baking.batch import Batch, percent
from rules.baking.shift import Shift
from rules.recipe import Step, TimeMark

RULE = "baking.time"
OVEN_TIMES = ("bake", "roast")


def shift(batch: Batch, step: Step, mark: TimeMark) -> Shift | None:
    """How one time moves; None for times that do not: chilling, resting, mixing, soaking, canning."""
    if mark.what == "rise":
        return yeast.proof(batch, step, mark)
    if mark.what == "pressure":
        return wet_dish.under_pressure(batch, step)
    if wet_dish.governs(batch, mark):
        return wet_dish.simmering(batch)
    return oven_time(batch) if mark.what in OVEN_TIMES else None


def oven_time(batch: Batch) -> Shift | None:
    """The baking time, shorter with the hotter oven."""
    part = components.share(batch.style, "time")
    if part is None or not batch.expects("time"):
        return None
    sources = components.sources(batch.style, "time")
    if not part.value:
        return Shift(bands.AS_IS, "time", RULE, f"{part.note}.", sources, stays=True)
    ratio = batch.ratio("time")
    way = "shorter" if ratio.value < 1 else "longer"
    oven = "hotter" if batch.up else "cooler"
    because = (
        f"With the {oven} oven the time comes out about {percent(ratio.value)} {way}. "
        "Look in at the early end, and test before you take it out."
    )
    return Shift(ratio, "time", RULE, because, sources)
