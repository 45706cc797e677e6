"""Flour: a little more of it, or a stronger one, holds up cells that swell more."""

from __future__ import annotations

from collections.abc import Iterator

from rules.baking.batch import Batch, percent, scale_lines
from rules.baking.change import Change

LEAST_G = 60.0


def changes(batch: Batch) -> Iterator[Change]:
    """The largest flour of the batter takes the change for all of them."""
    plain = (p for p in batch.parts("flour", least_g=LEAST_G) if not p.self_rising)
    flours = sorted(plain, key=lambda p: -p.mass_g)
    yield from scale_lines(batch, tuple(flours[:1]), "flour", "flour", why(batch))


def why(batch: Batch) -> str:
    """The reason, with the convention's figure."""
    ratio = batch.ratio("flour")
    if not batch.up:
        return f"The cells swell less at {batch.here}, so the structure needs {percent(ratio.value)} less flour."
    return (
        f"More flour, about {percent(ratio.value)}, gives the crumb more to stand on while its cells swell more. "
        "This is bakers' "
        "convention, not an extension table. A flour with more protein does the same work."
    )
