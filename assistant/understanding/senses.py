"""What the words of an utterance say where a reason is asked for: stems, senses, and what the lexicon heard in them."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from functools import cache, lru_cache

from spacy.tokens import Doc

from assistant.reading.spans import Number
from assistant.reading.text import fold
from assistant.reading.tokens import norms
from assistant.understanding.concepts import CANNING, stem, stems
from rules import tables
from rules.foods.dishes import dishes

FILE = "lexicon/senses.toml"
SENSE = "&"
# a word that says nothing, but for the verb
CAN = "can"
# a figure of an elevation: of no weight by itself
HEIGHT = "<elevation>"
# a pressure reduced to sea level, beside words of the air and a place
REDUCED, REPORTED_HPA = "<reduced>", (985.0, 1045.0)
OF_AIR = frozenset(("barometer", "pressure", "hpa", "mbar", "millibar", "millibars", "weather", "app"))
# kinds of spans that say where or how much, but not what is asked about
APART = frozenset(("place",))


@dataclass(frozen=True, slots=True)
class Slot:
    """A word that says something: what it may stand for. counts: whether leaving it out tells against a reason"""

    features: frozenset[str]
    counts: bool = True


@dataclass(frozen=True, slots=True)
class Senses:
    """The catalogue.

    of_phrase: a phrase by its stems -> its senses; idle: phrases that say nothing; ids: of the senses
    broad: senses of so many things that their words tell nothing more; longest: words of the longest phrase
    """

    of_phrase: dict[str, tuple[str, ...]]
    idle: frozenset[str]
    ids: frozenset[str]
    broad: frozenset[str]
    longest: int


@cache
def senses() -> Senses:
    """The catalogue of senses."""
    held = tables.read_toml(FILE)
    of_phrase: dict[str, tuple[str, ...]] = {}
    for row in held["sense"]:
        for word in row["words"]:
            key = stems_of(word)
            of_phrase[key] = tuple(dict.fromkeys((*of_phrase.get(key, ()), SENSE + row["id"])))
    idle = frozenset(map(stems_of, (*held["idle"], *held["idle_phrases"])))
    longest = max(phrase.count(" ") for phrase in (*of_phrase, *idle)) + 1
    ids = frozenset(row["id"] for row in held["sense"])
    broad = frozenset(SENSE + row["id"] for row in held["sense"] if row.get("broad"))
    return Senses(of_phrase, idle, ids, broad, longest)


@cache
def words(name: str) -> frozenset[str]:
    """A list of words of the catalogue: negations, auxiliaries, claims."""
    return frozenset(tables.read_toml(FILE)[name])


@cache
def claimants() -> dict[str, frozenset[str]]:
    """Who may hold a belief, by id: the words for each."""
    return {id: frozenset(words) for id, words in tables.read_toml(FILE)["claimants"].items()}


@cache
def every_word() -> frozenset[str]:
    """Every word of the catalogue as it is written."""
    held = tables.read_toml(FILE)
    return frozenset(word for row in held["sense"] for phrase in row["words"] for word in phrase.split())


# every phrase of the lexicon that is asked for, with room; people never run out of new words
@lru_cache(maxsize=4096)
def stems_of(phrase: str) -> str:
    """A phrase by the stems of its words.

    >>> stems_of("Boils sooner")
    'boil sooner'
    """
    return " ".join(stem(word) for word in fold(phrase).split())


def heard_in(doc: Doc) -> frozenset[str]:
    """What may tell with other words what is meant, though it says nothing by itself: stems, a figure of height."""
    high = any(height.place is None for height in doc._.elevations)
    at_sea = bool(doc._.elevations) and not OF_AIR.isdisjoint(norms(doc)) and any(map(is_at_sea, doc._.numbers))
    return frozenset((*stems(doc), *((HEIGHT,) if high else ()), *((REDUCED,) if at_sea else ())))


def is_at_sea(number: Number) -> bool:
    """Whether a number is a pressure such as weather reports have [hPa]: no kitchen up high reads it."""
    return REPORTED_HPA[0] <= number.value <= REPORTED_HPA[1]


def slots(doc: Doc, within: range | None = None) -> tuple[Slot, ...]:
    """The words of an utterance that say something, each with all it may stand for; within: only those there."""
    lexical = _of_lexicon(doc)
    figures = {i for m in (*doc._.measures, *doc._.clock, *doc._.numbers) for i in range(m.start, m.end)}
    places = {i for e in doc._.elevations for i in range(e.start, e.end)}
    places |= {i for f in doc._.found if f.kind in APART for i in range(f.start, f.end)}
    towns = [range(e.start, e.end) for e in doc._.elevations if e.place]
    told = [
        Slot(frozenset((SENSE + CANNING,)), counts=False)
        for features in lexical.values()
        if SENSE + CANNING in features
    ][:1]
    for start, end, features in _told(stems(doc)):
        inside = range(start, end)
        if within is not None and start not in within:
            continue
        if any(len(inside) < len(town) and start in town and end - 1 in town for town in towns):
            continue
        more = frozenset(feature for i in inside for feature in lexical.get(i, ()))
        of_name = len(inside) == 1 and places.issuperset(inside)
        if more or (any(feature[0] == SENSE for feature in features) and not of_name):
            told.append(Slot(features | more))
        elif not places.intersection(inside) or figures.intersection(inside):
            told.append(Slot(features, counts=not figures.intersection(inside)))
    return tuple(slot for slot in told if any(sign.isalnum() for feature in slot.features for sign in feature))


def features_of(phrase: str) -> tuple[frozenset[str], ...]:
    """The features of the words of a phrase of the catalogue, in order."""
    return tuple(features for _, _, features in _told(stems_of(phrase).split()))


def alternative(words: str) -> frozenset[str]:
    """What has to be heard for one alternative: a sense, stems, or what the lexicon hears.

    >>> sorted(alternative("steam kettle")), alternative("lid"), alternative("<egg>")
    (['kettl', 'steam'], frozenset({'&lid'}), frozenset({'<egg>'}))
    """
    if words.startswith("<"):
        return frozenset((words,))
    if words in senses().ids:
        return frozenset((SENSE + words,))
    return frozenset(stem(word) for word in fold(words).split())


def _told(stems: Sequence[str]) -> Iterator[tuple[int, int, frozenset[str]]]:
    """Runs of words with their stems and senses, the longest phrases first; what says nothing is left out."""
    book, at = senses(), 0
    while at < len(stems):
        end, key = _longest(stems, at, book)
        meant = book.of_phrase.get(key)
        if meant is not None:
            own = () if book.broad.issuperset(meant) else stems[at:end]
            yield at, end, frozenset((*own, *meant, *_inner(stems[at:end], book)))
        elif key not in book.idle:
            yield at, end, frozenset(stems[at:end])
        at = end


def _longest(stems: Sequence[str], at: int, book: Senses) -> tuple[int, str]:
    for end in range(min(at + book.longest, len(stems)), at + 1, -1):
        key = " ".join(stems[at:end])
        if key in book.of_phrase or key in book.idle:
            return end, key
    return at + 1, stems[at]


def _inner(stems: Sequence[str], book: Senses) -> Iterable[str]:
    """The senses of the words of a phrase by themselves."""
    return (sense for word in stems for sense in book.of_phrase.get(word, ())) if len(stems) > 1 else ()


def _of_lexicon(doc: Doc) -> dict[int, tuple[str, ...]]:
    """Word -> the class of its dish, its method, its equipment, and whether it tells that food is put up in jars."""
    told: dict[int, tuple[str, ...]] = {}
    for found in doc._.found:
        if found.kind in ("dish", "method", "equipment"):
            id = dishes()[found.id].dish_class if found.kind == "dish" else found.id
            for i in range(found.start, found.end):
                told[i] = (*told.get(i, ()), f"<{id}>")
    for heard in doc._.concepts:
        if heard.concept == CANNING and norms(doc)[heard.start] == CAN:
            told[heard.start] = (*told.get(heard.start, ()), SENSE + CANNING)
    return told
