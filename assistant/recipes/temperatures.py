"""The temperatures of a step, each with what is at that temperature and the unit it is in."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from itertools import pairwise
from typing import Literal, cast

from assistant.reading.reader import Heard, hear
from assistant.reading.spans import Measure
from assistant.recipes.clauses import Span, clause, sentences
from assistant.recipes.evidence import (
    FOOD,
    HOLD,
    OTHER,
    OVEN,
    SUGAR,
    WARMED,
    WATER,
    Place,
    Role,
    clause_word,
    evidence,
    says,
)
from assistant.recipes.times import TERSE, in_use, last_named
from rules.physics.units import to_c
from rules.recipe import TempMark, TempOf

Unit = Literal["degF", "degC"]
# Water that is made to boil or simmer is about so hot [degC]; cooler liquids are warmed, and stay as they are.
BOILS_FROM_C = 88.0
# An oven no hotter than this keeps food warm, where the recipe speaks of keeping it warm [degC]: 230 degF.
BARELY_WARM_C = 111.0
SUGAR_FROM_C, SUGAR_TO_C = 100.0, 180.0
OVEN_FROM_C = 115.0
COOLED_TO_C = 75.0
HOTTEST = 900.0
# How far two figures for one temperature may be apart, one rounded in each unit [K].
SAME_C = 9.0
# A reading inside food that is given in Fahrenheit without saying so, where the rest speaks Celsius [degF].
READING_F = (130, 212)

_FLAGS = re.IGNORECASE
# what leads to a figure without a unit that can be a temperature, and what stands behind one
_BARE_LEAD = re.compile(
    r"\b(?:at|to|of|above|below|over|under|reaches|reach|registers|register|reads|read|hits|is|are|past|until|oven:?|preheat)\s+"
    r"(?:about\s+|around\s+|a\s+steady\s+|at\s+least\s+)?$",
    _FLAGS,
)
_BARE_TAIL = re.compile(
    r"\s*(?:$|[.,;:)]|(?:for|until|about|on|with|and|or|if|before|then|in|inside|internal|while|so|over|without|to\s+a)\b|\d)",
    _FLAGS,
)
_BARE_DIGITS = re.compile(r"\d{2,3}")
# how many signs before a figure lead to it
LEAD = 40
RANGE_SIGNS = ("-", "~", "to", "or")
# a temperature said again in the other unit: "350 °F (180 °C)", "350 °F / 180 °C fan"
_AGAIN, _AGAIN_END = re.compile(r"\s?[(/\[,]\s?(?:about\s+)?", _FLAGS), re.compile(r"\s?(?:fan\s?)?[)\]]?", _FLAGS)
_COOLED_TO = re.compile(r"\b(?:cool|chill)(?:ed|s|ing)?\b[^.;]{0,40}$", _FLAGS)
_TURN_AFTER = re.compile(r"\s*[- ]?(?:turns?|angles?|rotation)\b", _FLAGS)
_BAKES = re.compile(r"\b(?:bak(?:e|ed|ing)|roast(?:ed|ing)?|dry|drying|dried|cook|cooking|braise)\b", _FLAGS)
_LIQUID_BOILS = re.compile(r"\b(?:simmer|boil|steam|brew|bubbl)", _FLAGS)


@dataclass(frozen=True, slots=True)
class _Figure:
    """A figure that can be a temperature, and where it stands in the step.

    low, high: in degC where it has a unit, else as said; said: the lower end as said
    written: as degrees, as a bare number, or as cards have it ("350 - 10 to 12 min")
    """

    start: int
    end: int
    low: float
    high: float
    said: float
    unit: Unit | None = None
    written: Literal["degrees", "bare", "terse"] = "degrees"

    def celsius(self, scale: Unit) -> tuple[float, float]:
        """Its ends [degC], where its scale is this one."""
        return (self.low, self.high) if self.unit or scale == "degC" else (to_c(self.low), to_c(self.high))


@dataclass(frozen=True, slots=True)
class Habits:
    """What the recipe as a whole says, for figures whose own clause leaves something open.

    unit: the unit of its other temperatures, None where it names none or both
    metric: whether it measures in grams and Celsius, for a bare figure where no unit is known
    sweet: whether it boils sugar; warm: whether it keeps something warm
    """

    unit: Unit | None = None
    metric: bool = False
    sweet: bool = False
    warm: bool = False


def temperatures(text: str, habits: Habits, apparatus: str = "") -> Iterator[TempMark]:
    """The temperatures of a step, in order. An angle is none.

    apparatus: what the recipe cooked in before this step, an id of the lexicon or ""
    """
    spans = list(sentences(text))
    in_use_at = _in_use(text, spans, apparatus)
    heard = hear(text)
    degrees = [_degrees(heard, m) for m in heard.measures if _is_degrees(m)]
    found = sorted([*degrees, *_bare(text, heard), *_terse(text)], key=lambda figure: (figure.start, -figure.end))
    habits = replace(habits, metric=habits.metric or _speaks_celsius(text, spans, found, habits))
    again = dict(pairwise(degrees))
    reached = -1
    for figure in found:
        if figure.start < reached:
            continue
        sentence = next(s for s in spans if s.start <= figure.start < s.end)
        used = in_use(text, sentence, figure.start, in_use_at[sentence])
        place = _place(text, sentence, figure, used)
        mark = _mark(figure, place, habits)
        if mark is None:
            continue
        end = _said_again(text, mark, again.get(figure)) or figure.end
        reached = end
        yield replace(mark, start=figure.start, end=end)


def _is_degrees(measure: Measure) -> bool:
    return measure.kind == "degree" or (measure.kind == "temperature" and measure.unit in ("degF", "degC"))


def _degrees(heard: Heard, measure: Measure) -> _Figure:
    unit = cast(Unit, measure.unit) if measure.kind == "temperature" else None
    return _Figure(*heard.place(measure), measure.low, measure.high, measure.said, unit)


def _bare(text: str, heard: Heard) -> Iterator[_Figure]:
    """The numbers without a unit that the words around them make a temperature: "bake at 350 for", "to 165."."""
    alone = {
        n.start: n for n in heard.alone() if _BARE_DIGITS.fullmatch(heard.words[n.start].text) and n.end == n.start + 1
    }
    for number in alone.values():
        start, end = heard.place(number)
        if not _BARE_LEAD.search(text[max(0, start - LEAD) : start]):
            continue
        signed = number.end < len(heard.words) and heard.words[number.end].norm in RANGE_SIGNS
        for last in (alone.get(number.end + 1) if signed else None, number):
            if last and _BARE_TAIL.match(text, heard.place(last)[1]):
                end = heard.place(last)[1]
                yield _Figure(start, end, number.value, last.value, number.value, written="bare")
                break


def _terse(text: str) -> Iterator[_Figure]:
    for match in TERSE.finditer(text):
        figure = float(match["low"])
        yield _Figure(match.start("low"), match.end("low"), figure, figure, figure, written="terse")


def _said_again(text: str, mark: TempMark, other: _Figure | None) -> int | None:
    """Where a temperature ends that is said again in the other unit right behind; None where it is not."""
    if not other or not other.unit or abs(other.low - mark.low_c) >= SAME_C:
        return None
    closed = _AGAIN_END.match(text, other.end)
    return closed.end() if closed and _AGAIN.fullmatch(text, mark.end, other.start) else None


def _in_use(text: str, spans: list[Span], apparatus: str) -> dict[Span, str]:
    found = {}
    for sentence in spans:
        found[sentence] = apparatus
        apparatus = last_named(text, sentence, apparatus)
    return found


def units_named(text: str) -> set[Unit]:
    """The units of the temperatures that a text gives with their unit."""
    return {cast(Unit, m.unit) for m in hear(text).measures if _is_degrees(m) and m.kind == "temperature"}


def _speaks_celsius(text: str, spans: list[Span], found: list[_Figure], habits: Habits) -> bool:
    """Whether a step without units speaks Celsius: it has a bare oven setting that in Fahrenheit would be none."""
    if habits.unit:
        return False
    bare = [figure for figure in found if figure.written == "bare" and figure.low < 200]
    places = (_place(text, next(s for s in spans if s.start <= f.start < s.end), f, "") for f in bare)
    return any(next((role.what for role in evidence(place)), "") == OVEN for place in places)


def _place(text: str, sentence: Span, figure: _Figure, used: str) -> Place:
    part = clause(text, sentence, figure.start, figure.end)
    return Place(text, figure.start, figure.end, sentence, part, used)


def _mark(figure: _Figure, place: Place, habits: Habits) -> TempMark | None:
    if figure.high < figure.low or figure.said > HOTTEST or (figure.unit is None and _turned(place)):
        return None
    return _settled(evidence(place, terse=figure.written == "terse"), figure, habits, place)


def _turned(place: Place) -> bool:
    """Whether the figure is an angle: "rotate the pan 180°", "a 45° angle"."""
    if _TURN_AFTER.match(place.text, place.end):
        return True
    lead = place.text[max(place.clause.start, place.start - 50) : place.start]
    return bool(clause_word("turned", r"(?!\s+(?:the\s+)?(?:oven|heat|temperature|up|down))[^.;,]*$").search(lead))


def _settled(candidates: Iterable[Role], figure: _Figure, habits: Habits, place: Place) -> TempMark:
    """The first candidate that can be so hot, in the unit it is written in or would have to be in."""
    for found in candidates:
        for scale in _scales(found, figure.low, figure.unit, habits):
            low_c, high_c = figure.celsius(scale)
            if found.low_c <= low_c <= high_c <= found.high_c:
                return _of(found.what, figure, scale, habits, place)
    scale = figure.unit or habits.unit or ("degC" if figure.high < (250 if habits.metric else 100) else "degF")
    return _of(_by_figure(figure.celsius(scale)[0], habits.sweet, place), figure, scale, habits, place)


def _of(what: str, figure: _Figure, scale: Unit, habits: Habits, place: Place) -> TempMark:
    low_c, high_c = figure.celsius(scale)
    kind = cast(TempOf, _doubted(what, low_c, habits, place))
    return TempMark(figure.start, figure.end, low_c, high_c, scale, kind)


def _scales(role: Role, figure: float, unit: Unit | None, habits: Habits) -> tuple[Unit, ...]:
    """The units a figure may be in: its own, that of the recipe, or the one in which the role can be so hot."""
    if unit:
        return (unit,)
    if habits.unit:
        least, most = READING_F
        other = role.what == FOOD and not habits.sweet and habits.unit == "degC" and least <= figure <= most
        return (habits.unit, "degF") if other else (habits.unit,)
    from_f = 250 if role.what == OVEN and habits.metric else role.fahrenheit_from
    return ("degF",) if figure >= from_f else ("degC",)


def _doubted(what: str, temp_c: float, habits: Habits, place: Place) -> str:
    """What a figure is on a second look: some that would move are none of their kind."""
    if temp_c < COOLED_TO_C and what in (FOOD, *WARMED) and _COOLED_TO.search(place.before):
        return OTHER
    if what == OVEN and temp_c <= BARELY_WARM_C and (habits.warm or _put_in(place)):
        return HOLD
    if what == WATER and temp_c >= BOILS_FROM_C and (place.to_reach or not _LIQUID_BOILS.search(place.before)):
        return FOOD if place.to_reach else OTHER
    return what


def _put_in(place: Place) -> bool:
    """Whether the clause only puts something into a warm oven: "slide the plates into a 200 °F oven"."""
    return says("put", place.said) and not _BAKES.search(place.text, place.sentence.start, place.sentence.end)


def _by_figure(temp_c: float, sweet: bool, place: Place) -> str:
    if temp_c < 48:
        return "proof"
    if temp_c < SUGAR_FROM_C:
        return FOOD
    if sweet and temp_c < SUGAR_TO_C and place.to_reach:
        return SUGAR
    return OVEN if temp_c >= OVEN_FROM_C and not place.to_reach else OTHER
