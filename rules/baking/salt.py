"""Salt: it stays."""

from __future__ import annotations

from collections.abc import Iterator

from rules.baking import components
from rules.baking.batch import Batch, kept
from rules.baking.change import Change, ingredient


def changes(batch: Batch) -> Iterator[Change]:
    """The salt of a dough, listed as the same."""
    part, lines = components.share(batch.style, "salt"), batch.parts("salt")
    if part and lines and batch.expects("salt"):
        first = lines[0]
        reason = batch.stays(part)
        yield kept("salt", ingredient(first.index), "baking.salt", reason, (part.source,), item=first.line.item)
