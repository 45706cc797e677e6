"""Numbers with their units, compound (2 h 30) and in ranges (25-30 min), by the table of units."""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import replace

from assistant.reading import gas_marks
from assistant.reading.spans import Measure, Number
from assistant.reading.units import SPOKEN, to_si, unit_at, unit_named
from assistant.understanding.cue_words import cues

# what has its size in inches, rather than standing in something: 9 in pan, but 350 in a pan; and how large it can be
SIZED, MOST_INCHES = ("pan", "pie", "round", "tin", "square", "thick", "cake", "cubes"), 100
ARTICLES = ("a", "an", "per")
RANGE_SIGNS = ("-", "~", "to", "or", "and", "through", "till", "until")
# what may stand between two measures that are the ends of a range, and which kinds have ranges
TO = (("-",), ("~",), ("to",), ("or",), ("up", "to"), ("or", "up", "to"))
RANGED = ("time", "temperature", "degree", "mass", "volume", "portion", "whistle")
ABOUT = ("about", "around", "roughly")
SMALLER = {
    "hour": ("minute",), "minute": ("second",), "day": ("hour",), "pound": ("ounce",), "kilogram": ("gram",),
    "gallon": ("quart",), "quart": ("cup",), "cup": ("tablespoon", "teaspoon"), "tablespoon": ("teaspoon",),
}  # fmt: skip
# what may stand between two measures that are one; spoons and cups are listed with commas too
JOINTS, SUMS = ("and", ",", "&"), ("plus", "+")
# unit words of so few letters are abbreviations, and may have a point behind them
LONGEST_ABBREVIATION = 3
# right before "5 C" these make it a temperature, and before "50 m" a height
AT, HEIGHT_NAMED, LEAST_HEIGHT_M = ("at", "below", "above", "under", "than"), ("elevation", "altitude"), 10
# "feed" behind so many is feet
FEET_MISHEARD, LEAST_FEET = cues("elevation", "feet_misheard"), 1000
# ten, two hundred feet: thousands and hundreds said one after the other
THOUSANDS_SAID, HUNDREDS_SAID, IN_FEET = (5, 14), (100, 999), ("ft", "m")
BAROMETERS = cues("barometer", "names")
BAROMETERS_BEGIN = frozenset(name.split()[0] for name in BAROMETERS)
BAROMETER_REACH = 6
# what a barometer reads without a unit, or in inches [its unit]
BAROMETER_SCALES = {"inHg": (15.0, 32.0), "hPa": (480.0, 1090.0)}
# words that may stand between a number and its unit
FILLERS = frozenset(
    {"whole", "full", "more", "good", "solid", "additional", "further", "extra", "-", "hungry", "heaped", "heaping"}
    | {"level", "rounded", "scant", "generous", "ish", "odd"}
)


def hear(
    words: Sequence[str],
    spelled: Sequence[str],
    numbers: Sequence[Number],
    kinds: Collection[str] = SPOKEN,
    ranges: bool = True,
) -> tuple[Measure, ...]:
    """The measures among words; spelled are the same words as written, for units that case tells apart.

    kinds: which can be meant; they decide what a spelling of two units is (m, c, heads)
    ranges: whether two figures with a range sign between are one measure
    """
    found = [m for m in (_measure(words, spelled, number, kinds) for number in with_articles(words, numbers)) if m]
    measures = _compound(words, _thousands(words, found, numbers), numbers)
    if "temperature" in kinds:
        measures = _with_marks(measures, list(gas_marks.hear(words, numbers)))
    if ranges:
        measures = _joined(words, _ranged(words, measures, numbers))
    return tuple(_barometric(words, measures, numbers) if "pressure" in kinds else measures)


def _with_marks(measures: list[Measure], marks: Sequence[Measure]) -> list[Measure]:
    """The measures, with marks of gas ovens in the place of whatever else their numbers were heard as."""
    if not marks:
        return measures
    taken = {i for mark in marks for i in range(mark.start, mark.end)}
    return sorted([*(m for m in measures if m.start not in taken), *marks], key=lambda m: m.start)


def _thousands(words: Sequence[str], found: list[Measure], numbers: Sequence[Number]) -> list[Measure]:
    """Ten two hundred feet: the thousands are said as a number of their own."""
    ends = {number.end: number for number in numbers if not words[number.start][0].isdigit()}
    return [_with_thousands(words, m, ends) for m in found]


