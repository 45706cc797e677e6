"""Component: what went wrong with a dish, by the phrases of data/lexicon/symptoms.toml, compared by their stems.

The head of the file says how a phrase is written.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cache, lru_cache
from itertools import product
from typing import Literal

from spacy.language import Language
from spacy.tokens import Doc

from assistant.reading import groups
from assistant.reading.spans import Found
from assistant.reading.text import fold
from assistant.reading.tokens import norms
from assistant.understanding import concepts
from rules import tables
from rules.kept import kept

CATALOGUE = "lexicon/symptoms.toml"
GAP, EITHER, BOUND = "..", "|", "~"
LONGEST_GAP = 4
NEAR_ENOUGH = 80.0
# how far before a fault stands what denies it, or makes it a wish
DENIED_WITHIN, WISHED_WITHIN, FEARED_WITHIN = 2, 6, 2
AND, STOP = "and", "."
ENDS, JOINS = frozenset(".?!;:"), frozenset((",", "&", "/", "+", "and", "or", "but", "-"))
# spans whose words are no fault by themselves: split peas, and what stands after a plain adjective: dry beans
NAMED, AFTER = ("dish", "place"), ("dish", "ingredient", "equipment")

groups.shown("faults", "fault")


@dataclass(frozen=True, slots=True)
class Fault:
    """A fault where it was heard: tokens, end exclusive.

    symptom: a row of the catalogue
    said: told as what happened; named as what a dish is like, gummy rice; or wished: feared, asked about, will it sink
    size: how many words tell it
    """

    start: int
    end: int
    symptom: str
    said: Literal["told", "named", "wished"]
    size: int

    @property
    def told(self) -> bool:
        """Whether it happened."""
        return self.said == "told"


@dataclass(frozen=True, slots=True)
class Phrase:
    """A phrase of the catalogue.

    words: for each place the stems that may stand there, None for a gap
    bound: it counts only where something is said to be so; not_before, not_behind: stems that make it another thing
    """

    words: tuple[frozenset[str] | None, ...]
    symptom: str
    bound: bool
    not_before: frozenset[str]
    not_behind: frozenset[str]


@dataclass(frozen=True, slots=True)
class Line:
    """An utterance without its little words: the stem of each that is left, and which token it is.

    before: the stem of the token right before each, a little word or not
    """

    stems: tuple[str, ...]
    at: tuple[int, ...]
    before: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Match:
    """A phrase found in a line: the places of its words there."""

    phrase: Phrase
    places: tuple[int, ...]


@Language.component(
    "kitchen_faults", requires=["doc._.found", "doc._.elevations"], assigns=["doc._.faults", "doc._.found"]
)
def kitchen_faults(doc: Doc) -> Doc:
    """Hear every fault; a dish that is only likened to is none: one giant pancake."""
    faults, left = hear(doc)
    groups.keep(doc, "faults", faults)
    symptoms = (Found(f.start, f.end, "symptom", f.symptom) for f in faults if f.said != "named" and _is_free(f, left))
    doc._.found = (*left, *symptoms)
    return doc


def _is_free(fault: Fault, found: Sequence[Found]) -> bool:
    return not any(f.start < fault.end and fault.start < f.end for f in found)


def heard_in(text: str) -> tuple[str, ...]:
    """The faults in the words of a cook, without a dish beside them.

    >>> heard_in("sank in the middle"), heard_in("never set")
    (('sank_in_the_middle',), ('not_set',))
    """
    words = fold(text).split()
    line = _line(words)
    return tuple(dict.fromkeys(m.phrase.symptom for m in _settled(line, _matches(line), frozenset(), {})))


def stands(words: Sequence[str], written: tuple[str, ...]) -> bool:
    """Whether one of some phrases, written as those of the catalogue, stands among the words.

    >>> stands("i never opened the oven door".split(), ("NOT open door", "NOT open oven"))
    True
    """
    line = _line(words)
    return any(
        line.stems[start] in (phrase.words[0] or ()) and _places(line.stems, start + 1, phrase.words[1:]) is not None
        for phrase in _written(written)
        for start in range(len(line.stems))
    )


@cache
def _written(written: tuple[str, ...]) -> tuple[Phrase, ...]:
    return tuple(_phrase(one, "", frozenset(), frozenset()) for one in written)


def told(doc: Doc) -> tuple[str, ...]:
    """The faults of an utterance: what happened before what is only spoken of, what is told in more words first."""
    order = ("told", "named", "wished")
    ranked = sorted(doc._.faults, key=lambda fault: (order.index(fault.said), -fault.size))
    return tuple(dict.fromkeys(fault.symptom for fault in ranked))


def said_of(doc: Doc) -> str | None:
    """The dish that a fault is said of in so many words, right before it: but the okra takes ages."""
    passed = _lists()["SKIPPED"] | _lists()["BE"]
    for fault in (fault for fault in doc._.faults if fault.told):
        at = fault.start
        while at and stem(norms(doc)[at - 1]) in passed:
            at -= 1
        dish = next((f.id for f in doc._.found if f.kind == "dish" and f.end == at), None)
        if dish:
            return dish
    return None


def nearest(text: str) -> str | None:
    """The fault whose phrase is nearest to the words of a cook, word by word."""
    from rapidfuzz import fuzz, process

    near = process.extractOne(text, list(plain_phrases()), scorer=fuzz.token_set_ratio, score_cutoff=NEAR_ENOUGH)
    return plain_phrases()[near[0]] if near else None


def hear(doc: Doc) -> tuple[tuple[Fault, ...], tuple[Found, ...]]:
    """The faults of an utterance in its order, and what else was found that is not part of one."""
    line = _line(norms(doc))
    named = {i: f for f in doc._.found if f.kind in NAMED for i in range(f.start, f.end)}
    things = frozenset(i for f in doc._.found if f.kind in AFTER for i in range(f.start, f.end))
    kept = _settled(line, _matches(line), things, named)
    likened = {named[i] for m in kept if _likens(line, m) for i in (line.at[p] for p in m.places) if i in named}
    faults = sorted((_fault(line, m, things) for m in kept), key=lambda f: f.start)
    return tuple(faults), tuple(f for f in doc._.found if f not in likened)


def _likens(line: Line, match: Match) -> bool:
    """Whether a phrase likens the dish to another: like a pancake, one giant pancake."""
    return line.stems[match.places[0]] in _lists()["LIKENED"] | _lists()["ONE"]


def _fault(line: Line, match: Match, things: frozenset[int]) -> Fault:
    first, last = line.at[match.places[0]], line.at[match.places[-1]]
    said: Literal["told", "named", "wished"] = "told"
    if _is_wished(line, match):
        said = "wished"
    elif _is_attribute(line, match, things):
        said = "named"
    return Fault(first, last + 1, match.phrase.symptom, said, len(match.places))


def _is_attribute(line: Line, match: Match, things: frozenset[int]) -> bool:
    """Whether a single word stands before the dish it is said of: gummy rice."""
    before = line.stems[match.places[0] - 1] if match.places[0] else ""
    behind = line.at[match.places[-1]] + 1
    return len(match.places) == 1 and behind in things and before not in _lists()["BE"]


# about all the words that kitchens use; people never run out of new words
@lru_cache(maxsize=8192)
def stem(word: str) -> str:
    """The form in which a word is compared.

    >>> stem("puffing") == stem("puffs"), stem("hardly") == stem("hard")
    (True, False)
    """
    if word in tables.read_toml(CATALOGUE)["words"]["EXACT"]:
        return word
    stemmed = concepts.stem(word)
    return stemmed[:-1] if stemmed.endswith("ff") and len(stemmed) > 3 else stemmed


@cache
def _lists() -> dict[str, frozenset[str]]:
    """The lists of words that phrases name in capitals, and those by which a fault is told."""
    rows: dict[str, list[str]] = tables.read_toml(CATALOGUE)["words"]
    return {name: frozenset(stem(fold(word)) for word in words) for name, words in rows.items()}


@kept
def phrases() -> dict[str, tuple[Phrase, ...]]:
    """Every phrase by the stem it begins with, in the order of the catalogue."""
    found: dict[str, list[Phrase]] = defaultdict(list)
    for row in tables.read_toml(CATALOGUE)["symptom"]:
        beside = [frozenset(stem(fold(word)) for word in row.get(side, ())) for side in ("not_before", "not_behind")]
        for written in row["heard_as"]:
            phrase = _phrase(written, row["id"], *beside)
            for first in phrase.words[0] or ():
                found[first].append(phrase)
    return {first: tuple(those) for first, those in found.items()}


def _phrase(written: str, symptom: str, not_before: frozenset[str], not_behind: frozenset[str]) -> Phrase:
    words = tuple(None if word == GAP else _choice(word) for word in written.removeprefix(BOUND).split())
    kept = tuple(choice for choice in words if choice is None or choice)
    return Phrase(kept, symptom, written.startswith(BOUND), not_before, not_behind)


def _choice(word: str) -> frozenset[str]:
    """The stems of a place in a phrase; none of a little word, which the text has lost as well."""
    found: set[str] = set()
    for one in word.split(EITHER):
        found |= _lists()[one] if one.isupper() else {stem(fold(one))} - _lists()["SKIPPED"]
    return frozenset(found)


@kept
def words() -> frozenset[str]:
    """Every word of the catalogue as it is written there."""
    written = (w for row in tables.read_toml(CATALOGUE)["symptom"] for p in row["heard_as"] for w in p.split())
    plain = (one for word in written for one in word.strip(BOUND).split(EITHER) if one != GAP and not one.isupper())
    listed = (word for row in tables.read_toml(CATALOGUE)["words"].values() for word in row)
    return frozenset(fold(word) for word in (*plain, *listed))


@cache
def plain_phrases() -> dict[str, str]:
    """Phrases without gaps and lists, with their rows: what words that fit none are compared with."""
    found: dict[str, str] = {}
    for row in tables.read_toml(CATALOGUE)["symptom"]:
        for written in row["heard_as"]:
            choices = [word.split(EITHER) for word in written.removeprefix(BOUND).split()]
            if GAP not in written and not any(one.isupper() for choice in choices for one in choice):
                found |= {fold(" ".join(way)): row["id"] for way in product(*choices)}
        found.setdefault(fold(row["title"]), row["id"])
    return found


def _line(tokens: Sequence[str]) -> Line:
    skipped = _lists()["SKIPPED"]
    every = [STOP if word in ENDS else AND if word in JOINS else stem(word) for word in tokens]
    at = [i for i, found in enumerate(every) if found not in skipped and (found == STOP or found[:1].isalnum())]
    return Line(tuple(every[i] for i in at), tuple(at), tuple(every[i - 1] if i else "" for i in at))


def _matches(line: Line) -> Iterator[Match]:
    for start, first in enumerate(line.stems):
        for phrase in phrases().get(first, ()):
            if line.before[start] in phrase.not_behind:
                continue
            places = _places(line.stems, start + 1, phrase.words[1:])
            if places is not None and _next(line, places[-1] if places else start) not in phrase.not_before:
                yield Match(phrase, (start, *places))


def _next(line: Line, place: int) -> str:
    return line.stems[place + 1] if place + 1 < len(line.stems) else ""


def _places(stems: Sequence[str], at: int, words: Sequence[frozenset[str] | None]) -> tuple[int, ...] | None:
    """Where the words of a phrase stand from a place on; None where they do not."""
    if not words:
        return ()
    first = words[0]
    if first is None:
        return _behind_gap(stems, at, words[1:])
    if at < len(stems) and stems[at] in first:
        rest = _places(stems, at + 1, words[1:])
        return None if rest is None else (at, *rest)
    return None


def _behind_gap(stems: Sequence[str], at: int, words: Sequence[frozenset[str] | None]) -> tuple[int, ...] | None:
    for start in range(at, min(at + LONGEST_GAP, len(stems) - 1) + 1):
        found = _places(stems, start, words)
        if found is not None or stems[start] == STOP:
            return found
    return None


def _settled(
    line: Line, matches: Iterator[Match], things: frozenset[int], named: dict[int, Found]
) -> tuple[Match, ...]:
    """Of phrases over the same words the longest, then the first of the catalogue; none that is denied or a name."""
    order = sorted(matches, key=lambda m: -len(m.places))
    kept: list[Match] = []
    waiting = [m for m in order if not _is_denied(line, m) and not _is_name(line, m, named)]
    for _ in range(2):
        for match in waiting:
            free = not any(set(match.places) & set(k.places) for k in kept)
            if free and (not match.phrase.bound or _is_said(line, match, kept, things, named)):
                kept.append(match)
    return tuple(kept)


def _is_name(line: Line, match: Match, named: dict[int, Found]) -> bool:
    """Whether a phrase takes words out of the name of a dish or a place, or is nothing but one."""
    # the dough of a pizza dough is a part of it, and no name
    own = {line.at[p] for p in match.places if line.stems[p] not in _lists()["PARTS"]}
    every = {line.at[p] for p in match.places}
    touched = {named[i] for i in own if i in named}
    # two words besides the name tell it all the same: the tempura batter slides off
    beside = sum(i not in named for i in own)
    return beside < 2 and any(not set(range(f.start, f.end)) < every for f in touched)


def _is_said(line: Line, match: Match, kept: Sequence[Match], things: frozenset[int], named: dict[int, Found]) -> bool:
    """Whether something is said to be so: it is hard, still hard, the crust hard, pale and hard; not hard cider."""
    first, last = match.places[0], match.places[-1]
    before = line.stems[first - 1] if first else ""
    if not kept and not named and len(match.places) == len(line.stems):
        return True
    joined = {p for k in kept for p in k.places}
    if before == AND and (first - 2 in joined or (first > 1 and line.at[first - 2] in named)):
        return True
    if before == AND and first > 2 and line.stems[first - 3] in _lists()["BE"]:
        return True
    if _next(line, last) == AND and last + 2 in joined:
        return True
    if _is_attribute(line, match, things):
        return True
    says = before in _lists()["BE"] or before in _lists()["PARTS"]
    return says or (first > 0 and line.at[first - 1] in named and named[line.at[first - 1]].kind == "dish")


def _is_denied(line: Line, match: Match) -> bool:
    """Whether a word right before it denies it: not gummy, no lumps. A phrase that begins with one is its own."""
    first = match.places[0]
    if line.stems[first] in _lists()["NOT"]:
        return False
    for place in range(first - 1, max(first - 1 - DENIED_WITHIN, -1), -1):
        if line.stems[place] in (STOP, AND):
            return False
        if line.stems[place] in _lists()["NOT"]:
            return True
    return False


def _is_wished(line: Line, match: Match) -> bool:
    """Whether it is feared, avoided or asked about: will it sink, so that it does not boil over, if it cracks."""
    first, wishes, asks = match.places[0], _lists()["WISHED"], _lists()["ASKED"]
    if line.stems[first] in _lists()["NOT"]:
        # will not rise: the verb belongs to it
        first -= 1
    for place in range(first - 1, max(first - 1 - WISHED_WITHIN, -1), -1):
        if line.stems[place] == STOP:
            return False
        if line.stems[place] in _lists()["FEARED"] and first - place <= FEARED_WITHIN:
            return True
        if line.stems[place] in wishes:
            return True
        if line.stems[place] in asks and "like" in line.stems[max(place - 2, 0) : place]:
            # melts like it should: said of what is right
            continue
        if line.stems[place] in asks:
            return not any(word in _lists()["WHY"] for word in line.stems[max(place - 2, 0) : place])
    return False
