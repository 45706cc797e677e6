"""Yeast: dough rises faster in thin air, so it gets less yeast, less time, and is stopped when it has doubled."""

from __future__ import annotations

import re

from rules.baking import components
from rules.baking.bands import Span
from rules.baking.batch import Batch, changed, percent_apart, scale_lines
from rules.baking.change import Change, Shift, Way, step
from rules.baking.mark import TempAt, TimeAt
from rules.baking.styles import is_a
from rules.book import Part, rule
from rules.recipe import Step
from rules.said import Words, number, sentences

say = sentences("baking/yeast")
COLD = re.compile(r"refrigerat|fridge|walk-in|cold|chill|retard|overnight", re.I)
CLAUSE_END = re.compile(r"[.;!]\s|\b(?:or|then)\b", re.I)
COLD_FROM_MIN = 300.0
WARM_C = 17.0
TWO_RISES_FROM_M = 1524.0


@rule("baking.yeast", "common-practice", "uwyo-altitude-adjusters")
def scaled(batch: Batch) -> Part | None:
    """Yeast times the style's ratio."""
    return changed(scale_lines(batch, batch.parts("yeast"), "yeast", "yeast", why(batch), fine=True))


@rule("baking.proof_by_eye", "uwyo-altitude-adjusters", "common-practice")
def by_eye(batch: Batch) -> Part | None:
    """The rises that are judged by eye alone."""
    if not rises(batch):
        return None
    steps = (index for index, one in enumerate(batch.recipe.steps) if _judged_by_eye(one))
    way: Way = "shorter" if batch.up else "longer"
    because, sources = proof_why(batch), _proof_sources(batch)
    return changed(Change(what="proof", way=way, at=step(index), because=because, sources=sources) for index in steps)


def _judged_by_eye(one: Step) -> bool:
    return any(cue.what == "doubled" for cue in one.cues) and not any(t.what == "rise" for t in one.times)


@rule("baking.second_rise", "common-practice", "uwyo-altitude-adjusters")
def second_rise(batch: Batch) -> Part | None:
    """A second rise before shaping, for a dough that doubles too fast to gather flavour; a batter is not shaped."""
    dough = rises(batch) and is_a(batch.style, "yeasted")
    if not dough or not batch.to_m >= TWO_RISES_FROM_M > batch.from_m or not batch.parts("yeast"):
        return None
    change = Change(
        what="method", way="different", at="recipe", because=say("second-rise"), sources=_proof_sources(batch)
    )
    return Part(changes=(change,))


def rises(batch: Batch) -> bool:
    """Whether the style rises by yeast and the two places differ."""
    return components.share(batch.style, "proof") is not None and abs(batch.pressure_ratio - 1) > 0.002


def proof_ratio(batch: Batch) -> Span:
    """How many times the baseline's rising time a dough takes here.

    With the yeast as written, doubling takes gas in proportion to the pressure, so the time falls with it: that is
    one end. Less yeast gives the time back: that is the other. The middle (geometric) is for the reduced yeast of
    the table in dry, thin air; the dough is judged by its size in any case.
    source: uwyo-altitude-adjusters (the direction), computed (the size)

    >>> from rules.recipe import Recipe
    >>> round(proof_ratio(Batch.of(Recipe(), "yeast_bread", 0, 2133.6)).value, 2)
    0.88
    """
    ratio = batch.pressure_ratio
    return Span(ratio**0.5, min(ratio, 1.0), max(ratio, 1.0))


def _proof_sources(batch: Batch) -> tuple[str, ...]:
    return components.sources(batch.style, "proof")


@rule("baking.proof", "uwyo-altitude-adjusters", "common-practice", "computed")
def proof(at: TimeAt) -> Part | None:
    """A rising time at room temperature; a cold or very long one stays."""
    batch, text, mark = at.batch, at.step.text, at.mark
    if mark.what != "rise" or not rises(batch):
        return None
    before, after = CLAUSE_END.split(text[: mark.start])[-1], CLAUSE_END.split(text[mark.end :])[0]
    if COLD.search(f"{before} {after}") or (mark.low_min >= COLD_FROM_MIN and not _told_warm(at)):
        return None
    return Part(shift=Shift(proof_ratio(batch), "proof"), because=proof_why(batch), sources=_proof_sources(batch))


def _told_warm(at: TimeAt) -> bool:
    """Whether the step itself says that the dough stands in the warmth of a room."""
    return any(t.what == "proof" and t.low_c >= WARM_C for t in at.step.temperatures)


@rule("baking.proof_temperature", "common-practice")
def proof_temperature(at: TempAt) -> Part | None:
    """The temperature of a rise stays: it sets how fast the yeast works, which the air does not change."""
    if at.mark.what != "proof" or not rises(at.batch):
        return None
    return Part(shift=Shift(Span(0, 0, 0), "proof", stays=True), because=say("temperature-stays"))


def why(batch: Batch) -> Words:
    """The reason for less yeast, or more."""
    return say("why", percent=percent_apart(batch.ratio("yeast").value), way=batch.way, place=batch.place)


def proof_why(batch: Batch) -> Words:
    """The reason for the shorter rise."""
    return say("proof", swell=number(1 / batch.pressure_ratio), baseline=batch.baseline)
