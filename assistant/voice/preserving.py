"""Whether words may speak of putting food up in jars: in doubt they do, and are read back."""

from __future__ import annotations

from functools import cache
from itertools import pairwise

from spacy.tokens import Doc

from assistant.reading.tokens import norms
from assistant.voice import sounds, words
from assistant.voice.guesses import windows

NEAR, NEAR_IN_WORDS = 0.8, 0.62
# a word as usual as this in kitchen questions is itself
NEVER_OF_JARS = 0.12


@cache
def _phrases() -> tuple[str, ...]:
    """What speaks of jars; not with words that hold any question together."""
    return tuple(phrase for phrase in sorted(words.of_preserving()) if words.frame().isdisjoint(phrase.split()))


def speaks_of_jars(doc: Doc) -> bool:
    """Whether a phrase of preserving is among the words, or something that sounds like one."""
    text = f" {' '.join(norms(doc))} "
    if any(f" {phrase} " in text for phrase in words.of_preserving()):
        return True
    said = list(windows(doc))
    if not said:
        return False
    if _runs_into_can(norms(doc)):
        return True
    runs = [text for _, _, text in said]
    return any(
        sounds.likeness(runs[row], meant := _phrases()[column], like) >= (NEAR_IN_WORDS if " " in meant else NEAR)
        for row, column, like in sounds.near(runs, _phrases(), NEAR_IN_WORDS)
    )


def _runs_into_can(said: list[str]) -> bool:
    """Whether a word may be the verb with the food run into it: to can soup, to consume."""
    pairs = pairwise(said)
    return any(
        before in words.listed("before_can")
        and word.startswith(words.listed("can_heard_as"))
        and words.usual(word) < NEVER_OF_JARS
        for before, word in pairs
    )
