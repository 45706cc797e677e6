"""Which explanation is asked for, or which belief was stated, by what it is about and the words it shares.

An explanation, or a belief about one, is near when all it is about was said; among those the one that shares most words
with the question is meant, rare words counting for more, as long as it leaves little of the question unexplained.
"""

from __future__ import annotations

import math
from collections import Counter, defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from functools import cache
from itertools import pairwise

from assistant.understanding.senses import SENSE, Slot, alternative, features_of
from rules.topics.why import Polarity, catalogue

# how much words side by side add, each part of what it is about, and a word that no explanation has
PAIR, FRAME, UNKNOWN = 0.6, 0.7, 2.4
# the least of a question that a reason explains; so much that what it is about need not be said in full
LEAST, WHOLE = 0.28, 0.97
# how much a belief gains that was stated as it stands
STATED = 2.0
# how much more a rare word counts
RARE = 1.2
FOREMOST = 16

Part = tuple[frozenset[str], tuple[frozenset[str], ...]]
Frame = tuple[Part, ...]
NOTHING: Part = (frozenset(), ())


@dataclass(frozen=True, slots=True)
class Candidate:
    """An explanation, or a belief about it.

    about: what has to be heard, each with its alternatives; never: what must not be heard
    features: of all its phrases; pairs: of words side by side
    """

    row: str
    belief: str | None
    polarity: Polarity
    about: Frame
    never: Part
    features: frozenset[str]
    pairs: frozenset[tuple[str, str]]


@dataclass(frozen=True, slots=True)
class Match:
    """How near a candidate is.

    score: weight of what it shares; share: of the question; framed: whether all it is about was said
    telling: the weight of the rarest word that it shares
    """

    of: Candidate
    score: float
    share: float
    framed: bool
    telling: float

    @property
    def near(self) -> bool:
        """Whether it may be meant: all it is about was said, and some of the rest is explained; or all of it is."""
        return (self.framed and self.share >= LEAST) or self.share >= WHOLE


@dataclass(frozen=True, slots=True)
class Index:
    """The catalogue made ready: the candidates, the weight of each feature, and in which candidates it stands."""

    candidates: tuple[Candidate, ...]
    weights: dict[str, float]
    holders: dict[str, tuple[int, ...]]


@cache
def index() -> Index:
    """The catalogue, made ready once."""
    made = tuple(_candidates())
    rows: Counter[str] = Counter()
    for row in {candidate.row for candidate in made}:
        rows.update({f for candidate in made if candidate.row == row for f in candidate.features})
    many = len({candidate.row for candidate in made})
    holders: dict[str, list[int]] = defaultdict(list)
    for at, candidate in enumerate(made):
        for feature in candidate.features:
            holders[feature].append(at)
    weights = {feature: (0.4 + math.log(many / count)) ** RARE for feature, count in rows.items()}
    return Index(made, weights, {feature: tuple(at) for feature, at in holders.items()})


def _candidates() -> Iterable[Candidate]:
    for row in catalogue():
        given = {f"<{name}>" for name in (*row.classes, *row.methods)}
        phrases = tuple(map(features_of, (row.title, *row.heard_as)))
        never = _part(row.not_about) if row.not_about else NOTHING
        yield Candidate(
            row.id, None, "either", _frame(row.about), never, _all(phrases, row.about) | given, _pairs(phrases)
        )
        for id, belief in row.beliefs.items():
            said = tuple(map(features_of, belief.heard_as))
            held = _all(said, belief.about)
            yield Candidate(row.id, id, belief.polarity, _frame(belief.about), never, held, _pairs(said))


def _frame(about: Sequence[str]) -> Frame:
    return tuple(map(_part, about))


def _part(alternatives: str) -> Part:
    """One part of a frame: what tells it by one feature, and what by several."""
    said = tuple(map(alternative, alternatives.split("|")))
    alone = frozenset(feature for words in said if len(words) == 1 for feature in words)
    return alone, tuple(words for words in said if len(words) > 1)


def _all(phrases: Iterable[Sequence[frozenset[str]]], about: Sequence[str]) -> frozenset[str]:
    of_frame = (alternative(words) for part in about for words in part.split("|"))
    return frozenset().union(*(word for phrase in phrases for word in phrase), *of_frame)


def _pairs(phrases: Iterable[Sequence[frozenset[str]]]) -> frozenset[tuple[str, str]]:
    return frozenset((a, b) for phrase in phrases for one, two in pairwise(phrase) for a in one for b in two)


def ranked(said: Sequence[Slot], idle: frozenset[str], *, beliefs: bool) -> list[Match]:
    """The candidates that share most with what was said, the nearest first; ties in the catalogue's order.

    idle: stems of words that say nothing by themselves, but may tell together with others what is meant
    """
    matches = [match for match in every_match(said, idle) if beliefs or match.of.belief is None]
    return with_pairs(said, matches)


def every_match(said: Sequence[Slot], idle: frozenset[str] = frozenset()) -> list[Match]:
    """Every candidate that shares a word with what was said and is not ruled out by it, the nearest first."""
    book = index()
    heard = idle.union(*(slot.features for slot in said))
    whole = sum(_weight(slot, book) for slot in said if slot.counts) or 1.0
    told, counted, telling = _shared(said, book)
    matches = []
    for i in sorted(told):
        of = book.candidates[i]
        if not _holds(of.never, heard):
            framed = all(_holds(part, heard) for part in of.about)
            extra = FRAME * len(of.about) + (STATED if of.belief else 0.0) if framed else 0.0
            matches.append(Match(of, told[i] + extra, counted[i] / whole, framed, telling[i]))
    return sorted(matches, key=lambda match: (not match.near, -match.score))


def _holds(part: Part, heard: frozenset[str]) -> bool:
    """Whether one of the alternatives of a part was heard."""
    alone, together = part
    return not alone.isdisjoint(heard) or any(map(heard.issuperset, together))


def with_pairs(said: Sequence[Slot], matches: list[Match]) -> list[Match]:
    """The foremost matches ranked once more, by the words that stand side by side as in their phrases."""
    beside = tuple((one.features, two.features) for one, two in pairwise(said))
    foremost = [
        replace(match, score=match.score + PAIR * sum(_pair(one, two, match.of.pairs) for one, two in beside))
        for match in matches[:FOREMOST]
    ]
    return sorted(foremost, key=lambda match: (not match.near, -match.score))


def _pair(one: frozenset[str], two: frozenset[str], pairs: frozenset[tuple[str, str]]) -> bool:
    return any((a, b) in pairs for a in one for b in two)


def _weight(slot: Slot, book: Index) -> float:
    return max(book.weights.get(feature, 0.0 if feature[0] == SENSE else UNKNOWN) for feature in slot.features)


Weights = dict[int, float]


def _shared(said: Sequence[Slot], book: Index) -> tuple[Weights, Weights, Weights]:
    """The weight that each candidate shares with what was said: in all, of the words that count, of the rarest word."""
    told: Weights = defaultdict(float)
    counted: Weights = defaultdict(float)
    telling: Weights = {}
    for slot in said:
        best: Weights = {}
        for feature in slot.features:
            weight = book.weights.get(feature, 0.0)
            for i in book.holders.get(feature, ()):
                if weight > best.get(i, 0.0):
                    best[i] = weight
        for i, weight in best.items():
            told[i] += weight
            telling[i] = max(weight, telling.get(i, 0.0))
            if slot.counts:
                counted[i] += weight
    return told, counted, telling
