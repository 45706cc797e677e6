"""Flour: a little more of it, or a stronger one, holds up cells that swell more."""

from __future__ import annotations

from rules.baking.batch import Batch, changed, percent_apart, scale_lines
from rules.book import Part, rule
from rules.said import Words, sentences

LEAST_G = 60.0
say = sentences("baking/flour")


@rule("baking.flour", "common-practice", "csu-high-altitude-food-prep", "uwyo-altitude-adjusters")
def scaled(batch: Batch) -> Part | None:
    """The largest flour of the batter takes the change for all of them."""
    plain = (p for p in batch.parts("flour", least_g=LEAST_G) if not p.self_rising)
    flours = sorted(plain, key=lambda p: -p.mass_g)
    return changed(scale_lines(batch, tuple(flours[:1]), "flour", "flour", why(batch)))


def why(batch: Batch) -> Words:
    """The reason, with the convention's figure."""
    return say("why", way=batch.way, place=batch.place, percent=percent_apart(batch.ratio("flour").value))
