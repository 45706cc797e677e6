"""Component: what a guest is allergic to; it is no dish that is cooked, and that guest no head count."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cache

from spacy.language import Language
from spacy.tokens import Doc

from assistant.reading.tokens import norms
from assistant.understanding.cue_words import cues
from rules.foods.allergens import allergens

BEFORE = tuple(tuple(phrase.split()) for phrase in cues("allergy", "before"))
AFTER, JOINS = frozenset(cues("allergy", "after")), frozenset(cues("allergy", "joins"))
NOBODY = frozenset(cues("allergy", "nobody"))
# what is also said of the cook, who cannot have the milk boil over
HAVING, CLOSING = frozenset(("have", "any")), frozenset(cues("allergy", "closing"))
# words between the guest who is told of and the allergy
NEAR = 7


@dataclass(frozen=True, slots=True)
class Told:
    """An allergen where it was told: tokens, end exclusive, with the words of the allergy."""

    start: int
    end: int
    id: str


Doc.set_extension("allergies", default=(), force=True)


@Language.component("kitchen_allergens", requires=["doc._.found"], assigns=["doc._.allergies"])
def kitchen_allergens(doc: Doc) -> Doc:
    """Hear the allergies of guests, and drop what they are of from the dishes that were found."""
    doc._.allergies = hear(norms(doc))
    spans = [(told.start, told.end) for told in doc._.allergies]
    doc._.found = tuple(f for f in doc._.found if not (_is_food(f.kind) and _within(f.start, f.end, spans)))
    return doc


def _is_food(kind: str) -> bool:
    return kind in ("dish", "ingredient")


def _within(start: int, end: int, spans: Sequence[tuple[int, int]]) -> bool:
    return any(low <= start and end <= high for low, high in spans)


def hear(words: Sequence[str]) -> tuple[Told, ...]:
    """The allergens of an utterance, each once.

    >>> [told.id for told in hear("one guest is allergic to peanuts and shellfish".split())]
    ['peanut', 'shellfish']
    >>> hear("nobody has a nut allergy".split())
    ()
    """
    if not NOBODY.isdisjoint(words):
        return ()
    once = {told.id: told for told in sorted(_every(words), key=lambda told: -told.start)}
    return tuple(sorted(once.values(), key=lambda told: told.start))


def _every(words: Sequence[str]) -> Iterator[Told]:
    for at in range(len(words)):
        for phrase in BEFORE:
            if tuple(words[at : at + len(phrase)]) == phrase:
                every = list(_listed(words, at, at + len(phrase)))
                if every and (phrase[-1] not in HAVING or _closes(words, every[-1].end)):
                    yield from every
        found = _named(words, at)
        if found and words[found[0] : found[0] + 1] and words[found[0]] in AFTER and words[max(at - 1, 0)] != "no":
            yield Told(at, found[0] + 1, found[1])
        if words[at] in _alone():
            yield Told(at, at + 1, _alone()[words[at]])


def _listed(words: Sequence[str], start: int, at: int) -> Iterator[Told]:
    """The allergens that follow each other behind a phrase: allergic to peanuts, nuts and sesame."""
    while found := _named(words, at):
        yield Told(start, found[0], found[1])
        at = found[0]
        while at < len(words) and words[at] in JOINS:
            at += 1


def _closes(words: Sequence[str], end: int) -> bool:
    """Whether nothing more is said of a food: she can't have milk, and not: I can't have milk boiling over."""
    return end == len(words) or words[end] in CLOSING or not words[end][0].isalnum()


def _named(words: Sequence[str], at: int) -> tuple[int, str] | None:
    """Where the longest name of an allergen ends that begins here, and its id."""
    for size in range(_longest(), 0, -1):
        id = _names().get(" ".join(words[at : at + size]))
        if id and at + size <= len(words):
            return at + size, id
    return None


@cache
def _names() -> dict[str, str]:
    return {name: row.id for row in allergens().values() for name in row.heard_as}


@cache
def _longest() -> int:
    return max(len(name.split()) for name in _names())


@cache
def _alone() -> dict[str, str]:
    return {word: row.id for row in allergens().values() for word in row.by_itself}


def counts_guest(doc: Doc, start: int, end: int) -> bool:
    """Whether a figure is of guests who are told of for their allergy alone: one guest is allergic to nuts."""
    words = norms(doc)
    ahead = [told.start for told in doc._.allergies if 0 <= told.start - end <= NEAR]
    ahead += [i for i in range(end, min(end + NEAR, len(words))) if words[i] in AFTER]
    return any(not {",", ".", ";", ":", "for"}.intersection(words[end:at]) for at in ahead)
