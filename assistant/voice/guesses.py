"""What words that were heard may have been: phrases of the lexicon that sound like them. Numbers are left alone."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cache

from spacy.tokens import Doc

from assistant.reading.tokens import norms
from assistant.understanding import lexicon
from assistant.voice import sounds, words

KINDS = ("dish", "method", "place", "jars")
LONGEST_WORDS = 4
# how near in consonants what is looked at more closely has to be, and then in all
NEAR_IN_NOISE, NEAR = 0.6, 0.7
# a phrase of few consonants sounds like many others: consonants it has, and how near it must be
SHORT = ((1, 0.96), (2, 0.88), (3, 0.78))
# words as usual as this are themselves
USUAL = 0.55
# how near the rest of a phrase has to be beside words that were heard as they are
NEAR_BESIDE = 0.6
# letters of a small word that has run into the place, and of the longest word that is none
RUN_ON, LONGEST_LEAD = 2, 4
# a place is led in by a small word and read back where it was mended: it may be less near
NEAR_PLACE = 0.7
# what it costs to begin or to end with a word that holds the question together, and to put an unusual word for a usual
FRAME_COSTS, UNUSUAL_COSTS = 0.08, 0.15
# what it costs that no question has one of its words: less for a name of the lexicon than for what else it is heard as
NAME_COSTS, NEVER_COSTS = 0.03, 0.1
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
    """The phrases of a kind; dishes also with the small word that speech runs into them."""
    found = {said: id for phrase, id in _phrases(kind) for said in _as_said(phrase, kind)}
    return Shelf(tuple(found), tuple(sounds.folded(phrase) for phrase in found), tuple(found.values()))


def _phrases(kind: str) -> Iterator[tuple[str, str]]:
    """Every phrase of a kind with what it means; what speaks of jars means itself.

    Small words are many phrases' own: those of jars and methods that hold some are heard as they are written or not.
    """
    if kind == "jars":
        yield from (
            (phrase, phrase) for phrase in sorted(words.of_preserving()) if words.frame().isdisjoint(phrase.split())
        )
        return
    for phrase, meant in lexicon.phrase_book().phrases.items():
        of_frame = kind == "method" and not words.frame().isdisjoint(phrase.split())
        if phrase.replace(" ", "").isalpha() and not of_frame:
            yield from ((phrase, id) for meant_kind, id in meant if meant_kind == kind)


def _as_said(phrase: str, kind: str) -> Iterator[str]:
    yield phrase
    if kind == "dish":
        yield from (f"{phrase} {end}" for end in words.listed("ends"))


def heard_as_written(doc: Doc, kind: str) -> Iterator[Guess]:
    """What the pipeline hears of a kind without any mending."""
    if kind == "jars":
        yield from _jars_as_written(doc)
        return
    for found in doc._.found:
        if found.kind == kind:
            said = " ".join(norms(doc)[found.start : found.end])
            yield Guess(found.start, found.end, said, said, kind, found.id, 1.0)


def _jars_as_written(doc: Doc) -> Iterator[Guess]:
    for start, end, text in windows(doc):
        if text in words.of_preserving():
            yield Guess(start, end, text, text, "jars", text, 1.0)


def guesses(doc: Doc, kind: str) -> tuple[Guess, ...]:
    """The phrases of a kind that sound like words of an utterance, the nearest first; numbers are no words."""
    said = list(_led(doc) if kind == "place" else windows(doc))
    if not said:
        return ()
    shelved, fixed = shelf(kind), fixed_tokens(doc)
    written = {guess.id for guess in heard_as_written(doc, kind)}
    near = sounds.by_noise([text for _, _, text in said], shelved.codes, NEAR_IN_NOISE)
    found = []
    for row, column in zip(*near.nonzero(), strict=True):
        start, end, text = said[row]
        phrase, id = shelved.phrases[column], shelved.ids[column]
        if id in written or _changes_known(text, phrase) or _makes_jars(text, phrase, kind):
            continue
        if phrase.endswith(words.run_on()) and (end not in fixed or text.endswith(words.run_on())):
            continue
        likeness = sounds.likeness(text, phrase) - _cost(text, phrase, named=phrase.startswith(id))
        if likeness >= (NEAR_PLACE if kind == "place" else _least(phrase)):
            found.append(Guess(start, end, text, phrase, kind, id, likeness))
    return _best_of_each(found)


def _changes_known(heard: str, meant: str) -> bool:
    """Whether a guess changes only what is right: words of many questions (cook, for), or a phrase beside its own."""
    rest, of_rest = sounds.apart(heard, meant)
    if rest and all(words.usual(word) >= USUAL for word in rest.split()):
        return True
    if rest in ("", heard):
        return False
    known = bool(lexicon.meanings(rest)) or rest in words.of_preserving()
    return known or sounds.likeness(rest, of_rest) < NEAR_BESIDE


def _makes_jars(heard: str, meant: str, kind: str) -> bool:
    """Whether a guess of another kind would make a thing in jars of what was not said to be: can venison, canned."""
    first = meant.partition(" ")[0]
    return kind != "jars" and first != meant and first in words.of_preserving() and not heard.startswith(first)


def _led(doc: Doc) -> Iterator[tuple[int, int, str]]:
    """The runs behind a small word that leads a place in, or is heard for one, or runs into it: and toes, in Taos."""
    for start, end, text in windows(doc):
        if start and doc[start - 1].lower_ in words.listed("place_leads_heard_as"):
            yield start, end, text
        elif text.startswith(words.listed("place_leads_run_on")) and len(doc[start]) > LONGEST_LEAD:
            yield start, end, text[RUN_ON:]


def _best_of_each(found: Sequence[Guess]) -> tuple[Guess, ...]:
    """For each thing that may be meant the nearest guess, the nearest things first."""
    best: dict[str, Guess] = {}
    for guess in sorted(found, key=lambda guess: (-guess.likeness, guess.start, guess.end, guess.meant)):
        best.setdefault(guess.id, guess)
    return tuple(best.values())[:MOST]


def _least(phrase: str) -> float:
    """How near a phrase has to be, by its consonants; a small word run into it counts for none."""
    bare = next((phrase.removesuffix(end) for end in words.run_on() if phrase.endswith(end)), phrase)
    consonants = len(sounds.folded(bare).strip(sounds.VOWELS))
    return next((least for most, least in SHORT if consonants <= most), NEAR)


def _cost(heard: str, meant: str, *, named: bool) -> float:
    """What a guess costs that swallows words which hold the question together, or puts an unusual word for a usual."""
    swallowed, own = heard.split(), meant.split()
    ends = ((swallowed[0], own[0]), (swallowed[-1], own[-1]))
    framed = sum(_holds(word) and word not in own and word != meant_word for word, meant_word in ends)
    never = any(not words.usual(word) for word in own)
    rest, of_rest = sounds.apart(heard, meant)
    return (
        FRAME_COSTS * framed
        + UNUSUAL_COSTS * (words.usual(rest) - words.usual(of_rest))
        + (NAME_COSTS if named else NEVER_COSTS) * never
    )


def _holds(word: str) -> bool:
    return word in words.frame() or words.usual(word) >= USUAL


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
