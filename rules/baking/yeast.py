"""Yeast: dough rises faster in thin air, so it gets less yeast, less time, and is stopped when it has doubled."""

from __future__ import annotations

import re
from collections.abc import Iterator

from rules.baking import components
from rules.baking.bands import Span
from rules.baking.batch import Batch, percent, scale_lines
from rules.baking.change import Change, step
from rules.baking.time_shift import Shift
from rules.recipe import Step, TimeMark
from rules.say import number

RULE = "baking.proof"
COLD = re.compile(r"refrigerat|fridge|walk-in|cold|chill|retard|overnight", re.I)
CLAUSE_END = re.compile(r"[.;!]\s|\b(?:or|then)\b", re.I)
COLD_FROM_MIN = 300.0
TWO_RISES_FROM_M = 1524.0


def changes(batch: Batch) -> Iterator[Change]:
    """Yeast times the style's ratio, and the rises that are judged by eye alone."""
    yield from scale_lines(batch, batch.parts("yeast"), "yeast", "yeast", why(batch), fine=True)
    if not rises(batch):
        return
    for index, one in enumerate(batch.recipe.steps):
        by_eye = any(cue.what == "doubled" for cue in one.cues) and not any(t.what == "rise" for t in one.times)
        if by_eye:
            yield Change(
                what="proof", way="shorter" if batch.up else "longer", at=step(index), rule=RULE,
                because=proof_why(batch), sources=components.sources(batch.style, "proof"),
            )  # fmt: skip
    if batch.to_m >= TWO_RISES_FROM_M > batch.from_m and batch.parts("yeast"):
        yield Change(
            what="method", way="different", at="recipe", rule=RULE, sources=components.sources(batch.style, "proof"),
            because="Punch the dough down and let it rise a second time before shaping, or give it a night in the "
            "refrigerator: a dough that doubles this fast has had little time to gather flavour.",
        )  # fmt: skip


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
    >>> round(proof_ratio(Batch(Recipe(), "yeast_bread", 0, 2133.6)).value, 2)
    0.88
    """
    ratio = batch.pressure_ratio
    return Span(ratio**0.5, min(ratio, 1.0), max(ratio, 1.0))


def proof(batch: Batch, one: Step, mark: TimeMark) -> Shift | None:
    """A rising time at room temperature; a cold or very long one stays."""
    if not rises(batch):
        return None
    before, after = CLAUSE_END.split(one.text[: mark.start])[-1], CLAUSE_END.split(one.text[mark.end :])[0]
    if COLD.search(f"{before} {after}") or mark.low_min >= COLD_FROM_MIN:
        return None
    return Shift(proof_ratio(batch), "proof", RULE, proof_why(batch), components.sources(batch.style, "proof"))


def proof_temperature(batch: Batch) -> Shift | None:
    """The temperature of a rise stays: it sets how fast the yeast works, which the air does not change."""
    if not rises(batch):
        return None
    because = (
        "The temperature stays: it sets how fast the yeast works. A place 5 °F (3 °C) cooler buys time for flavour."
    )
    return Shift(Span(0, 0, 0), "proof", RULE, because, ("common-practice",), stays=True)


def why(batch: Batch) -> str:
    """The reason for less yeast, or more."""
    way = "less" if batch.up else "more"
    return (
        f"Bakers use about {percent(batch.ratio('yeast').value)} {way} yeast at {batch.here}, so that the dough keeps "
        "time enough to gather flavour and strength."
    )


def proof_why(batch: Batch) -> str:
    """The reason for the shorter rise."""
    swell = number(1 / batch.pressure_ratio)
    return (
        f"The gas takes {swell} times the room it takes at {batch.there}. Judge by size, not by the clock: "
        "stop when the dough has just doubled, and the dent of a finger stays."
    )
