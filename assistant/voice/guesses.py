"""What words that were heard may have been: phrases of the lexicon that sound like them. Numbers are left alone."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cache

from spacy.tokens import Doc

from assistant.reading.tokens import norms
from assistant.understanding import lexicon
from assistant.voice import sounds, words

KINDS = ("dish", "method", "place")
LONGEST_WORDS = 4
# how near in consonants what is looked at more closely has to be, and then in all
NEAR_IN_NOISE, NEAR = 0.6, 0.7
# a phrase of few consonants sounds like many others: consonants it has, and how near it must be
SHORT = ((1, 0.96), (2, 0.88), (3, 0.78))
# what it costs to begin or to end with a word that holds the question together
FRAME_COSTS = 0.05
MOST = 12


@dataclass(frozen=True, slots=True)
class Guess:
    """A phrase of the lexicon in the place of words that were heard.

    start, end: tokens of what was heard; heard, meant: before and after; id: what it means
    likeness: how near the two are to the ear; 1 for what was heard as it is written
    """

    start: int
    end: int
    heard: str
    meant: str
    kind: str
    id: str
    likeness: float

    @property
    def mends(self) -> bool:
        """Whether it changes what was heard."""
        return self.heard != self.meant


@dataclass(frozen=True, slots=True)
class Shelf:
    """Phrases of one kind with the codes of their sound, and what each means."""

    phrases: tuple[str, ...]
    codes: tuple[str, ...]
    ids: tuple[str, ...]


@cache
def shelf(kind: str) -> Shelf:
    """The phrases of a kind; each also with the small word that speech runs into it, places with the one before."""
    found = {
        said: id
        for phrase, meant in lexicon.phrase_book().phrases.items()
        for meant_kind, id in meant
        if meant_kind == kind and phrase.replace(" ", "").isalpha()
        for said in _as_said(phrase, kind)
    }
    return Shelf(tuple(found), tuple(sounds.folded(phrase) for phrase in found), tuple(found.values()))


def _as_said(phrase: str, kind: str) -> Iterator[str]:
    if kind == "place":
        yield from (f"{lead} {phrase}" for lead in words.listed("place_leads"))
        return
    yield phrase
    if kind == "dish":
        yield from (f"{phrase} {end}" for end in words.listed("ends"))


def heard_as_written(doc: Doc, kind: str) -> Iterator[Guess]:
    """What the pipeline hears of a kind without any mending."""
    for found in doc._.found:
        if found.kind == kind:
            said = " ".join(norms(doc)[found.start : found.end])
            yield Guess(found.start, found.end, said, said, kind, found.id, 1.0)


def guesses(doc: Doc, kind: str) -> tuple[Guess, ...]:
    """The phrases of a kind that sound like words of an utterance, the nearest first; numbers and units are no words."""
    said = list(windows(doc))
    if not said:
        return ()
    shelved = shelf(kind)
    near = sounds.by_noise([text for _, _, text in said], shelved.codes, NEAR_IN_NOISE)
    found = []
    for row, column in zip(*near.nonzero(), strict=True):
        start, end, text = said[row]
        phrase = shelved.phrases[column]
        likeness = sounds.likeness(text, phrase) - _cost(text, phrase)
        if likeness >= _least(shelved.codes[column]):
            found.append(Guess(start, end, text, phrase, kind, shelved.ids[column], likeness))
    return _best_of_each(found)


def _best_of_each(found: Sequence[Guess]) -> tuple[Guess, ...]:
    """For each thing that may be meant the nearest guess, the nearest things first."""
    best: dict[str, Guess] = {}
    for guess in sorted(found, key=lambda guess: (-guess.likeness, guess.start, guess.end, guess.meant)):
        best.setdefault(guess.id, guess)
    return tuple(best.values())[:MOST]


def _least(code: str) -> float:
    consonants = len(code.strip(sounds.VOWELS))
    return next((least for most, least in SHORT if consonants <= most), NEAR)


def _cost(heard: str, meant: str) -> float:
    """What a guess costs whose ends swallow words that hold the question together, unless they are its own."""
    swallowed, own = heard.split(), meant.split()
    ends = ((swallowed[0], own[0]), (swallowed[-1], own[-1]))
    return FRAME_COSTS * sum(word in words.frame() and word != meant_word for word, meant_word in ends)


def windows(doc: Doc) -> Iterator[tuple[int, int, str]]:
    """Every run of up to four words between numbers, units and stops, that is not all of a question's frame."""
    fixed = fixed_tokens(doc)
    said = [token.lower_.replace("'", "") for token in doc]
    for start in range(len(doc)):
        for end in range(start + 1, min(start + LONGEST_WORDS, len(doc)) + 1):
            if end - 1 in fixed or not said[end - 1].isalpha():
                break
            run = said[start:end]
            if not words.frame().issuperset(run):
                yield start, end, " ".join(run)


def fixed_tokens(doc: Doc) -> set[int]:
    """The tokens that nothing may change: numbers, with their units."""
    return {i for span in (*doc._.numbers, *doc._.measures, *doc._.clock) for i in range(span.start, span.end)}
