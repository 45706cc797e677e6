"""Times in a step: what is baked, what is simmered, what rises, and what stays."""

from __future__ import annotations

import re

from rules.baking import bands, components, yeast
from rules.baking.batch import Batch, percent
from rules.baking.time_shift import Shift
from rules.recipe import Step, TimeMark
from rules.recipes import wet_dish

RULE = "baking.time"
# A cake that hangs until cold, or stands in an oven with its door ajar, is not baking any more.
WAITS = re.compile(r"\b(?:cold|cool|hang|ajar|leave|turn(?:ed)? off|stand|rest)\b", re.I)
CLAUSE_END = re.compile(r"[.;!]\s")


def shift(batch: Batch, step: Step, mark: TimeMark) -> Shift | None:
    """How the time of a role that may move does; None for one that stays, or that nothing tells how to take."""
    if mark.what == "rise":
        return yeast.proof(batch, step, mark)
    pressed = mark.what == "pressure"
    if pressed or wet_dish.governs(batch, step, mark):
        paced = wet_dish.paced_by(batch, step, mark)
        if paced is None:
            return None
        return wet_dish.under_pressure(batch, step, paced) if pressed else wet_dish.simmering(batch, paced)
    if boiled := wet_dish.boiled_down(batch, mark):
        return boiled
    baked = mark.what == "bake" or (mark.what == "steam" and wet_dish.in_the_oven(step))
    return oven_time(batch) if baked and not WAITS.search(_clause(step.text, mark)) else None


def _clause(text: str, mark: TimeMark) -> str:
    """The words before a time that belong to it: back to the last full stop or semicolon."""
    return CLAUSE_END.split(text[: mark.start])[-1]


def oven_time(batch: Batch) -> Shift | None:
    """The baking time, shorter with the hotter oven."""
    part = components.share(batch.style, "time")
    if part is None or not batch.expects("time"):
        return None
    sources = components.sources(batch.style, "time")
    if not part.value:
        return Shift(bands.AS_IS, "time", RULE, f"{batch.stays(part)}.", sources, stays=True)
    ratio = batch.ratio("time")
    way = "shorter" if ratio.value < 1 else "longer"
    oven = "hotter" if batch.up else "cooler"
    because = (
        f"With the {oven} oven the time comes out about {percent(ratio.value)} {way}. "
        "Look in at the early end, and test before you take it out."
    )
    return Shift(ratio, "time", RULE, because, sources)
