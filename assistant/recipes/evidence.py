"""What a temperature can be of, by the words around it: the roles of the lexicon, the most believed first.

What is never rewritten is believed first: a reading inside food, a bath, a smoker, a warm oven, a refrigerator. A
figure is of an oven, of fat or of boiled sugar only where its clause bears that out.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache

from assistant.recipes.clauses import Span, Word, clause_words, rows, waiting, words_in
from rules.recipes.phrases import any_phrase

FOOD, OVEN, FAT, SUGAR, WATER, HOLD, OTHER = "food", "oven", "fat", "sugar", "water", "hold", "other"
# What is warmed to a figure and stays at it.
WARMED = ("proof", "water", "other")
# Figures of an apparatus with a heat of its own can be anything hot [degC].
APPARATUS_C, APPARATUS_FAHRENHEIT_FROM = (30.0, 330.0), 131.0

_FLAGS = re.IGNORECASE
_COOKED_TO = re.compile(
    r"\b(?:cook|boil|cooked|boiled|cooking|boiling)\b[^.;]{0,40}\b(?:to|until|till)\s+[^.;]{0,40}$", _FLAGS
)
_OVEN_TO = re.compile(
    r"(?:\boven|\bpreheat(?:ed)?)\W+(?:(?!cook|bake|roast|internal|until|inside)\w+\W+){0,4}$|\boven:?\s*$", _FLAGS
)
_ABOUT = r"\W*(?:an?\s+)?(?:(?:about|around|nearly|roughly|between)\s+)?$"
_AT = re.compile(r"\b(?:at|in\s+an?|in)\s+(?:about\s+|around\s+|a\s+)?$", _FLAGS)
_FAT_BESIDE = re.compile(r"\s*(?:hot\s+|vegetable\s+|frying\s+|peanut\s+)?(?:oil|fat|lard)\b", _FLAGS)
_HEATED_TO = re.compile(r"\bheat(?:ed|ing)?\s+(?:it\s+|this\s+)?to\s+(?:about\s+)?$", _FLAGS)
_COOKED_AT = re.compile(r"\b(?:cook|cooking|continue|finish|place|set|put|return|slide)\b", _FLAGS)


@dataclass(frozen=True, slots=True)
class Role:
    """What a temperature can be of, as a row of the lexicon says.

    low_c, high_c: what it can be at [degC]; fahrenheit_from: a figure without a unit is degF from here on
    moves: whether conversion may rewrite it; near: told by the nearest word only; sentence: told by one anywhere in it
    reached, heated: what the clause must bear out
    """

    what: str
    low_c: float
    high_c: float
    fahrenheit_from: float
    moves: bool = False
    near: bool = False
    sentence: bool = False
    reached: bool = False
    heated: bool = False


@dataclass(frozen=True, slots=True)
class Place:
    """A figure of a text: where it stands, its clause and sentence, and the apparatus in use there."""

    text: str
    start: int
    end: int
    sentence: Span
    clause: Span
    apparatus: str = ""

    @property
    def before(self) -> str:
        """The words of the clause before the figure."""
        return self.text[self.clause.start : self.start]

    @property
    def said(self) -> str:
        """The words of the clause."""
        return self.text[self.clause.start : self.clause.end]

    @property
    def waited(self) -> bool:
        """Whether the figure is waited for: it stands behind an "until"."""
        waits = waiting(self.text, self.clause)
        return waits is not None and waits.start <= self.start

    @property
    def focus(self) -> Span:
        """The words that can tell what the figure is: what is waited for afterwards is another figure's."""
        waits = waiting(self.text, self.clause)
        return Span(self.clause.start, waits.start) if waits and waits.start > self.start else self.clause

    @property
    def to_reach(self) -> bool:
        """Whether the figure is one to be reached: "to 165", "until it reads 74 °C", "a minimum of 165 degrees"."""
        if _AT.search(self.before):
            return False
        return self.waited or bool(clause_word("reached", _ABOUT).search(self.before))


