"""Fat: it tenderises, and a rich crumb is weak already."""

from __future__ import annotations

from rules.baking.batch import Batch, changed, percent_apart, scale_lines
from rules.book import Part, rule
from rules.said import Words, sentences

LEAST_G = 25.0
say = sentences("baking/fat")


@rule("baking.fat", "csu-high-altitude-food-prep", "common-practice")
def scaled(batch: Batch) -> Part | None:
    """Every fat of the batter times the style's ratio."""
    return changed(scale_lines(batch, batch.parts("fat", least_g=LEAST_G), "fat", "fat", why(batch)))


def why(batch: Batch) -> Words:
    """The reason, with the table's figure."""
    return say("why", way=batch.way, place=batch.place, percent=percent_apart(batch.ratio("fat").value))
