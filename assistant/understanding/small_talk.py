"""Which smalltalk an utterance is: thanks, a goodbye, who the assistant is, a greeting, or a mere nod."""

from __future__ import annotations

from collections.abc import Sequence

from assistant.understanding.cue_words import cues, said

# in the order in which they count
NOD, MOST_BESIDE_NODS = "nod", 2
KINDS = ("thanks", "goodbye", "who", "hello", "nod")


def kind(words: Sequence[str]) -> str | None:
    """The first kind that the words have a phrase of; None where they have none.

    >>> kind("ok , thanks !".split()), kind("right".split()), kind("hmm".split())
    ('thanks', 'nod', None)
    >>> kind("ok so the thing with the pot".split()) is None
    True
    """
    heard = next((kind for kind in KINDS if said(words, cues("small_talk", kind))), None)
    return None if heard == NOD and _says_more(words) else heard


def _says_more(words: Sequence[str]) -> bool:
    """Whether anything is said beside nods."""
    text = f" {' '.join(words)} "
    for phrase in sorted(cues("small_talk", NOD), key=len, reverse=True):
        text = text.replace(f" {phrase} ", "  ")
    return sum(word.isalpha() for word in text.split()) > MOST_BESIDE_NODS
