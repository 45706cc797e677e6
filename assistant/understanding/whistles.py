"""Whistles of a pressure cooker, as a cook counts them: 6 whistles, how many seetis."""

from __future__ import annotations

from math import ceil

from spacy.tokens import Doc

from assistant.reading.tokens import norms
from assistant.reading.units import spellings, unit_named
from assistant.understanding.cue_words import cues

ASKED = tuple(tuple(phrase.split()) for phrase in cues("whistles", "asked"))
KIND = "whistle"


def heard(doc: Doc) -> int | None:
    """How many the cook counts, a range by its middle; 0 where it is asked how many, None where nobody counts any.

    >>> from assistant.understanding.pipeline import read
    >>> heard(read("chana takes 4 to 5 whistles")), heard(read("how many whistles for dal")), heard(read("it whistles"))
    (5, 0, None)
    """
    counted = next((m for m in doc._.measures if m.kind == KIND), None)
    if counted:
        return ceil((counted.low + counted.high) / 2)
    return 0 if any(_asked_before(doc, i) for i, word in enumerate(norms(doc)) if _is_whistle(word)) else None


def _is_whistle(word: str) -> bool:
    return word in spellings() and unit_named(word)[2] == KIND


def _asked_before(doc: Doc, at: int) -> bool:
    return any(tuple(norms(doc)[max(0, at - len(words)) : at]) == words for words in ASKED)
