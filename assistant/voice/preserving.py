"""Whether words may speak of putting food up in jars: in doubt they do, and are read back."""

from __future__ import annotations

from functools import cache
from itertools import pairwise

from spacy.tokens import Doc

from assistant.reading.tokens import norms
from assistant.voice import sounds, words
from assistant.voice.guesses import windows

NEAR_IN_NOISE, NEAR, NEAR_IN_WORDS = 0.7, 0.84, 0.71
# a word as usual as this in kitchen questions is itself
NEVER_OF_JARS = 0.12


@cache
def _codes() -> tuple[tuple[str, str], ...]:
    """The phrases with the codes of their sound; not those with words that hold any question together."""
    phrases = (phrase for phrase in sorted(words.of_preserving()) if words.frame().isdisjoint(phrase.split()))
    return tuple((phrase, sounds.folded(phrase)) for phrase in phrases)


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
    near = sounds.by_noise([text for _, _, text in said], [code for _, code in _codes()], NEAR_IN_NOISE)
    pairs = ((said[row][2], _codes()[column][0]) for row, column in zip(*near.nonzero(), strict=True))
    return any(sounds.likeness(heard, meant) >= (NEAR_IN_WORDS if " " in meant else NEAR) for heard, meant in pairs)


def _runs_into_can(said: list[str]) -> bool:
    """Whether a word may be the verb with the food run into it: to can soup, to consume."""
    pairs = pairwise(said)
    return any(
        before in words.listed("before_can")
        and word.startswith(words.listed("can_heard_as"))
        and words.usual(word) < NEVER_OF_JARS
        for before, word in pairs
    )