def _with_thousands(words: Sequence[str], m: Measure, ends: Mapping[int, Number]) -> Measure:
    said = ends.get(m.start)
    if said is None or m.unit not in IN_FEET or words[m.start][0].isdigit():
        return m
    if not (THOUSANDS_SAID[0] <= said.value <= THOUSANDS_SAID[1] and HUNDREDS_SAID[0] <= m.said <= HUNDREDS_SAID[1]):
        return m
    value = 1000 * said.value + m.said
    length_m = to_si(value, m.unit)
    return Measure(said.start, m.end, m.kind, length_m, length_m, value, m.unit)


def _barometric(words: Sequence[str], found: list[Measure], numbers: Sequence[Number]) -> list[Measure]:
    """Inches and bare figures behind a barometer are pressures: the barometer says 24.6 inches."""
    if BAROMETERS_BEGIN.isdisjoint(words):
        return found
    near = {end + i for name in BAROMETERS for end in _ends(words, name.split()) for i in range(BAROMETER_REACH)}
    if not near:
        return found
    inches = {m.start: m.end for m in found if m.unit == "in"}
    near -= {i for m in found if m.unit != "in" for i in range(m.start, m.end)}
    read = []
    for number in numbers:
        unit = next((unit for unit, (low, high) in BAROMETER_SCALES.items() if low <= number.value <= high), None)
        if number.start in near and unit and (unit == "inHg" or number.start not in inches):
            read.append(_pressure(number, inches.get(number.start, number.end), unit))
    starts = {m.start for m in read}
    return sorted([*(m for m in found if m.start not in starts), *read], key=lambda m: m.start)


def _ends(words: Sequence[str], phrase: Sequence[str]) -> list[int]:
    return [i + len(phrase) for i in range(len(words)) if list(words[i : i + len(phrase)]) == list(phrase)]


def _pressure(number: Number, end: int, unit: str) -> Measure:
    value = to_si(number.value, unit)
    return Measure(number.start, end, "pressure", value, value, number.value, unit)


def with_articles(words: Sequence[str], numbers: Sequence[Number]) -> list[Number]:
    """Numbers, and what else stands for one: AN hour, A cup, hour and a half. Clock times (6:30) are none."""
    taken = {i for number in numbers for i in range(number.start, number.end)}
    parts = {number.start for number in numbers if 0 < number.value < 1}
    ones = [one for i in range(len(words)) if i not in taken and (one := _unwritten(words, i, taken, parts))]
    return sorted([*numbers, *ones], key=lambda number: number.start) if numbers or ones else []


def _unwritten(words: Sequence[str], at: int, taken: Collection[int], parts: Collection[int]) -> Number | None:
    """The number that a word stands for, or that is left out before it. parts: where halves and quarters begin"""
    word, following = words[at], _next(words, at)
    if word in ARTICLES and len(following) > 2:
        return Number(at, at + 1, 1.0)
    counted = at > 0 and (at - 1 in taken or words[at - 1] in ARTICLES)
    if word == "hour" and following == "and" and at + 2 in parts and not counted:
        return Number(at, at, 1.0)
    return None


def _next(words: Sequence[str], at: int) -> str:
    return words[at + 1] if at + 1 < len(words) else ""


def _measure(words: Sequence[str], spelled: Sequence[str], number: Number, kinds: Collection[str]) -> Measure | None:
    hit = unit_at(words, spelled, number.end, kinds)
    if hit is None and number.end < len(words) and words[number.end] in FILLERS:
        hit = unit_at(words, spelled, number.end + 1, kinds)
    if "length" in kinds and number.value >= LEAST_FEET and _next(words, number.end - 1) in FEET_MISHEARD:
        hit = "ft", number.end + 1
    around = words[max(0, number.start - 3) : number.start], words[hit[1] : hit[1] + 1] if hit else ()
    unit = _meant(hit[0], number.value, *around, kinds) if hit else None
    if hit is None or unit is None:
        return None
    end, (_, symbol, kind) = hit[1], unit_named(unit)
    of_article = words[number.start] in ARTICLES and number.end == number.start + 1
    if of_article and (kind in ("portion", "whistle") or (kind == "time" and words[end - 1].endswith("s"))):
        return None
    value = to_si(number.value, unit)
    return Measure(number.start, end, kind, value, value, number.value, symbol)


