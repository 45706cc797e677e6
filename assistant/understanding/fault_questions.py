"""What is said around a fault: what has been seen to, which of two changes is asked, and whether the place is blamed.

The head of data/lexicon/fault_questions.toml says how it is written.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import cache
from typing import Any

from spacy.tokens import Doc

from assistant.reading.tokens import norms
from assistant.understanding import faults
from rules import tables

FILE = "lexicon/fault_questions.toml"
OR, BEFORE, BEHIND, PLACE = "or", 4, 5, "PLACE"


def struck(doc: Doc) -> tuple[str, ...]:
    """The causes that are ruled out by what has been done already, in the order of the file.

    >>> from assistant.understanding.pipeline import read
    >>> struck(read("the buns sank and I never opened the door"))
    ('door_opened',)
    """
    words = norms(doc)
    return tuple(cause for row in _rows()["struck"] if _stands(words, row["phrases"]) for cause in row["causes"])


def either(doc: Doc) -> tuple[str, ...]:
    """The changes between which the choice is asked, by their ids; one where only its way is: whip more or less.

    >>> from assistant.understanding.pipeline import read
    >>> either(read("it stays raw, more minutes or more heat")), either(read("do I whip less or more"))
    (('time', 'oven'), ('whip',))
    """
    words = norms(doc)
    for at, word in enumerate(words):
        if word != OR:
            continue
        before, behind = (
            tuple(_named(part)) for part in (words[max(at - BEFORE, 0) : at], words[at + 1 : at + 1 + BEHIND])
        )
        if before and behind:
            return tuple(dict.fromkeys((before[-1], behind[0])))
        if _ways(words[at - BEFORE if at > BEFORE else 0 : at]) and _ways(words[at + 1 : at + 1 + BEHIND]):
            return before or behind
    return ()


def blamed(doc: Doc) -> bool:
    """Whether it is asked if the elevation is behind it.

    >>> from assistant.understanding.pipeline import read
    >>> blamed(read("my scones spread, is it the altitude")), blamed(read("my scones spread at this altitude"))
    (True, False)
    """
    row = _rows()["blame"]
    place = "|".join(row["places"])
    return _stands(norms(doc), [phrase.replace(PLACE, place) for phrase in row["phrases"]])


def _stands(words: Sequence[str], phrases: Sequence[str]) -> bool:
    return faults.stands(words, tuple(phrases))


def _named(words: Sequence[str]) -> Iterator[str]:
    yield from (_by_word()[word] for word in words if word in _by_word())


def _ways(words: Sequence[str]) -> bool:
    return not _way_words().isdisjoint(words)


@cache
def _by_word() -> dict[str, str]:
    return {word: row["id"] for row in _rows()["named"] for word in row["words"]}


@cache
def _way_words() -> frozenset[str]:
    return frozenset(("more", "less", "longer", "shorter", "fewer", "higher", "lower", "stiffer", "softer"))


def _rows() -> dict[str, Any]:
    return tables.read_toml(FILE)
