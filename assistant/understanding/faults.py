"""Component: what went wrong with a dish, by the phrases of data/lexicon/symptoms.toml, compared by their stems.

The head of the file says how a phrase is written.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cache
from itertools import product

from spacy.language import Language
from spacy.tokens import Doc

from assistant.reading import groups
from assistant.reading.spans import Found
from assistant.reading.text import fold
from assistant.understanding.concepts import stem
from rules import tables

CATALOGUE = "lexicon/symptoms.toml"
GAP, EITHER, BOUND = "..", "|", "~"
LONGEST_GAP = 3
NEAR_ENOUGH = 80.0
# how far before a fault stands what denies it, or makes it a wish
DENIED_WITHIN, WISHED_WITHIN = 2, 6
AND, STOP = "and", "."
ENDS, JOINS = frozenset(".?!;:"), frozenset((",", "&", "/", "+", "and", "or", "but", "-"))
# spans whose words are no fault by themselves: split peas, and what stands after a plain adjective: dry beans
NAMED, AFTER = ("dish", "place"), ("dish", "ingredient", "equipment")

groups.shown("faults", "fault")


@dataclass(frozen=True, slots=True)
class Fault:
    """A fault where it was heard: tokens, end exclusive.

    symptom: a row of the catalogue; told: as what happened, not as what is feared, avoided or asked about
    size: how many words told it
    """

    start: int
    end: int
    symptom: str
    told: bool
    size: int


@dataclass(frozen=True, slots=True)
class Phrase:
    """A phrase of the catalogue.

    words: for each place the stems that may stand there, None for a gap
    bound: it counts only where something is said to be so; not_before: stems that make it another thing
    """

    words: tuple[frozenset[str] | None, ...]
    symptom: str
    bound: bool
    not_before: frozenset[str]


@dataclass(frozen=True, slots=True)
class Line:
    """An utterance without its little words: the stem of each that is left, and which token it is."""

    stems: tuple[str, ...]
    at: tuple[int, ...]


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
    doc._.found = (*left, *(Found(f.start, f.end, "symptom", f.symptom) for f in faults if _is_free(f, left)))
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


def told(doc: Doc) -> tuple[str, ...]:
    """The faults of an utterance, those that happened before those that are only spoken of."""
    return tuple(dict.fromkeys(fault.symptom for fault in sorted(doc._.faults, key=lambda fault: not fault.told)))


def nearest(text: str) -> str | None:
    """The fault whose phrase is nearest to the words of a cook, word by word."""
    from rapidfuzz import fuzz, process

    near = process.extractOne(text, list(plain_phrases()), scorer=fuzz.token_set_ratio, score_cutoff=NEAR_ENOUGH)
    return plain_phrases()[near[0]] if near else None


def hear(doc: Doc) -> tuple[tuple[Fault, ...], tuple[Found, ...]]:
    """The faults of an utterance in its order, and what else was found that is not part of one."""
    line = _line([token.norm_ for token in doc])
    named = {i: f for f in doc._.found if f.kind in NAMED for i in range(f.start, f.end)}
    things = frozenset(i for f in doc._.found if f.kind in AFTER for i in range(f.start, f.end))
    # a phrase of nothing but measures and figures tells no fault
    kept = _settled(line, _matches(line), things, named)
    likened = {
        named[i] for m in kept for i in (line.at[p] for p in m.places) if i in named and len(m.places) > len(named[i])
    }
    faults = sorted((_fault(line, m) for m in kept), key=lambda f: f.start)
    return tuple(faults), tuple(f for f in doc._.found if f not in likened)


def _fault(line: Line, match: Match) -> Fault:
    first, last = line.at[match.places[0]], line.at[match.places[-1]]
    return Fault(first, last + 1, match.phrase.symptom, not _is_wished(line, match), len(match.places))


@cache
def _lists() -> dict[str, frozenset[str]]:
    """The lists of words that phrases name in capitals, and those by which a fault is told."""
    rows: dict[str, list[str]] = tables.read_toml(CATALOGUE)["words"]
    return {name: frozenset(stem(fold(word)) for word in words) for name, words in rows.items()}


@cache
def phrases() -> dict[str, tuple[Phrase, ...]]:
    """Every phrase by the stem it begins with, in the order of the catalogue."""
    found: dict[str, list[Phrase]] = defaultdict(list)
    for row in tables.read_toml(CATALOGUE)["symptom"]:
        not_before = frozenset(stem(fold(word)) for word in row.get("not_before", ()))
        for written in row["heard_as"]:
            phrase = _phrase(written, row["id"], not_before)
            for first in phrase.words[0] or ():
                found[first].append(phrase)
    return {first: tuple(those) for first, those in found.items()}


def _phrase(written: str, symptom: str, not_before: frozenset[str]) -> Phrase:
    words = tuple(None if word == GAP else _choice(word) for word in written.removeprefix(BOUND).split())
    kept = tuple(choice for choice in words if choice is None or choice)
    return Phrase(kept, symptom, written.startswith(BOUND), not_before)


def _choice(word: str) -> frozenset[str]:
    """The stems of a place in a phrase; none of a little word, which the text has lost as well."""
    found: set[str] = set()
    for one in word.split(EITHER):
        found |= _lists()[one] if one.isupper() else {stem(fold(one))} - _lists()["SKIPPED"]
    return frozenset(found)


@cache
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
    stems, at = [], []
    for i, word in enumerate(tokens):
        stemmed = STOP if word in ENDS else AND if word in JOINS else stem(word)
        if stemmed not in skipped and (stemmed == STOP or stemmed[0].isalnum()):
            stems.append(stemmed)
            at.append(i)
    return Line(tuple(stems), tuple(at))


def _matches(line: Line) -> Iterator[Match]:
    for start, first in enumerate(line.stems):
        for phrase in phrases().get(first, ()):
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
    own = {line.at[p] for p in match.places}
    touched = {named[i] for i in own if i in named}
    return any(not set(range(f.start, f.end)) < own for f in touched)


def _is_said(
    line: Line, match: Match, kept: Sequence[Match], things: frozenset[int], named: dict[int, Found]
) -> bool:
    """Whether something is said to be so: it is hard, still hard, the crust hard, pale and hard; not hard cider."""
    first, last = match.places[0], match.places[-1]
    before = line.stems[first - 1] if first else ""
    if not kept and not named and len(match.places) == len(line.stems):
        return True
    joined = {p for k in kept for p in k.places}
    if before == AND and first - 2 in joined:
        return True
    if _next(line, last) == AND and last + 2 in joined:
        return True
    follows = line.at[last] + 1
    if follows in things and _next(line, last) not in ("", STOP, AND):
        return False
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
    for place in range(first - 1, max(first - 1 - WISHED_WITHIN, -1), -1):
        if line.stems[place] == STOP:
            return False
        if line.stems[place] in wishes:
            return True
        if line.stems[place] in asks:
            return not any(word in _lists()["WHY"] for word in line.stems[max(place - 2, 0) : place])
    return False
