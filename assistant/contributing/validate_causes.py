"""The validator's part on mending: the sentences that the rows of its causes are said with."""

from __future__ import annotations

from collections.abc import Iterator

from assistant.contributing.validate_wording import Call
from rules.mending.causes import CAUSES, causes
from rules.mending.symptoms import CATALOGUE, RESCUE, catalogue
from rules.said import Said


def calls() -> Iterator[Call]:
    """Every sentence of a cause and of a rescue, as if the code called for it. A cause may name what a bench tells."""
    for cause in causes().values():
        for said in (cause.say, cause.because):
            if isinstance(said, Said):
                yield Call(said.file, said.id, None, f"{CAUSES}, {cause.id}")
    for row in catalogue().values():
        if row.rescue:
            yield Call(RESCUE, row.id.replace("_", "-"), frozenset(), f"{CATALOGUE}, {row.id}")
