"""Phrases of the lexicon in a text: `*` stands for up to four words."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterable
from functools import cache, lru_cache

_BETWEEN = r"(?:[,\s]+[\w'’-]+){0,4}[,\s]+"
_TOKEN = re.compile(r"[a-zà-öø-ÿ0-9%]+(?:['’][a-z]+)?")

# Letters without their accents, one for one: "purée" is "puree".
_BARE = {ord(c): base for c in "àáâãäåçèéêëìíîïñòóôõöùúûüýÿ" if (base := unicodedata.normalize("NFD", c)[0])}


def any_phrase(phrases: Iterable[str]) -> str:
    """A regular expression for any of these phrases as whole words, longest first.

    >>> bool(re.fullmatch(any_phrase(["keep * warm"]), "keep the cakes warm"))
    True
    """
    listed = sorted(phrases, key=len, reverse=True)
    told = (re.escape(p).replace(r"\ \*\ ", _BETWEEN).replace(r"\ ", r"\s+") for p in listed)
    return r"(?<![\w-])(?:" + "|".join(told) + r")(?!\w)"


@cache
def pattern(phrases: tuple[str, ...]) -> re.Pattern[str]:
    """The compiled expression for any of these phrases, whatever their case."""
    return re.compile(any_phrase(phrases) if phrases else r"(?!)", re.IGNORECASE)


def says(text: str, phrases: Iterable[str]) -> bool:
    """Whether a text says one of these phrases."""
    return bool(pattern(tuple(phrases)).search(text))


def tokens(text: str) -> list[tuple[str, int, int]]:
    """The words of a text in lower case without plural endings, each with where it stands.

    >>> [word for word, *_ in tokens("Large Eggs, room-temperature")]
    ['large', 'egg', 'room', 'temperature']
    """
    return [(stem(m.group()), m.start(), m.end()) for m in _TOKEN.finditer(text.lower().translate(_BARE))]


def stem(word: str) -> str:
    """A word without its plural ending and apostrophe.

    >>> stem("berries"), stem("tomatoes"), stem("molasses")
    ('berry', 'tomato', 'molass')
    """
    word = word.replace("'", "").replace("’", "")
    if word.endswith("ies") and len(word) > 4:
        return word[:-3] + "y"
    if word.endswith(("oes", "ches", "shes", "sses")):
        return word[:-2]
    return word[:-1] if word.endswith("s") and not word.endswith("ss") and len(word) > 3 else word


@lru_cache(maxsize=8192)
def stems(text: str) -> tuple[str, ...]:
    """The words of a text, in lower case and without plural endings.

    >>> stems("Large Eggs, room-temperature")
    ('large', 'egg', 'room', 'temperature')
    """
    return tuple(word for word, *_ in tokens(text))
