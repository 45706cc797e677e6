"""The time in the oven, shorter with the hotter oven."""

from __future__ import annotations

import re

from rules.baking import bands, components
from rules.baking.batch import percent_apart
from rules.baking.change import Shift
from rules.baking.mark import TimeAt
from rules.book import Part, rule
from rules.recipe import TimeMark
from rules.recipes import pot
from rules.said import sentences

# A cake that hangs until cold, or stands in an oven with its door ajar, is not baking any more.
WAITS = re.compile(r"\b(?:cold|cool|hang|ajar|leave|turn(?:ed)? off|stand|rest)\b", re.I)
CLAUSE_END = re.compile(r"[.;!]\s")
say = sentences("recipes/bake_times")


@rule("baking.time", "egg-producers-cakes", "common-practice")
def oven_time(at: TimeAt) -> Part | None:
    """The baking time, shorter with the hotter oven."""
    batch, part = at.batch, components.share(at.batch.style, "time")
    if part is None or not batch.expects("time") or not _bakes(at):
        return None
    sources = components.sources(batch.style, "time")
    if not part.value:
        return Part(shift=Shift(bands.AS_IS, "time", stays=True), because=batch.stays(part), sources=sources)
    ratio = batch.ratio("time")
    change = "shorter" if ratio.value < 1 else "longer"
    because = say("with-the-oven", way=batch.way, percent=percent_apart(ratio.value), change=change)
    return Part(shift=Shift(ratio, "time"), because=because, sources=sources)


def _bakes(at: TimeAt) -> bool:
    baked = at.mark.what == "bake" or (at.mark.what == "steam" and pot.in_the_oven(at.step))
    return baked and not WAITS.search(_clause(at.step.text, at.mark)) and not pot.governs(at)


def _clause(text: str, mark: TimeMark) -> str:
    """The words before a time that belong to it: back to the last full stop or semicolon."""
    return CLAUSE_END.split(text[: mark.start])[-1]
