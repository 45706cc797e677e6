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
        yield kept(
            "salt", ingredient(lines[0].index), "baking.salt", part.note, (part.source,), item=lines[0].line.item
        )
