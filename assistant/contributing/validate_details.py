"""The validator's part on details of dishes: the sentences that their rows are said with."""

from __future__ import annotations

from collections.abc import Iterator

from assistant.contributing.validate_wording import Call
from assistant.understanding.details import SENTENCES, WORDS, rows, sentence


def calls() -> Iterator[Call]:
    """The sentence of every detail, as if the code called for it."""
    for row in rows():
        yield Call(SENTENCES, sentence(row).id, frozenset(), f"{WORDS}, {row['id']}")
