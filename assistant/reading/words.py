"""The light tokenizer: numbers, words and signs, each with its place in the text as it was given."""

from __future__ import annotations

import re
from dataclasses import dataclass

from assistant.reading.text import traced

TOKEN = re.compile(
    r"""
      \d{1,2}:\d{2}(?!\d)                   # 6:30
    | \d+(?:/\d+)+                          # 1/2
    | \d+(?:\.\d+)?e[+-]?\d+                # 1e3, which no cook writes: one word, and no number
    | \d+(?:[.,]\d+)*k(?![a-z])             # 7k, 7.5k
    | \d+(?:[.,]\d+)*                       # 7,000, 2.1, 2,1: never cut inside
    | \.\d+
    | [^\W\d_]+(?:'[^\W\d_]+)*              # words, with what's and o'clock
    | [^\w\s]
    | _
    """,
    re.VERBOSE | re.IGNORECASE,
)


@dataclass(frozen=True, slots=True)
class Word:
    """A word, number or sign.

    text: as cleaned; norm: in lower case without apostrophes, the form in which words are compared
    start, end: the characters of the given text that it was made of
    """

    text: str
    norm: str
    start: int
    end: int


def words_of(text: str) -> tuple[Word, ...]:
    """The words of any text, units apart from their figures (350F, 2h30).

    >>> [(w.norm, w.start, w.end) for w in words_of("1½ cups")]
    [('1', 0, 1), ('1/2', 1, 2), ('cups', 3, 7)]
    """
    seen = traced(text)
    found = TOKEN.finditer(seen.text)
    return tuple(
        Word(m.group(), norm(m.group()), seen.starts[m.start()], seen.ends[m.end() - 1]) for m in found
    )


def norm(word: str) -> str:
    """The form in which words are compared.

    >>> norm("What's"), norm("'")
    ('whats', "'")
    """
    return word.lower().replace("'", "") or "'"
