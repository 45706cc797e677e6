"""Which smalltalk an utterance is: thanks, a goodbye, who the assistant is, how far to trust it, a sigh, a mere nod."""

from __future__ import annotations

from collections.abc import Sequence

from assistant.understanding.cue_words import cues, said

# in the order in which they count
NOD, SIGH, MOST_BESIDE_NODS = "nod", "sigh", 2
# kinds that are told by their words whatever the topic was taken for
SAID_ANYHOW = ("trust", "sigh")
# and in a few words
SAID_SHORTLY, FEW = ("thanks", "goodbye"), 4
KINDS = ("trust", "thanks", "goodbye", "who", "hello", "sigh", "nod")


def kind(words: Sequence[str]) -> str | None:
    """The first kind that the words have a phrase of; None where they have none.

    >>> kind("ok , thanks !".split()), kind("right".split()), kind("hmm".split())
    ('thanks', 'nod', None)
    >>> kind("ok so the thing with the pot".split()) is None
    True
    """
    heard = next((kind for kind in KINDS if said(words, cues("small_talk", kind))), None)
    return None if heard in (NOD, SIGH) and _says_more(words, heard) else heard


def is_said_anyhow(kind: str | None, words: Sequence[str]) -> bool:
    """Whether it is smalltalk by its words alone.

    >>> is_said_anyhow("thanks", "dhanyabad dai".split()), is_said_anyhow("hello", ["hi"])
    (True, False)
    """
    return kind in SAID_ANYHOW or (kind in SAID_SHORTLY and len(words) <= FEW)


def _says_more(words: Sequence[str], kind: str) -> bool:
    """Whether anything is said beside such phrases."""
    text = f" {' '.join(words)} "
    for phrase in sorted(cues("small_talk", kind), key=len, reverse=True):
        text = text.replace(f" {phrase} ", "  ")
    return sum(word.isalpha() for word in text.split()) > MOST_BESIDE_NODS
