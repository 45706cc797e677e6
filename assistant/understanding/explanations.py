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

import numpy as np
from numpy.typing import NDArray

from assistant.understanding.senses import SENSE, Slot, alternative, features_of
from rules.topics.why import Polarity, catalogue, rows

# how much words side by side add, each part of what it is about, and a word that no explanation has
PAIR, FRAME, UNKNOWN = 0.6, 0.7, 2.4
# the least of a question that a reason explains; so much that what it is about need not be said in full
LEAST, WHOLE = 0.28, 0.97
# how much a belief gains that was stated as it stands
STATED = 2.0
# how much more a rare word counts
RARE = 1.2
# how much a candidate has to share, of what the nearest shares, to be looked at; how many are ranked by pairs
WORTH, FOREMOST = 0.3, 16
# how much a figure that was said tells of what is meant, beside a word
FIGURES = 0.5

Part = tuple[frozenset[str], tuple[frozenset[str], ...]]
Frame = tuple[Part, ...]
Row = NDArray[np.float64]
Numbers = NDArray[np.intp]
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


class Index:
    """The catalogue made ready: the candidates, and the weight of each feature.

    all, explanations: numbers of candidates, with and without beliefs
    """

    def __init__(self, candidates: tuple[Candidate, ...]) -> None:
        """Weigh every feature by how few explanations have it."""
        self.candidates = candidates
        rows: dict[str, set[str]] = defaultdict(set)
        for candidate in candidates:
            rows[candidate.row] |= candidate.features
        counted = Counter(feature for features in rows.values() for feature in features)
        self.weights = {f: (0.4 + math.log(len(rows) / count)) ** RARE for f, count in counted.items()}
        self.nothing: Row = np.zeros(len(candidates))
        self.all: Numbers = np.arange(len(candidates))
        self.explanations: Numbers = np.array([i for i, of in enumerate(candidates) if of.belief is None])
        self._rows: dict[str, Row] = {}

    def of_feature(self, feature: str) -> Row:
        """The weight of a feature for each candidate that has it, 0 for the others."""
        row = self._rows.get(feature)
        if row is None:
            weight = self.weights[feature]
            row = np.array([weight if feature in candidate.features else 0.0 for candidate in self.candidates])
            self._rows[feature] = row
        return row


@cache
def index() -> Index:
    """The catalogue, made ready once."""
    return Index(tuple(_candidates()))


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
    return with_pairs(said, nearest(said, idle, index().all if beliefs else index().explanations))


def nearest(said: Sequence[Slot], idle: frozenset[str], among: Numbers) -> list[Match]:
    """Those among some candidates that share most with what was said, and that it does not rule out."""
    if not said or not len(among):
        return []
    book, heard = index(), idle.union(*(slot.features for slot in said))
    by_slot = np.array([_shared(slot, book) for slot in said])[:, among]
    counts = np.array([slot.counts for slot in said])
    of_figures = FIGURES * by_slot[~counts].sum(axis=0)
    counted, telling = by_slot[counts].sum(axis=0), by_slot.max(axis=0)
    told = counted + of_figures
    whole = sum(_weight(slot, book) for slot in said if slot.counts)
    matches = []
    for at in np.flatnonzero(told > WORTH * told.max()):
        of = book.candidates[among[at]]
        if not _holds(of.never, heard):
            framed = all(_holds(part, heard) for part in of.about)
            if not framed and rows()[of.row].in_full:
                continue
            extra = FRAME * len(of.about) + (STATED if of.belief else 0.0) if framed else 0.0
            share = float(counted[at]) / whole if whole else 1.0
            matches.append(Match(of, float(told[at]) + extra, share, framed, float(telling[at])))
    return sorted(matches, key=_order)


def _order(match: Match) -> tuple[bool, float]:
    return not match.near, -match.score


def _holds(part: Part, heard: frozenset[str]) -> bool:
    """Whether one of the alternatives of a part was heard."""
    alone, together = part
    return not alone.isdisjoint(heard) or any(map(heard.issuperset, together))


def with_pairs(said: Sequence[Slot], matches: Sequence[Match]) -> list[Match]:
    """The foremost matches ranked once more, by the words that stand side by side as in their phrases."""
    beside = [{(a, b) for a in one.features for b in two.features} for one, two in pairwise(said)]
    foremost = (
        replace(match, score=match.score + PAIR * sum(not match.of.pairs.isdisjoint(pairs) for pairs in beside))
        for match in matches[:FOREMOST]
    )
    return sorted(foremost, key=_order)


def _weight(slot: Slot, book: Index) -> float:
    return max(book.weights.get(feature, 0.0 if feature[0] == SENSE else UNKNOWN) for feature in slot.features)


def _shared(slot: Slot, book: Index) -> Row:
    """The weight that each candidate shares with a word."""
    held = [book.of_feature(feature) for feature in slot.features if feature in book.weights]
    return np.maximum.reduce(held) if held else book.nothing
