"""Salt: it stays."""

from __future__ import annotations

from rules.baking import components
from rules.baking.batch import Batch, kept
from rules.baking.change import ingredient
from rules.book import Part, rule


@rule("baking.salt", "common-practice")
def same(batch: Batch) -> Part | None:
    """The salt of a dough stays."""
    part, lines = components.share(batch.style, "salt"), batch.parts("salt")
    if not part or not lines or not batch.expects("salt"):
        return None
    first = lines[0]
    change = kept("salt", ingredient(first.index), batch.stays(part), (part.source,), item=first.line.item)
    return Part(changes=(change,))
