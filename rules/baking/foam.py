"""Whipped eggs: the air beaten in swells with the rest, so the foam is stopped sooner."""

from __future__ import annotations

import re

from rules.baking.batch import Batch, changed
from rules.baking.change import Change, step
from rules.baking.part_names import is_left
from rules.baking.styles import is_a
from rules.book import Part, rule
from rules.recipe import Cue, CueOf, Step
from rules.said import Words, number, sentences

say = sentences("baking/foam")
FROM_M = 914.4
# Cream whipped for a filling is no foam that goes into the oven.
CREAM = re.compile(r"\bcream\b(?! of tartar)", re.I)
STIFF = re.compile(r"\b(?:stiff|firm)(?:,? glossy)?(?: but not dry)?(?P<peaks> peaks?)?", re.I)


def softens(batch: Batch) -> bool:
    """Whether the recipe crosses into the elevations where whites are beaten to soft peaks only."""
    return is_a(batch.style, "whipped") and batch.to_m >= FROM_M > batch.from_m


def stiffens(batch: Batch) -> bool:
    """Whether it crosses the other way."""
    return is_a(batch.style, "whipped") and batch.from_m >= FROM_M > batch.to_m


def whipped(one: Step, what: CueOf) -> tuple[Cue, ...]:
    """The cues of a step that tell how far eggs are beaten for the batter."""
    if is_left(one.component):
        return ()
    return tuple(c for c in one.cues if c.what == what and not CREAM.search(_sentence(one.text, c.start)))


def softened(text: str, cue: Cue) -> list[tuple[int, int, str]]:
    """Where a cue says how far to beat, and what to say instead: a stage sooner.

    >>> softened("Beat until stiff.", Cue(5, 17, "stiff_peaks"))
    [(11, 16, 'soft peaks')]
    >>> softened("stiff, glossy peaks", Cue(0, 19, "stiff_peaks"))
    [(0, 19, 'soft peaks')]
    """
    found = STIFF.finditer(text, cue.start, cue.end)
    return [(m.start(), m.end(), f"soft{m['peaks'] or ' peaks'}") for m in found]


def _sentence(text: str, at: int) -> str:
    """The words before a place, back to the full stop."""
    return re.split(r"[.;!]\s", text[:at])[-1]


@rule("baking.foam", "csu-high-altitude-food-prep", "nmsu-circular-293")
def stage(batch: Batch) -> Part | None:
    """A change at each step that whips to stiff peaks, or to soft ones on the way down."""
    if not (softens(batch) or stiffens(batch)):
        return None
    wanted: CueOf = "stiff_peaks" if softens(batch) else "soft_peaks"
    steps = (index for index, one in enumerate(batch.recipe.steps) if whipped(one, wanted))
    return changed(Change(what="method", way="different", at=step(index), because=why(batch)) for index in steps)


def why(batch: Batch) -> Words:
    """The reason."""
    if not batch.up:
        return say("past-soft-peaks", place=batch.place)
    return say("soft-peaks", swell=number(1 / batch.pressure_ratio), baseline=batch.baseline)
