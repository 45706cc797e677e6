"""Component: numbers with their units, read with pint from data/units.txt."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from functools import cache
from typing import TYPE_CHECKING

from spacy.language import Language
from spacy.tokens import Doc

from assistant.reading.spans import Measure, Number
from assistant.understanding.cue_words import cues
from rules import tables

if TYPE_CHECKING:
    import pint

LONGEST_UNIT = 4
ARTICLES = ("a", "an", "per")
RANGE_SIGNS = ("-", "to", "or", "and", "through", "till", "until")
SI = {
    "length": "meter",
    "time": "minute",
    "temperature": "degree_celsius",
    "degree": "degree",
    "pressure": "pascal",
    "mass": "gram",
    "volume": "milliliter",
    "portion": "portion",
}
SMALLER = {"hour": ("minute",), "minute": ("second",), "day": ("hour",), "pound": ("ounce",), "kilogram": ("gram",)}
BAROMETERS = cues("barometer", "names")
BAROMETER_REACH = 6
# what a barometer reads without a unit, or in inches [its unit]
BAROMETER_SCALES = {"inHg": (15.0, 32.0), "hPa": (480.0, 1090.0)}
# words that may stand between a number and its unit
FILLERS = ("whole", "full", "more", "good", "solid", "heaped", "level", "additional", "extra", "-", "hungry")

Doc.set_extension("measures", default=(), force=True)


@Language.component("kitchen_measures", requires=["doc._.numbers"], assigns=["doc._.measures"])
def kitchen_measures(doc: Doc) -> Doc:
    """Hear every quantity of the text."""
    doc._.measures = hear([token.norm_ for token in doc], [token.text for token in doc], doc._.numbers)
    return doc


@cache
def registry() -> pint.UnitRegistry:
    """The one unit registry of the process, read when the first number is heard."""
    import pint

    return pint.UnitRegistry(str(tables.data_path("units.txt")), cache_folder=None)


@cache
def spellings() -> frozenset[str]:
    """Every spelling of a unit, words joined by underscores."""
    return frozenset(registry())


@cache
def unit_named(spelling: str) -> tuple[str, str, str]:
    """Name, symbol and kind of a unit by one of its spellings.

    >>> unit_named("feet")
    ('foot', 'ft', 'length')
    """
    name = registry().get_name(spelling)
    dimension = str(next(iter(registry().get_dimensionality(name)))).strip("[]")
    return name, registry().get_symbol(name), dimension


def to_si(value: float, unit: str) -> float:
    """A value in the unit of SI that its kind is kept in.

    >>> round(to_si(350, "fahrenheit")), to_si(7000, "ft"), to_si(1.5, "hours")
    (177, 2133.6, 90.0)
    """
    name, _, kind = unit_named(unit)
    return float(registry().Quantity(value, name).to(SI[kind]).magnitude)


def hear(words: Sequence[str], spelled: Sequence[str], numbers: Sequence[Number]) -> tuple[Measure, ...]:
    """The measures among words; spelled are the same words as written, for units that case tells apart."""
    found = [m for m in (_measure(words, spelled, number) for number in with_articles(words, numbers)) if m]
    measures = _joined(words, _ranged(words, _compound(words, found, numbers), numbers))
    return tuple(_barometric(words, measures, numbers))


def _barometric(words: Sequence[str], found: list[Measure], numbers: Sequence[Number]) -> list[Measure]:
    """Inches and bare figures behind a barometer are pressures: the barometer says 24.6 inches."""
    ends = [end for name in BAROMETERS for end in _ends(words, name.split())]
    if not ends:
        return found
    inches = {m.start: m.end for m in found if m.unit == "in"}
    taken = {i for m in found if m.unit != "in" for i in range(m.start, m.end)}
    read = []
    for number in numbers:
        near = number.start not in taken and any(0 <= number.start - end < BAROMETER_REACH for end in ends)
        unit = next((unit for unit, (low, high) in BAROMETER_SCALES.items() if low <= number.value <= high), None)
        if near and unit and (unit == "inHg" or number.start not in inches):
            read.append(_pressure(number, inches.get(number.start, number.end), unit))
    starts = {m.start for m in read}
    return sorted([*(m for m in found if m.start not in starts), *read], key=lambda m: m.start)


def _ends(words: Sequence[str], phrase: Sequence[str]) -> list[int]:
    return [i + len(phrase) for i in range(len(words)) if list(words[i : i + len(phrase)]) == list(phrase)]


def _pressure(number: Number, end: int, unit: str) -> Measure:
    value = to_si(number.value, unit)
    return Measure(number.start, end, "pressure", value, value, number.value, unit)


def with_articles(words: Sequence[str], numbers: Sequence[Number]) -> list[Number]:
    """Numbers, and the articles that stand for one: an hour, a cup. Clock times (6:30) are not numbers."""
    taken = {i for number in numbers for i in range(number.start, number.end)}
    ones = [
        Number(i, i + 1, 1.0)
        for i, word in enumerate(words)
        if word in ARTICLES and i not in taken and len(_next(words, i)) > 2
    ]
    return sorted([*numbers, *ones], key=lambda number: number.start) if numbers or ones else []


def _next(words: Sequence[str], at: int) -> str:
    return words[at + 1] if at + 1 < len(words) else ""


def unit_at(words: Sequence[str], spelled: Sequence[str], at: int) -> tuple[str, int] | None:
    """The longest unit that starts at a token, and the token after it."""
    for end in range(min(at + LONGEST_UNIT, len(words)), at, -1):
        for text in ("_".join(spelled[at:end]), "_".join(words[at:end])):
            if text in spellings():
                return text, end
    return None


def _measure(words: Sequence[str], spelled: Sequence[str], number: Number) -> Measure | None:
    hit = unit_at(words, spelled, number.end)
    if hit is None and number.end < len(words) and words[number.end] in FILLERS:
        hit = unit_at(words, spelled, number.end + 1)
    unit = _meant(hit[0], number.value, words[hit[1] : hit[1] + 1]) if hit else None
    if hit is None or unit is None:
        return None
    end, (_, symbol, kind) = hit[1], unit_named(unit)
    if kind == "portion" and words[number.start] in ARTICLES:
        return None
    value = to_si(number.value, unit)
    return Measure(number.start, end, kind, value, value, number.value, symbol)


def _meant(unit: str, value: float, after: Sequence[str]) -> str | None:
    """Short units that mean two things, by the size of the figure: 30 m is time, 2100 m is elevation."""
    if unit == "m" and 0 < value < 100 and "asl" not in after and "above" not in after:
        return "minute"
    if unit in ("c", "C") and 0 < value <= 10:
        return "cup"
    if unit == "in" and after and after[0] not in ("pan", "pie", "round", "tin", "square", "thick", "cake", "cubes"):
        return None
    return unit


def _compound(words: Sequence[str], found: list[Measure], numbers: Sequence[Number]) -> list[Measure]:
    """1 hour 20 minutes, 2 h 30, an hour and a half, 4 lb 6 oz."""
    merged: list[Measure] = []
    bare = {number.start: number for number in numbers}
    for measure in found:
        last = merged[-1] if merged else None
        if last and _follows(words, last.end, measure.start) and _name(measure) in SMALLER.get(_name(last), ()):
            merged[-1] = _plus(last, measure.low, measure.end)
        elif last is None or measure.start >= last.end:
            merged.append(measure)
    started = {m.start for m in merged}
    return [_with_rest(words, m, bare, started) for m in merged]


def _name(measure: Measure) -> str:
    return unit_named(measure.unit)[0]


def _follows(words: Sequence[str], end: int, start: int) -> bool:
    return start == end or (start == end + 1 and words[end] in ("and", ",", "&"))


def _plus(measure: Measure, more: float, end: int) -> Measure:
    total = measure.low + more
    factor = measure.said / measure.low if measure.low else 1.0
    return replace(measure, end=end, low=total, high=total, said=total * factor)


def _with_rest(words: Sequence[str], measure: Measure, bare: dict[int, Number], started: set[int]) -> Measure:
    """The figure that hangs on behind the unit: an hour AND A HALF, 2 h 30."""
    at = measure.end
    part = bare.get(at + 1) if at < len(words) and words[at] == "and" else None
    if part and part.start not in started and 0 < part.value < 1 and measure.kind in ("time", "mass", "volume"):
        return _plus(measure, part.value * measure.low / (measure.said or 1.0), part.end)
    minutes = bare.get(at)
    if minutes and at not in started and _name(measure) == "hour" and 0 < minutes.value < 60:
        return _plus(measure, minutes.value, minutes.end)
    return measure


def _ranged(words: Sequence[str], found: list[Measure], numbers: Sequence[Number]) -> list[Measure]:
    """25-30 min, two to three hours: a bare number before the range sign takes the unit. Elevations stay two."""
    by_end = {number.end: number for number in numbers}
    taken = {i for m in found for i in range(m.start, m.end)}
    return [_stretched(words, m, by_end.get(m.start - 1), taken) for m in found]


def _stretched(words: Sequence[str], measure: Measure, lower: Number | None, taken: set[int]) -> Measure:
    if lower is None or measure.kind == "length" or lower.start in taken or not 0 <= lower.value <= measure.said:
        return measure
    sign = words[measure.start - 1]
    if sign not in RANGE_SIGNS or (sign == "and" and words[max(lower.start - 1, 0)] != "between"):
        return measure
    low = to_si(lower.value, measure.unit)
    return replace(measure, start=lower.start, low=low, said=lower.value)


def _joined(words: Sequence[str], found: list[Measure]) -> list[Measure]:
    """90 minutes to 2 hours, 350 F to 375 F: two measures of a kind with a range sign between."""
    merged: list[Measure] = []
    for measure in found:
        last = merged[-1] if merged else None
        apart = words[last.end : measure.start] if last else []
        if (
            last
            and len(apart) == 1
            and apart[0] in ("-", "to", "or")
            and last.kind == measure.kind in ("time", "temperature", "mass", "volume", "portion")
            and last.low < measure.high
        ):
            merged[-1] = replace(last, end=measure.end, high=measure.high)
        else:
            merged.append(measure)
    return merged
