"""Whipped eggs: the air beaten in swells with the rest, so the foam is stopped sooner."""

from __future__ import annotations

from collections.abc import Iterator

from rules.baking.batch import Batch
from rules.baking.change import Change, step
from rules.say import number

RULE = "baking.foam"
SOURCES = ("csu-high-altitude-food-prep", "nmsu-circular-293")
FROM_M = 914.4
STYLES = ("foam_cake", "souffle", "layer_cake")
SOFT = {"stiff peaks": "soft peaks", "stiff peak": "soft peak", "firm peaks": "soft peaks", "firm peak": "soft peak"}


def softens(batch: Batch) -> bool:
    """Whether the recipe crosses into the elevations where whites are beaten to soft peaks only."""
    return batch.style in STYLES and batch.to_m >= FROM_M > batch.from_m


def stiffens(batch: Batch) -> bool:
    """Whether it crosses the other way."""
    return batch.style in STYLES and batch.from_m >= FROM_M > batch.to_m


def changes(batch: Batch) -> Iterator[Change]:
    """A change at each step that whips to stiff peaks, or to soft ones on the way down."""
    if not (softens(batch) or stiffens(batch)):
        return
    wanted = "stiff_peaks" if softens(batch) else "soft_peaks"
    for index, one in enumerate(batch.recipe.steps):
        if any(cue.what == wanted for cue in one.cues):
            yield Change(what="method", way="different", at=step(index), rule=RULE, because=why(batch), sources=SOURCES)


def why(batch: Batch) -> str:
    """The reason."""
    if not batch.up:
        return (
            f"At {batch.here} the foam swells less in the oven: where it turns out low, beat a little past soft peaks."
        )
    return (
        f"The air beaten in swells {number(1 / batch.pressure_ratio)} times as far as at {batch.there}. Stop at soft "
        "peaks that just fold over: a stiff foam has no stretch left and bursts."
    )
