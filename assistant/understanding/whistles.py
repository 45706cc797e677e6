"""Whistles of a pressure cooker, as a cook counts them: 6 whistles, how many seetis."""

from __future__ import annotations

from math import ceil

from spacy.tokens import Doc

from assistant.reading.spans import Number
from assistant.reading.tokens import norms
from assistant.reading.units import spellings, unit_named
from assistant.understanding.claims import plain_numbers
from assistant.understanding.cue_words import cues
from assistant.understanding.forms import clause_starts

BEHIND = cues("whistles", "behind")
# more is no count of whistles
MOST_TOLD = 40
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
    if not any(_asked_before(doc, i) or _opens(doc, i) for i, word in enumerate(norms(doc)) if _is_whistle(word)):
        return None
    own = [number.value for number in plain_numbers(doc) if _is_own_count(doc, number)]
    return ceil((min(own) + max(own)) / 2) if own else 0


def _is_own_count(doc: Doc, number: Number) -> bool:
    """Whether a number with no word of what it counts is the cook's own count, where whistles are asked for.

    In Delhi I give 5; there it was 4 or 5; 3 at home.
    """
    counts_food = any(found.start == number.end for found in doc._.found if found.kind != "place")
    behind = norms(doc)[number.end] if number.end < len(doc) else ""
    return 1 <= number.value <= MOST_TOLD and not counts_food and (not behind.isalpha() or behind in BEHIND)


def _is_whistle(word: str) -> bool:
    return word in spellings() and unit_named(word)[2] == KIND


def _opens(doc: Doc, at: int) -> bool:
    """Whether a question begins with the word: whistles for rajma at 7,000 ft?"""
    return at in clause_starts(doc) and at + 1 < len(doc) and norms(doc)[at + 1] in ("for", "in")


def _asked_before(doc: Doc, at: int) -> bool:
    return any(tuple(norms(doc)[max(0, at - len(words)) : at]) == words for words in ASKED)
