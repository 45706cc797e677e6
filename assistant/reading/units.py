"""The units a kitchen knows: data/units.txt, read with pint when it is first used and kept. The one unit table."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass
from functools import cache, lru_cache
from typing import TYPE_CHECKING

from rules import tables
from rules.kept import kept
from rules.physics.units import to_c

if TYPE_CHECKING:
    import pint

LONGEST_UNIT = 4
SI = {
    "length": "meter",
    "time": "minute",
    "whistle": "whistle",
    "temperature": "degree_celsius",
    "degree": "degree",
    "pressure": "pascal",
    "mass": "gram",
    "volume": "milliliter",
    "portion": "portion",
    "count": "piece",
    "percent": "percent",
}
# what is heard in talk; a can of beans is no measure there, in a list of ingredients it is
SPOKEN = ("length", "time", "temperature", "degree", "pressure", "mass", "volume", "portion", "whistle")
AMOUNTS = ("mass", "volume", "count", "percent")
TEMPERATURES = ("temperature", "degree")
# what a change of a recipe has figures of
CHANGES = (*AMOUNTS, *TEMPERATURES, "time")
HEIGHTS = ("length",)
# the shortest unit of length that heights are told in [m]; below it are pans and cuts
SHORTEST_HEIGHT_UNIT_M = 0.3
# what pint takes for no name
SIGNS = {"%": "percent", "#": "lb", "grown-ups": "grown_ups"}
# spellings of two units: the other one is meant where the first can not be
OTHERWISE = {"c": "cup", "heads": "head", "m": "minute"}
# measures of a list of ingredients that talk has other uses for: pinch the edge, dash out, drop in, stick together
ONLY_IN_A_LIST = ("pinch", "dash", "drop", "stick")
# abbreviations that are written with a point inside a unit: fl. oz.
POINTED = ("deg", "fl", "lb", "lbs", "in", "ins", "mm", "per")


@dataclass(frozen=True, slots=True)
class Unit:
    """A unit. name: its symbol; kind: of SI; size: one of it in ml, g, m, min or Pa; 1 for counts and percent."""

    name: str
    kind: str
    size: float = 1.0


@cache
def registry() -> pint.UnitRegistry:
    """The one unit registry of the process, read when the first unit is heard."""
    import pint

    return pint.UnitRegistry(str(tables.data_path("units.txt")), cache_folder=None)


@dataclass(frozen=True, slots=True)
class UnitBook:
    """What pint reads in data/units.txt. named: spelling -> name, symbol and kind of its unit

    factors: name -> how many of the unit of SI one is; none of a scale of temperature, whose zero lies elsewhere
    first_words: those that a spelling begins with, by which most words are passed over
    """

    named: dict[str, tuple[str, str, str]]
    factors: dict[str, float]
    first_words: frozenset[str]


@kept
def unit_book() -> UnitBook:
    """The units, worked out once."""
    units = registry()
    named = {spelling: _named(spelling) for spelling in units}
    kinds = {name: kind for name, _, kind in named.values() if kind in SI and kind != "temperature"}
    factors = {name: float(units.Quantity(1.0, name).to(SI[kind]).magnitude) for name, kind in kinds.items()}
    return UnitBook(named, factors, frozenset(spelling.split("_")[0] for spelling in named))


def _named(spelling: str) -> tuple[str, str, str]:
    name = registry().get_name(spelling)
    dimension = str(next(iter(registry().get_dimensionality(name)))).strip("[]")
    return name, registry().get_symbol(name), dimension


def unit_named(spelling: str) -> tuple[str, str, str]:
    """Name, symbol and kind of a unit by one of its spellings.

    >>> unit_named("feet")
    ('foot', 'ft', 'length')
    """
    return unit_book().named.get(spelling) or _named(spelling)


def spellings() -> Collection[str]:
    """Every spelling of a unit, words joined by underscores."""
    return unit_book().named


@cache
def tells_heights(unit: str) -> bool:
    """Whether elevations are told in a unit of length.

    >>> tells_heights("ft"), tells_heights("inches"), tells_heights("klicks")
    (True, False, True)
    """
    return unit_named(unit)[2] == "length" and to_si(1.0, unit) >= SHORTEST_HEIGHT_UNIT_M


def to_si(value: float, unit: str) -> float:
    """A value in the unit of SI that its kind is kept in.

    >>> round(to_si(350, "fahrenheit")), to_si(7000, "ft"), to_si(1.5, "hours")
    (177, 2133.6, 90.0)
    """
    name, _, kind = unit_named(unit)
    if name == SI[kind]:
        return value
    if name == "degree_fahrenheit":
        # as the rules convert it, so that a figure comes back as it was said
        return to_c(value)
    factor = unit_book().factors.get(name)
    return float(registry().Quantity(value, name).to(SI[kind]).magnitude) if factor is None else value * factor


def unit_at(
    words: Sequence[str], spelled: Sequence[str], at: int, kinds: Collection[str] = SPOKEN
) -> tuple[str, int] | None:
    """The longest unit of some kinds that starts at a word: its spelling, and the word after it.

    words: in lower case; spelled: as written, for units that case tells apart
    """
    if at < len(words) and (sign := SIGNS.get(words[at])) and unit_named(sign)[2] in kinds:
        return sign, at + 1
    if at < len(words) and (other := OTHERWISE.get(words[at])) and unit_named(words[at])[2] not in kinds:
        return (other, at + 1) if unit_named(other)[2] in kinds else None
    book = unit_book()
    if at >= len(words) or (words[at] not in book.first_words and spelled[at] not in book.first_words):
        return None
    for end in range(min(at + LONGEST_UNIT, len(words)), at, -1):
        for text in (_joined(spelled[at:end]), _joined(words[at:end])):
            if text in book.named and _can_be_meant(text, kinds):
                return text, end
    return None


def _can_be_meant(spelling: str, kinds: Collection[str]) -> bool:
    _, symbol, kind = unit_named(spelling)
    return kind in kinds and ("count" in kinds or symbol not in ONLY_IN_A_LIST)


def _joined(words: Sequence[str]) -> str:
    """Words as one spelling, without the points of abbreviations."""
    kept = [w for i, w in enumerate(words) if w != "." or not i or words[i - 1].lower() not in POINTED]
    return "_".join(kept) if words[-1] != "." else ""


# words of recipes that may be units: people never run out of new words, nor of ways to write them
@lru_cache(maxsize=4096)
def unit_of(word: str) -> Unit | None:
    """The unit of an amount that a word or two stand for, or None. Only "T" and "t" depend on the case of the letter.

    >>> unit_of("Tbsp.").name, unit_of("T").name, unit_of("t").name, unit_of("fl. oz.").name, unit_of("flour")
    ('tbsp', 'tbsp', 'tsp', 'fl_oz', None)
    """
    from assistant.reading.words import words_of

    read = words_of(word.strip().rstrip("."))
    hit = unit_at([w.norm for w in read], [w.text for w in read], 0, AMOUNTS)
    return unit_by(hit[0]) if hit and hit[1] == len(read) else None


@cache
def unit_by(spelling: str) -> Unit:
    """The unit of a spelling that there is."""
    name, symbol, kind = unit_named(spelling)
    return Unit(symbol, kind, 1.0 if kind in ("temperature", "degree") else to_si(1.0, name))
