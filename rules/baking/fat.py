"""Fat: it tenderises, and a rich crumb is weak already."""

from __future__ import annotations

from collections.abc import Iterator

from rules.baking.batch import Batch, percent, scale_lines
from rules.baking.change import Change

LEAST_G = 25.0


def changes(batch: Batch) -> Iterator[Change]:
    """Every fat of the batter times the style's ratio."""
    yield from scale_lines(batch, batch.parts("fat", least_g=LEAST_G), "fat", "fat", why(batch))


def why(batch: Batch) -> str:
    """The reason, with the table's figure."""
    ratio = batch.ratio("fat")
    if not batch.up:
        return f"At {batch.here} the crumb is strong enough for {percent(ratio.value)} more fat again."
    return (
        f"Fat weakens the crumb; a rich batter holds its rise better at {batch.here} with {percent(ratio.value)} less."
    )
