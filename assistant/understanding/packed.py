"""Component: jars by their size, and how food is packed into them: half pints, 500 ml jars, hot pack, bone in."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cache

from spacy.language import Language
from spacy.tokens import Doc

from assistant.reading.spans import Measure
from assistant.reading.text import fold
from assistant.reading.tokens import norms
from rules import tables
from rules.model import Quantity

WORDS = "lexicon/packing.toml"
# a number before a pint or a quart counts jars, unless it is one of these: half pints, a pint and a half
PARTS = (0.25, 0.5, 0.75, 1.5)
COUNTED, METRIC, OUNCES = ("pt", "qt", "gal"), {"ml": 1.0, "cl": 10.0, "dl": 100.0, "l": 1000.0}, ("oz", "fl_oz")
BIGGEST_ML = 2000.0

Doc.set_extension("packed", default=(), force=True)


@dataclass(frozen=True, slots=True)
class Packed:
    """A size of jar, or a way to pack, with where it stands."""

    start: int
    end: int
    jar: Quantity | None = None
    packing: str | None = None


@Language.component("kitchen_packed", requires=["doc._.measures"], assigns=["doc._.packed"])
def kitchen_packed(doc: Doc) -> Doc:
    """Hear jars and packs."""
    words = norms(doc)
    doc._.packed = (*sized(doc._.measures, words), *packs(words))
    return doc


def jars(doc: Doc) -> tuple[Quantity, ...]:
    """The jars that are named, each by what it holds, in the order of the text.

    >>> from assistant.understanding.pipeline import read
    >>> jars(read("pears in pints, some in half pints"))
    (Quantity(value=1.0, unit='pt'), Quantity(value=0.5, unit='pt'))
    """
    return tuple(dict.fromkeys(heard.jar for heard in doc._.packed if heard.jar))


def packing(doc: Doc) -> tuple[str, ...]:
    """How the food is packed, ids of data/lexicon/packing.toml."""
    return tuple(dict.fromkeys(heard.packing for heard in doc._.packed if heard.packing))


def sized(measures: Sequence[Measure], words: Sequence[str]) -> Iterator[Packed]:
    """Jars by their measure or by the name of one."""
    held = [Packed(m.start, m.end, jar) for m in measures if (jar := _jar(m, words))]
    taken = {i for m in measures for i in range(m.start, m.end)}
    units = {word: unit for unit in COUNTED[:2] for word in _book()[unit]}
    bare = [
        Packed(i, i + 1, Quantity(1.0, units[word])) for i, word in enumerate(words) if word in units and i not in taken
    ]
    yield from sorted((*held, *bare), key=lambda heard: heard.start)


def _jar(measure: Measure, words: Sequence[str]) -> Quantity | None:
    said = round(measure.said, 6)
    if measure.unit in COUNTED:
        return Quantity(said if said in PARTS else 1.0, measure.unit)
    if measure.unit in METRIC and said * METRIC[measure.unit] <= BIGGEST_ML:
        return Quantity(said, measure.unit)
    beside = any(word in _book()["jars"] for word in words)
    return Quantity(said, measure.unit) if measure.unit in OUNCES and beside else None


def packs(words: Sequence[str]) -> Iterator[Packed]:
    """Ways to pack, the longest phrase at each place."""
    phrases, at = _phrases(), 0
    while at < len(words):
        ends = range(min(len(words), at + _longest()), at, -1)
        end = next((end for end in ends if " ".join(words[at:end]) in phrases), None)
        if end is not None:
            yield Packed(at, end, packing=phrases[" ".join(words[at:end])])
        at = end or at + 1


@cache
def _book() -> dict[str, list[str]]:
    return tables.read_toml(WORDS)["words"]


@cache
def _phrases() -> dict[str, str]:
    return {fold(phrase): row["id"] for row in tables.read_toml(WORDS)["packing"] for phrase in row["heard_as"]}


@cache
def _longest() -> int:
    return max(phrase.count(" ") for phrase in _phrases()) + 1