@cache
def roles() -> tuple[Role, ...]:
    """The roles in the order of the lexicon."""
    return tuple(
        Role(row["id"], **{key: value for key, value in row.items() if key not in ("id", "words")})
        for row in rows("temperature")
    )


@cache
def role(what: str) -> Role:
    """The first role of a name; one that only an apparatus has."""
    named = next((found for found in roles() if found.what == what), None)
    return named or Role(what, *APPARATUS_C, APPARATUS_FAHRENHEIT_FROM)


@cache
def clause_word(name: str, tail: str = "") -> re.Pattern[str]:
    """Any word of a list of the lexicon's section `clause`, with what must follow it."""
    return re.compile(any_phrase(clause_words(name)) + tail, _FLAGS)


def says(name: str, text: str) -> bool:
    """Whether a text says a word of a list of the lexicon's section `clause`."""
    return bool(clause_word(name).search(text))


def evidence(place: Place, *, terse: bool = False) -> Iterator[Role]:
    """What a figure may be of, best guess first. terse: it is an oven setting as cards have it ("350 - 10 min")."""
    strong = _strong(place)
    yield from (found for found in strong if not found.moves and found.what != HOLD)
    yield from _of_apparatus(place)
    yield from (found for found in strong if found.what == HOLD)
    if (_OVEN_TO.search(place.before) or terse) and not _of_apparatus(place):
        yield role(OVEN)
    if says("reset", place.before):
        yield from (found for found in _earlier(place, place.clause) if found.what in (OVEN, FAT))
    yield from (found for found in strong if found.moves and _borne_out(found, place))
    if _HEATED_TO.search(place.before):
        yield from (found for found in _within(place, place.sentence) if found.what == FAT and not found.near)
    if place.to_reach:
        yield from (found for found in _nearest(place) if found.what in WARMED and not place.waited)
        yield role(FOOD)
    yield from _nearest(place)
    if place.to_reach and _COOKED_TO.search(place.before):
        yield role(SUGAR)
    yield from (found for found in _earlier(place, place.sentence) if found.what != FAT)
    if _COOKED_AT.search(place.before) and place.apparatus == OVEN:
        yield role(OVEN)


def _strong(place: Place) -> list[Role]:
    """The roles told by any word of the clause, in the order of the lexicon, and those told by one of the sentence."""
    named = set(_within(place, place.focus))
    around = {found for found in _within(place, place.sentence) if found.sentence}
    return [found for found in roles() if found in named | around and not found.near]


def _within(place: Place, part: Span) -> list[Role]:
    return [roles()[word.row] for word in words_in("temperature", place.text, part.start, part.end)]


def _of_apparatus(place: Place) -> tuple[Role, ...]:
    """What a figure is of where the food cooks in something that is no oven."""
    row = next((r for r in rows("apparatus") if r["id"] == place.apparatus), {})
    return (role(row["temperature"]),) if row.get("temperature") else ()


def _nearest(place: Place) -> Iterator[Role]:
    """The roles named by single words of the sentence, the nearest before the figure first."""
    here = words_in("temperature", place.text, place.sentence.start, place.sentence.end)
    before = sorted((w for w in here if w.end <= place.start), key=lambda w: place.start - w.end)
    after = sorted((w for w in here if w.start >= place.end), key=lambda w: w.start - place.end)
    yield from (found for found in map(_role_of, (*before, *after)) if _borne_out(found, place))


def _earlier(place: Place, part: Span) -> Iterator[Role]:
    """The roles named before a piece of the text, the last first."""
    found = map(_role_of, reversed(words_in("temperature", place.text, 0, part.start)))
    yield from (one for one in found if not one.reached or place.to_reach)


def _role_of(word: Word) -> Role:
    return roles()[word.row]


def _borne_out(found: Role, place: Place) -> bool:
    """Whether the clause bears out what a word names: sugar is cooked to a figure, fat is heated or fried in."""
    if found.reached:
        return place.to_reach
    return not found.heated or says("heated", place.said) or bool(_FAT_BESIDE.match(place.text, place.end))
