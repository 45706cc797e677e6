"""The light tokenizer: numbers, words and signs, each with its place in the text as it was given."""

from __future__ import annotations

import re
from bisect import bisect_left
from dataclasses import dataclass
from functools import lru_cache

from assistant.reading.text import traced

TOKEN = re.compile(
    r"""
      \d{1,2}:\d{2}(?!\d)                   # 6:30
    | \d+(?:/\d+)+                          # 1/2
    | \d+(?:\.\d+)?e[+-]?\d+                # 1e3, which no cook writes: one word, and no number
    | \d+(?:_\d+)+                          # 1_000: one word, and no number, as above
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


@dataclass(frozen=True, slots=True)
class Cut:
    """A text cut into words: the words, and by themselves what they are compared by and how they are spelled."""

    text: str
    words: tuple[Word, ...]
    norms: tuple[str, ...]
    spelled: tuple[str, ...]

    def at(self, place: int, over: str = "") -> int:
        """The word that begins at a character, or behind blanks and one of the signs `over`; -1 where none does.

        >>> cut("2 8-ounce cans").at(3, over="-"), cut("2 8-ounce cans").at(5)
        (2, -1)
        """
        i = bisect_left(self.words, place, key=_start)
        if i == len(self.words):
            return -1
        between = self.text[place : self.words[i].start].strip()
        return i if not between or (len(between) == 1 and between in over) else -1

    def end(self, span_end: int) -> int:
        """The character after the last word of a span that ends before word `span_end`."""
        return self.words[span_end - 1].end


def _start(word: Word) -> int:
    return word.start


@lru_cache(maxsize=512)
def cut(text: str) -> Cut:
    """Any text, cut into words."""
    words = words_of(text)
    return Cut(text, words, tuple(word.norm for word in words), tuple(word.text for word in words))


def words_of(text: str) -> tuple[Word, ...]:
    """The words of any text, units apart from their figures (350F, 2h30).

    >>> [(w.norm, w.start, w.end) for w in words_of("1½ cups")]
    [('1', 0, 1), ('1/2', 1, 2), ('cups', 3, 7)]
    """
    seen = traced(text)
    found = TOKEN.finditer(seen.text)
    return tuple(Word(m.group(), norm(m.group()), seen.starts[m.start()], seen.ends[m.end() - 1]) for m in found)


def norm(word: str) -> str:
    """The form in which words are compared.

    >>> norm("What's"), norm("'")
    ('whats', "'")
    """
    return word.lower().replace("'", "") or "'"
