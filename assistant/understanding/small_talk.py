"""Which smalltalk an utterance is: thanks, a goodbye, who the assistant is, a greeting, or a mere nod."""

from __future__ import annotations

from collections.abc import Sequence

from assistant.understanding.cue_words import cues, said

# in the order in which they count
KINDS = ("thanks", "goodbye", "who", "hello", "nod")


def kind(words: Sequence[str]) -> str | None:
    """The first kind that the words have a phrase of; None where they have none.

    >>> kind("ok , thanks !".split()), kind("right".split()), kind("hmm".split())
    ('thanks', 'nod', None)
    """
    return next((kind for kind in KINDS if said(words, cues("small_talk", kind))), None)
