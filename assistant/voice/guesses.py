"""What words that were heard may have been: phrases of the lexicon that sound like them. Numbers are left alone."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cache

from spacy.tokens import Doc

from assistant.reading.tokens import norms
from assistant.understanding import lexicon
from assistant.voice import sounds, words

Run = tuple[int, int, str]
KINDS = ("dish", "method", "place", "jars")
LONGEST_WORDS, COMMA = 4, ","
# how near what is looked at more closely has to be as it is said
NEAREST_LEAST = 0.5
# how near a phrase has to be, by its consonants: one of few sounds like many others
LEAST = ((1, 0.96), (2, 0.88), (3, 0.78), (4, 0.7), (5, 0.66), (6, 0.62))
LEAST_OF_LONG, LEAST_OF_PLACE, LESS_NEAR = 0.58, 0.54, {"method": 0.07, "place": 0.24}
# words as usual as this are themselves
USUAL = 0.55
# how near the rest of a phrase has to be beside words that were heard as they are: so much less, but not below; and a
# rest that is known
LESS_BESIDE, NEAR_BESIDE, NEAR_BESIDE_KNOWN = 0.36, 0.42, 0.75
# letters of a small word that has run into the place, and of the longest word that is none
RUN_ON, LONGEST_LEAD = 2, 4
# what it costs to begin or to end with a word that holds the question together, to put an unusual word for a usual, and
# to change words that stand in questions at all, by how usual the least usual of them is
FRAME_COSTS, UNUSUAL_COSTS, SEEN_COSTS, USUAL_COSTS = 0.08, 0.2, 0.06, 0.4
# what the latter counts of several words
SEVERAL_COUNT = 0.5
# what it costs that no question has one of its words: less for a name of the lexicon than for what else it is heard as
NAME_COSTS, NEVER_COSTS = 0.03, 0.1
# what it costs that a small word has run into it
RUN_ON_COSTS = 0.06
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
    """Phrases of one kind with what each means."""

    phrases: tuple[str, ...]
    ids: tuple[str, ...]


@cache
def shelf(kind: str, *, run_on: bool = False) -> Shelf:
    """The phrases of a kind. run_on: each with the small words that speech runs into it before a number"""
    found = {said: id for phrase, id in _phrases(kind) for said in (_run_on(phrase) if run_on else (phrase,))}
    return Shelf(tuple(found), tuple(found.values()))


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


def _run_on(phrase: str) -> Iterator[str]:
    yield from (phrase + end for end in words.run_on())


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
    written = {guess.id for guess in heard_as_written(doc, kind)}
    pairs = list(_near(said, shelf(kind)))
    if kind == "dish":
        fixed = fixed_tokens(doc)
        before_number = [run for run in said if run[1] in fixed and not run[2].endswith(words.run_on())]
        pairs += _near(before_number, shelf(kind, run_on=True))
    found = (_guess(run, phrase, kind, id, like) for run, phrase, id, like in pairs if id not in written)
    return _best_of_each([guess for guess in found if guess])


def _near(said: Sequence[Run], shelved: Shelf) -> Iterator[tuple[Run, str, str, float]]:
    """Runs of words with the phrases that sound like them, what each means, and how near it is."""
    for row, column, like in sounds.near([text for _, _, text in said], shelved.phrases, NEAREST_LEAST):
        yield said[row], shelved.phrases[column], shelved.ids[column], like


def _guess(run: Run, phrase: str, kind: str, id: str, whole: float) -> Guess | None:
    """A phrase in the place of a run of words, where it is near enough and changes nothing that is right."""
    start, end, text = run
    named = phrase.startswith(id) or id.startswith(phrase)
    likeness = sounds.likeness(text, phrase, whole) - _cost(text, phrase, named=named)
    if likeness < least(phrase, kind):
        return None
    wrong = _changes_usual(text, phrase) or _makes_jars(text, phrase, kind) or _changes_known(text, phrase)
    return None if wrong else Guess(start, end, text, phrase, kind, id, likeness)


def _changes_usual(heard: str, meant: str) -> bool:
    """Whether a guess changes only words of many questions: cook, for, do."""
    rest, _ = sounds.apart(heard, meant)
    return bool(rest) and all(_holds(word) for word in rest.split())


def _changes_known(heard: str, meant: str) -> bool:
    """Whether a guess changes a phrase that does not sound like the rest of its own; one that is known has to more."""
    rest, of_rest = sounds.apart(heard, meant)
    if rest in ("", heard):
        return False
    known = bool(lexicon.meanings(rest)) or rest in words.of_preserving()
    enough = NEAR_BESIDE_KNOWN if known else max(NEAR_BESIDE, least(of_rest) - LESS_BESIDE)
    return sounds.likeness(rest, of_rest) < enough


def _makes_jars(heard: str, meant: str, kind: str) -> bool:
    """Whether a guess of another kind would make a thing in jars of what was not said to be: can venison, canned."""
    first = meant.partition(" ")[0]
    return kind != "jars" and first != meant and first in words.of_preserving() and not heard.startswith(first)


def _led(doc: Doc) -> Iterator[Run]:
    """The runs behind a small word that leads a place in, or is heard for one, or runs into it: and toes, in Taos."""
    for start, end, text in windows(doc):
        if start and doc[start - 1].lower_ in words.listed("place_leads_heard_as"):
            yield start, end, text
        elif text.startswith(words.listed("place_leads_run_on")) and _may_run_on(doc[start].lower_):
            yield start, end, text[RUN_ON:]


def _may_run_on(word: str) -> bool:
    """Whether a word may be a small one with a place run into it: incentive, but neither any nor internal."""
    return len(word) > LONGEST_LEAD and not words.usual(word)


def _best_of_each(found: Sequence[Guess]) -> tuple[Guess, ...]:
    """For each thing that may be meant the nearest guess, the nearest things first."""
    best: dict[str, Guess] = {}
    for guess in sorted(found, key=lambda guess: (-guess.likeness, guess.start, guess.end, guess.meant)):
        best.setdefault(guess.id, guess)
    return tuple(best.values())[:MOST]


def least(phrase: str, kind: str = "dish") -> float:
    """How near a phrase has to be, by its consonants; those of a small word run into it do not count.

    There are few methods, so one may be less near; so may a place, which is led in and read back where it was mended.
    """
    bare = next((phrase.removesuffix(end) for end in words.run_on() if phrase.endswith(end)), phrase)
    many = sounds.consonants(bare)
    near = next((near for most, near in LEAST if many <= most), LEAST_OF_LONG)
    return max(LEAST_OF_PLACE if kind == "place" else LEAST_OF_LONG, near - LESS_NEAR.get(kind, 0.0))


def _cost(heard: str, meant: str, *, named: bool) -> float:
    """What a guess costs that swallows words which hold the question together, or puts an unusual word for a usual."""
    swallowed, own = heard.split(), meant.split()
    ends = ((swallowed[0], own[0]), (swallowed[-1], own[-1]))
    framed = sum(_holds(word) and word not in own and word != meant_word for word, meant_word in ends)
    never = any(not words.usual(word) and not words.usual(f"{word}s") for word in own)
    rest, of_rest = sounds.apart(heard, meant)
    known = min(map(words.usual, rest.split()), default=0.0)
    alone = " " not in rest
    return (
        FRAME_COSTS * framed
        + UNUSUAL_COSTS * (known - words.usual(of_rest))
        + (SEEN_COSTS + USUAL_COSTS * known) * (known > 0) * (1.0 if alone else SEVERAL_COUNT)
        + (NAME_COSTS if named else NEVER_COSTS) * never
        + RUN_ON_COSTS * (meant.endswith(words.run_on()) and not heard.endswith(words.run_on()))
    )


def _holds(word: str) -> bool:
    return word in words.frame() or words.usual(word) >= USUAL


def windows(doc: Doc) -> Iterator[Run]:
    """Every run of up to four words between numbers, units and stops, that is not all of a question's frame.

    A comma is put where a recogniser takes a word for two, so a run goes on over it.
    """
    fixed = fixed_tokens(doc)
    said = [token.lower_.replace("'", "") for token in doc]
    for start in range(len(doc)):
        run: list[str] = []
        for end in range(start + 1, len(doc) + 1):
            word = said[end - 1]
            if word == COMMA and run:
                continue
            if end - 1 in fixed or not word.isalpha() or len(run) == LONGEST_WORDS:
                break
            run.append(word)
            if not words.frame().issuperset(run):
                yield start, end, " ".join(run)


def fixed_tokens(doc: Doc) -> set[int]:
    """The tokens that nothing may change: numbers, with their units."""
    return {i for span in (*doc._.numbers, *doc._.measures, *doc._.clock) for i in range(span.start, span.end)}
