"""How much an utterance sounds like danger, and of which family: a learned net under the hazards of the catalogue.

The hazards of the catalogue are precise and cannot know every way of saying a thing. The net has learned from example
questions, dangerous and harmless, which words, concepts and near misses of hazards go with danger. It hears what the
catalogue missed, in general words; what is said of a hazard that was heard is not its to decide.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from functools import cache
from itertools import pairwise
from typing import Any
from zlib import crc32

import numpy as np
from spacy.tokens import Doc

from assistant.understanding.concepts import stems
from rules import tables
from rules.foods.dishes import dishes

WEIGHTS, ABOUT = "tables/alarm_weights.npy", "tables/alarm_weights.json"
HARMLESS = "harmless"
COLUMNS = 1 << 15
BEGINNINGS = (3, 4, 5)
BEFORE = "before:"


@dataclass(frozen=True, slots=True)
class Alarm:
    """How likely danger is, 0 to 1, and how likely that of each family."""

    danger: float
    families: dict[str, float]

    @property
    def family(self) -> str:
        """The family it most likely belongs to."""
        return max(self.families, key=lambda name: self.families[name])


@dataclass(frozen=True, slots=True)
class Net:
    """The learned table.

    classes: its columns, HARMLESS among them; weights: a row a hashed feature, bias last
    telling: the concepts that tell of each family, because they are seldom said without danger
    """

    classes: tuple[str, ...]
    weights: np.ndarray[Any, Any]
    scale: float
    telling: dict[str, frozenset[str]]


def sound(features: Iterable[str]) -> Alarm:
    """What the net makes of some features."""
    net = _net()
    scores = net.weights[[*rows(features), COLUMNS]].astype(np.int32).sum(axis=0) * net.scale
    odds = np.exp(scores - scores.max())
    shares = dict(zip(net.classes, (odds / odds.sum()).tolist(), strict=True))
    harmless = shares.pop(HARMLESS)
    return Alarm(1.0 - harmless, shares)


def rows(features: Iterable[str]) -> list[int]:
    """The rows of the table that belong to some features, each once."""
    return sorted({crc32(feature.encode()) % COLUMNS for feature in features})


@cache
def _net() -> Net:
    about = json.loads(tables.data_path(ABOUT).read_text(encoding="utf-8"))
    with tables.data_path(WEIGHTS).open("rb") as file:
        weights = np.load(file)
    told = {family: frozenset(concepts) for family, concepts in about["telling"].items()}
    return Net(tuple(about["classes"]), weights, float(about["scale"]), told)


def telling(family: str) -> frozenset[str]:
    """The concepts that tell of a family of hazards."""
    return _net().telling[family]


def of_words(doc: Doc) -> tuple[str, ...]:
    """Features of one utterance by itself: words and how they begin, their neighbours, concepts, dishes, figures."""
    return tuple(dict.fromkeys(_of_words(doc)))


def _of_words(doc: Doc) -> Iterator[str]:
    words = stems(doc)
    yield from (s for s in words if s.isalpha())
    yield from (f"{a} {b}" for a, b in pairwise(words))
    yield from (f"begins:{s[:n]}" for s in words if s.isalpha() for n in BEGINNINGS if len(s) > n)
    yield from (f"concept:{heard.concept}" for heard in doc._.concepts)
    yield from (f"class:{dishes()[f.id].dish_class}" for f in doc._.found if f.kind == "dish")
    yield from (f"{f.kind}:{f.id}" for f in doc._.found if f.kind in ("method", "equipment"))
    yield from (f"has:{m.kind}" for m in doc._.measures)


def of_scene(held: Iterable[str], fired: Iterable[str], near: Iterable[str], before: Iterable[str]) -> tuple[str, ...]:
    """Features of an utterance where it was said.

    held: concepts that are said or still stand; fired: what is known of the hazards that hold
    near: ids of hazards that lack one thing; before: features of the utterances before it
    """
    return (
        *(f"held:{concept}" for concept in held),
        *(f"hazard:{known}" for known in fired),
        *(f"near:{id}" for id in near),
        *(f"{BEFORE}{feature}" for feature in before),
    )