def _meant(unit: str, value: float, before: Sequence[str], after: Sequence[str], kinds: Collection[str]) -> str | None:
    """Short units that mean two things, by the size of the figure and the words beside it.

    30 m is time, 2100 m is elevation; 2 c is cups, at 5 c is cold.
    """
    if unit == "m" and "time" in kinds and 0 < value < 100:
        high = (
            "asl" in after or "above" in after or (value >= LEAST_HEIGHT_M and any(w in before for w in HEIGHT_NAMED))
        )
        return unit if high else "minute"
    if unit in ("c", "C") and "volume" in kinds and 0 < value <= 10:
        return unit if before and before[-1] in AT else "cup"
    if unit == "in" and (value > MOST_INCHES or (after and after[0] not in SIZED)):
        return None
    return unit


def _compound(words: Sequence[str], found: list[Measure], numbers: Sequence[Number]) -> list[Measure]:
    """1 hour 20 minutes, 2 h 30, an hour and a half, 4 lb 6 oz."""
    merged: list[Measure] = []
    bare = {number.start: number for number in numbers}
    for measure in found:
        last = merged[-1] if merged else None
        if last and _adds(words, last, measure):
            merged[-1] = _plus(last, measure.low, measure.end)
        elif last is None or measure.start >= last.end:
            merged.append(measure)
    started = {m.start for m in merged}
    return [_with_rest(words, m, bare, started) for m in merged]


def _name(measure: Measure) -> str:
    return unit_named(measure.unit)[0]


def _adds(words: Sequence[str], last: Measure, measure: Measure) -> bool:
    """Whether a measure goes on with a smaller unit: 1 hr. 15 min., 4 lb 6 oz, 1 tbsp plus 1 tsp."""
    apart = words[last.end : measure.start]
    if len(apart) > 1 or last.kind != measure.kind:
        return False
    if apart and apart[0] in SUMS:
        return last.kind in ("mass", "volume", "time")
    if _name(measure) not in SMALLER.get(_name(last), ()):
        return False
    if apart and apart[0] == ".":
        return len(words[last.end - 1]) <= LONGEST_ABBREVIATION
    return not apart or (last.kind != "volume" and apart[0] in JOINTS)


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
    return [_stretched(words, m, by_end, taken) for m in found]


def _stretched(words: Sequence[str], measure: Measure, by_end: Mapping[int, Number], taken: Collection[int]) -> Measure:
    at = measure.start - 1
    if at > 0 and words[at] in ABOUT:
        at -= 1
    lower = by_end.get(at)
    if lower is None or measure.kind == "length" or lower.start in taken or not 0 <= lower.value <= measure.said:
        return measure
    if words[at] not in RANGE_SIGNS or (words[at] == "and" and words[max(lower.start - 1, 0)] != "between"):
        return measure
    low = to_si(lower.value, measure.unit)
    return replace(measure, start=lower.start, low=low, said=lower.value)


def _joined(words: Sequence[str], found: list[Measure]) -> list[Measure]:
    """90 minutes to 2 hours, 350 F to 375 F, 350° to 375°F: two measures of a kind with a range sign between."""
    merged: list[Measure] = []
    for measure in found:
        last = merged[-1] if merged else None
        if last and _is_range_sign(words, last, measure) and last.low < measure.high:
            merged[-1] = replace(last, end=measure.end, high=measure.high)
        elif (
            last and last.kind == "degree" and measure.kind == "temperature" and _is_scaled_behind(words, last, measure)
        ):
            low = to_si(last.said, measure.unit)
            merged[-1] = replace(measure, start=last.start, low=low, said=last.said)
        else:
            merged.append(measure)
    return merged


def _is_range_sign(words: Sequence[str], last: Measure, measure: Measure) -> bool:
    return last.kind == measure.kind and last.kind in RANGED and _is_to(words, last, measure)


def _is_scaled_behind(words: Sequence[str], last: Measure, measure: Measure) -> bool:
    return _is_to(words, last, measure) and 0 <= last.said < measure.said


def _is_to(words: Sequence[str], last: Measure, measure: Measure) -> bool:
    apart = tuple(words[last.end : measure.start]) if measure.start - last.end <= 3 else ()
    between = apart == ("and",) and last.start > 0 and words[last.start - 1] == "between"
    return between or tuple(word for word in apart if word not in ABOUT) in TO
