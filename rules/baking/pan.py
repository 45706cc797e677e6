"""Pan: a batter that rises higher needs room, so it is filled half rather than two thirds."""

from __future__ import annotations

import re

from rules.baking import components
from rules.baking.batch import Batch
from rules.baking.change import Change
from rules.book import Part, rule
from rules.said import Words, sentences, yes

say = sentences("baking/pan")
USUAL_FILL = 2 / 3
FOAM = "foam_cake"
# A sheet of batter this thin never nears the rim.
SHALLOW = re.compile(r"\bjelly[- ]?roll\b|\bswiss[- ]?roll\b|\bsheet pan\b|\bbaking sheet\b", re.I)
TWO_THIRDS = re.compile(r"\bfill\w*\b[^.;]{0,40}?\s(?P<fill>(?:2/3|⅔|two[- ]thirds?)(?P<full> full)?)(?!\w)", re.I)


def fill(batch: Batch, elevation_m: float) -> float:
    """How full the pan may be at an elevation [share of its depth].

    source: egg-producers-cakes

    >>> from rules.recipe import Recipe
    >>> round(fill(Batch.of(Recipe(), "layer_cake", 0, 1524), 1524), 2)
    0.5
    """
    return USUAL_FILL + components.change(batch.style, "fill", elevation_m).value


@rule("baking.pan", "egg-producers-cakes")
def filled(batch: Batch) -> Part | None:
    """The fill of the pan, where the two places differ in it."""
    there, here = fill(batch, batch.from_m), fill(batch, batch.to_m)
    if any(SHALLOW.search(one.text) for one in batch.recipe.steps):
        return None
    if abs(here - there) < 0.02:
        return None
    change = Change(
        what="pan", way="less" if here < there else "more", at="recipe", from_value=round(there, 2),
        from_unit="of the depth", to_value=round(here, 2), to_low=round(here, 2), to_high=round(here, 2),
        to_unit="of the depth", because=why(batch), sources=components.sources(batch.style, "fill"),
    )  # fmt: skip
    return Part(changes=(change,))


def why(batch: Batch) -> Words:
    """The reason."""
    return say("why", way=batch.way, place=batch.place, foam=yes(batch.style == FOAM))


def rewrite(batch: Batch, text: str) -> list[tuple[int, int, str]]:
    """Where a step says "two-thirds full": start, end and what to say instead."""
    if not (fill(batch, batch.from_m) > 0.6 > 0.55 > fill(batch, batch.to_m)):
        return []
    found = TWO_THIRDS.finditer(text)
    return [(m.start("fill"), m.end("fill"), f"half{m['full'] or ''} (was {m['fill']})") for m in found]
