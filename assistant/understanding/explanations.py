"""The explanations of the catalogue that sound most like what was asked."""

from __future__ import annotations

import re
from collections import Counter
from functools import cache

from rules import tables

CATALOGUE = "lexicon/explanations.toml"
NEAREST = 3
LONGEST_TEXT = 500


def nearest(text: str) -> tuple[str, ...]:
    """Those that share most words with a text, rare words counting for more; ties in the catalogue's order.

    >>> len(nearest("why is the moon round"))
    3
    """
    said = words(text[:LONGEST_TEXT])

    def likeness(id: str) -> float:
        return sum(1 / known_words()[word] for word in said & phrases()[id])

    return tuple(sorted(phrases(), key=likeness, reverse=True)[:NEAREST])


@cache
def phrases() -> dict[str, set[str]]:
    """Id of an explanation -> the words of its title and phrases."""
    rows = tables.read_toml(CATALOGUE)["explanation"]
    return {row["id"]: words(" ".join((row["title"], *row["heard_as"]))) for row in rows}


@cache
def known_words() -> Counter[str]:
    """In how many rows each word of the catalogue stands."""
    return Counter(word for row in phrases().values() for word in row)


def words(text: str) -> set[str]:
    """The words of a text, in small letters."""
    return set(re.findall(r"[a-z]+", text.casefold()))
