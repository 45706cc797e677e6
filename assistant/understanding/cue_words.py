"""Small words that tell what part another word or figure plays: data/lexicon/cues.toml."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from rules import tables

CUES = "lexicon/cues.toml"


def cues(group: str, name: str) -> tuple[str, ...]:
    """One list of words.

    >>> cues("elevation", "after_here")
    ('kitchen', 'now', 'here')
    """
    return tuple(tables.read_toml(CUES)[group][name])


def said(words: Sequence[str], phrases: Iterable[str]) -> bool:
    """Whether one of the phrases stands among the words.

    >>> said("with the lid on".split(), ["lid on"]), said("solid".split(), ["lid"])
    (True, False)
    """
    text = f" {' '.join(words)} "
    return any(f" {phrase} " in text for phrase in phrases)
