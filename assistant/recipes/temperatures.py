"""The temperatures of a step, each with what is at that temperature and the unit it is in."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from itertools import chain
from typing import Literal, cast

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
from assistant.recipes.numbers import NUMBER, RANGE_SIGN, number
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
LEAST_BARE_LETTER = 20
# A reading inside food that is given in Fahrenheit without saying so, where the rest speaks Celsius [degF].
READING_F = (130, 212)

_FLAGS = re.IGNORECASE
_SIGN = r"(?:º|°|˚|∘|deg\.?|degrees?)"
_TEMP_UNIT = (
    rf"\s?(?:-\s?)?(?:{_SIGN}\s?(?P<unit>f|c|fahrenheit|celsius|centigrade)?"
    r"|(?P<unit2>f|c|fahrenheit|celsius|℉|℃))(?!\w)"
)
_LOW = rf"(?<![\d/.,])(?P<low>{NUMBER})"
_LOW_UNIT = rf"\s?{_SIGN}?\s?(?:f|c|fahrenheit|celsius|℉|℃)?"
_EXPLICIT = re.compile(rf"{_LOW}(?:{_LOW_UNIT}{RANGE_SIGN}(?P<high>{NUMBER}))?{_TEMP_UNIT}", _FLAGS)
_SINGLE = re.compile(rf"{_LOW}(?P<high>(?!))?{_TEMP_UNIT}", _FLAGS)
_BETWEEN = re.compile(rf"\bbetween\s+{_LOW}{_LOW_UNIT}\s+and\s+(?P<high>{NUMBER}){_TEMP_UNIT}", _FLAGS)
_BARE = re.compile(
    r"\b(?:at|to|of|above|below|over|under|reaches|reach|registers|register|reads|read|hits|is|are|past|until|oven:?|preheat)\s+"
    r"(?:about\s+|around\s+|a\s+steady\s+|at\s+least\s+)?"
    rf"(?P<low>\d{{2,3}})(?:{RANGE_SIGN}(?P<high>\d{{2,3}}))?(?![\d/.,]*\d)"
    r"(?=\s*(?:$|[.,;:)]|(?:for|until|about|on|with|and|or|if|before|then|in|inside|internal|while|so|over|without|to\s+a)\b|\d))",
    _FLAGS,
)
_AGAIN = re.compile(
    rf"\s?[(/\[,]\s?(?:about\s+)?(?P<low>{NUMBER})(?:{RANGE_SIGN}(?P<high>{NUMBER}))?{_TEMP_UNIT}\s?(?:fan\s?)?[)\]]?",
    _FLAGS,
)
_COOLED_TO = re.compile(r"\b(?:cool|chill)(?:ed|s|ing)?\b[^.;]{0,40}$", _FLAGS)
_TURN_AFTER = re.compile(r"\s*[- ]?(?:turns?|angles?|rotation)\b", _FLAGS)
_BAKES = re.compile(r"\b(?:bak(?:e|ed|ing)|roast(?:ed|ing)?|dry|drying|dried|cook|cooking|braise)\b", _FLAGS)
_LIQUID_BOILS = re.compile(r"\b(?:simmer|boil|steam|brew|bubbl)", _FLAGS)


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
    every = chain(_explicit(text), *(pattern.finditer(text) for pattern in (_BETWEEN, _BARE, TERSE)))
    found = sorted(every, key=lambda m: (m.start("low"), -m.end()))
    habits = replace(habits, metric=habits.metric or _speaks_celsius(text, spans, found, habits))
    reached = -1
    for match in found:
        start, end = match.start("low"), _end(match)
        if start < reached:
            continue
        sentence = next(s for s in spans if s.start <= start < s.end)
        used = in_use(text, sentence, start, in_use_at[sentence])
        place = Place(text, start, end, sentence, clause(text, sentence, start, end), used)
        mark = _mark(match, place, habits)
        if mark is None:
            continue
        reached = mark.end
        yield mark


def _explicit(text: str) -> Iterator[re.Match[str]]:
    """The figures with a unit or a degree sign; what falls is no range ("at 375 °F to 165 °F inside")."""
    for match in _EXPLICIT.finditer(text):
        if match["high"] and number(match["high"]) < number(match["low"]):
            yield from _SINGLE.finditer(text, match.start(), match.end())
        else:
            yield match


def _in_use(text: str, spans: list[Span], apparatus: str) -> dict[Span, str]:
    found = {}
    for sentence in spans:
        found[sentence] = apparatus
        apparatus = last_named(text, sentence, apparatus)
    return found


def _end(match: re.Match[str]) -> int:
    if match.re is _BARE:
        return match.end("high") if match["high"] else match.end("low")
    return match.end("low") if match.re is TERSE else match.end()


def unit_of(match: re.Match[str]) -> Unit | None:
    """The unit that a figure names, if it does."""
    letter = (match["unit"] or match["unit2"] or "").lower()[:1]
    return "degF" if letter in ("f", "℉") else "degC" if letter else None


def units_named(text: str) -> set[Unit]:
    """The units of the temperatures that a text gives with their unit."""
    return {unit for match in _EXPLICIT.finditer(text) if (unit := unit_of(match))}


def _speaks_celsius(text: str, spans: list[Span], found: list[re.Match[str]], habits: Habits) -> bool:
    """Whether a step without units speaks Celsius: it has a bare oven setting that in Fahrenheit would be none."""
    if habits.unit:
        return False
    bare = [m for m in found if m.re is _BARE and int(m["low"]) < 200]
    places = ((m, next(s for s in spans if s.start <= m.start("low") < s.end)) for m in bare)
    return any(_oven_named(text, s, m) for m, s in places)


def _oven_named(text: str, sentence: Span, match: re.Match[str]) -> bool:
    start, end = match.start("low"), _end(match)
    part = clause(text, sentence, start, end)
    place = Place(text, start, end, sentence, part)
    return next((found.what for found in evidence(place)), "") == OVEN


def _mark(match: re.Match[str], place: Place, habits: Habits) -> TempMark | None:
    low = number(match["low"])
    high = number(match["high"]) if match["high"] else low
    signed = match.re in (_EXPLICIT, _BETWEEN, _SINGLE)
    unit = unit_of(match) if signed else None
    # "1 c" is a cup
    measure = signed and match["unit2"] in ("c", "C") and low < LEAST_BARE_LETTER
    if high < low or high > HOTTEST or measure or (unit is None and _turned(place)):
        return None
    mark = _settled(evidence(place, terse=match.re is TERSE), low, high, unit, habits, place)
    end, again = place.end, _AGAIN.match(place.text, place.end)
    if again and (other := unit_of(again)) and abs(_celsius(number(again["low"]), other) - mark.low_c) < 9:
        end = again.end()
    return replace(mark, start=place.start, end=end)


def _turned(place: Place) -> bool:
    """Whether the figure is an angle: "rotate the pan 180°", "a 45° angle"."""
    if _TURN_AFTER.match(place.text, place.end):
        return True
    lead = place.text[max(place.clause.start, place.start - 50) : place.start]
    return bool(clause_word("turned", r"(?!\s+(?:the\s+)?(?:oven|heat|temperature|up|down))[^.;,]*$").search(lead))


def _celsius(value: float, unit: Unit) -> float:
    return value if unit == "degC" else to_c(value)


def _settled(
    candidates: Iterable[Role], low: float, high: float, unit: Unit | None, habits: Habits, place: Place
) -> TempMark:
    """The first candidate that can be so hot, in the unit it is written in or would have to be in."""
    for found in candidates:
        for scale in _scales(found, low, unit, habits):
            low_c, high_c = _celsius(low, scale), _celsius(high, scale)
            if found.low_c <= low_c <= high_c <= found.high_c:
                return TempMark(0, 0, low_c, high_c, scale, cast(TempOf, _doubted(found.what, low_c, habits, place)))
    scale = unit or habits.unit or ("degC" if high < (250 if habits.metric else 100) else "degF")
    low_c, high_c = _celsius(low, scale), _celsius(high, scale)
    what = _by_figure(low_c, habits.sweet, place)
    return TempMark(0, 0, low_c, high_c, scale, cast(TempOf, _doubted(what, low_c, habits, place)))


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
