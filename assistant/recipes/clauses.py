"""The words of a step that tell what its figures are: the phrases of the lexicon, and the clause a figure stands in."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache, lru_cache
from itertools import pairwise
from typing import Any

from assistant.recipes.lines import words
from rules import tables
from rules.recipes.phrases import any_phrase, pattern

ROLES = "lexicon/recipe_roles.toml"
_FLAGS = re.IGNORECASE
# "1 hr. 15 min." goes on
_SENTENCE = re.compile(r"(?<=[.;!?])(?!(?:(?<=\bhr\.)|(?<=\bhrs\.))\s+\d)\s+|\n+", _FLAGS)
# every word of a sentence is judged by all the others
LONGEST_SENTENCE = 2_000
_UNTIL = re.compile(
    r"\b(?:until|till|when|once)\b|\bto\s+(?:an?\s+|the\s+)?(?:internal|minimum|core|safe|final|finished)\b", _FLAGS
)


@dataclass(frozen=True, slots=True)
class Word:
    """A phrase of the lexicon where it stands in a text. row: the place of its row in the lexicon."""

    what: str
    start: int
    end: int
    row: int = 0


@dataclass(frozen=True, slots=True)
class Span:
    """A piece of a text."""

    start: int
    end: int

    def holds(self, start: int, end: int) -> bool:
        """Whether another piece lies in it."""
        return self.start <= start and end <= self.end


def rows(kind: str) -> tuple[dict[str, Any], ...]:
    """The rows of one kind of role: temperature, time or apparatus."""
    return tuple(tables.read_toml(ROLES)[kind])


def clause_words(name: str) -> tuple[str, ...]:
    """A word list that says how clauses are read."""
    return tuple(tables.read_toml(ROLES)["clause"][name])


@cache
def _patterns(kind: str) -> tuple[tuple[int, str, re.Pattern[str]], ...]:
    return tuple(
        (index, row["id"], pattern(tuple(row["words"]))) for index, row in enumerate(rows(kind)) if row.get("words")
    )


@lru_cache(maxsize=1024)
def words_in(kind: str, text: str, start: int = 0, end: int | None = None) -> tuple[Word, ...]:
    """The phrases of one kind of role in a piece of text, in order; a longer one hides the shorter ones inside it."""
    stop = len(text) if end is None else end
    found = [
        Word(what, m.start(), m.end(), index)
        for index, what, phrases in _patterns(kind)
        for m in phrases.finditer(text, start, stop)
    ]
    return tuple(outermost(found))


def outermost(found: list[Word]) -> list[Word]:
    """Words in order of place; of those that overlap the one that begins first and is longest."""
    kept: list[Word] = []
    for word in sorted(found, key=lambda w: (w.start, w.start - w.end, w.row)):
        if not kept or word.start >= kept[-1].end:
            kept.append(word)
    return kept


def sentences(text: str) -> Iterator[Span]:
    """The sentences of a step; a semicolon ends one, and so does a space where none has ended for LONGEST_SENTENCE."""
    cuts = [0, *(m.end() for m in _SENTENCE.finditer(text)), len(text)]
    for start, end in pairwise(cuts):
        while end - start > LONGEST_SENTENCE:
            cut = text.rfind(" ", start, start + LONGEST_SENTENCE) + 1 or start + LONGEST_SENTENCE
            yield Span(start, cut)
            start = cut
        if end > start:
            yield Span(start, end)


@cache
def _boundary() -> re.Pattern[str]:
    """Where a sentence goes on to another action: "; simmer", ", and bake", ", then"."""
    verbs = any_phrase(set(words("steps", "verbs")) - set(clause_words("no_verbs")))
    return re.compile(
        rf"[,\s]\s*(?:and\s+then|but\s+then|then|and|or|but)\s+(?=(?:\w+ly\s+)?{verbs})|,\s+(?=(?:\w+ly\s+)?{verbs})|\bthen\s",
        _FLAGS,
    )


def clause(text: str, sentence: Span, start: int, end: int) -> Span:
    """The clause of a sentence that a figure from start to end stands in: one action with what is said of it.

    >>> text = "Brown the meat 5 minutes, add the stock and simmer gently for 2 hours."
    >>> found = clause(text, Span(0, len(text)), 56, 63)
    >>> text[found.start : found.end]
    'simmer gently for 2 hours.'
    """
    cuts = list(_boundary().finditer(text, sentence.start, sentence.end))
    before = max((m.end() for m in cuts if m.end() <= start), default=sentence.start)
    after = min((m.start() for m in cuts if m.start() >= end), default=sentence.end)
    return Span(before, after)


def waiting(text: str, part: Span) -> Span | None:
    """What a clause waits for: its words from "until" on; None where it says nothing of the kind."""
    found = _UNTIL.search(text, part.start, part.end)
    return Span(found.start(), part.end) if found else None
