"""The temperatures of a step, each with what is at that temperature, told by the words of its own clause.

What decides first is what is never rewritten: a reading inside food, a bath, a smoker, a warm oven, a refrigerator.
A figure is taken for an oven, for fat or for boiled sugar only where its clause says so and such a thing can be so hot.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from functools import cache
from itertools import chain
from typing import Any, Literal, cast

from assistant.recipes.clauses import Span, clause, clause_words, rows, sentences, waiting, words_in
from assistant.recipes.numbers import NUMBER, RANGE_SIGN, number
from assistant.recipes.times import TERSE, in_use, last_named
from rules.phrases import any_phrase
from rules.recipe import TempMark, TempOf
from rules.say import to_c

Unit = Literal["degF", "degC"]
FOOD, OVEN, FAT, SUGAR, WATER, HOLD, OTHER = "food", "oven", "fat", "sugar", "water", "hold", "other"
# What is warmed to a figure and stays at it.
WARMED = ("proof", "water", "other")
# Water that is made to boil or simmer is about so hot [degC]; cooler liquids are warmed, and stay as they are.
BOILS_FROM_C = 88.0
# An oven no hotter than this keeps food warm, where the recipe speaks of keeping it warm [degC]: 230 degF.
BARELY_WARM_C = 111.0
SUGAR_FROM_C = 100.0
OVEN_FROM_C = 115.0
HOTTEST = 900.0
LEAST_BARE_LETTER = 20
# A reading inside food that is given in Fahrenheit without saying so, where the rest speaks Celsius [degF].
READING_F = (130, 212)

_FLAGS = re.IGNORECASE
_SIGN = r"(?:º|°|˚|∘|deg\.?|degrees?)"
_TEMP_UNIT = (
    rf"\s?(?:-\s?)?(?:{_SIGN}\s?(?P<unit>f|c|fahrenheit|celsius|centigrade)?|(?P<unit2>f|c|fahrenheit|celsius|℉|℃))(?!\w)"
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
_COOKED_TO = re.compile(r"\b(?:cook|boil|cooked|boiled|cooking|boiling)\b[^.;]{0,40}\b(?:to|until|till)\s+[^.;]{0,40}$", _FLAGS)
_OVEN_TO = re.compile(
    r"(?:\boven|\bpreheat(?:ed)?)\W+(?:(?!cook|bake|roast|internal|until|inside)\w+\W+){0,4}$|\boven:?\s*$", _FLAGS
)
_ABOUT = r"\W*(?:an?\s+)?(?:(?:about|around|nearly|roughly|between)\s+)?$"
_AT = re.compile(r"\b(?:at|in\s+an?|in)\s+(?:about\s+|around\s+|a\s+)?$", _FLAGS)
_TURN_AFTER = re.compile(r"\s*[- ]?(?:turns?|angles?|rotation)\b", _FLAGS)
_COOKED_AT = re.compile(r"\b(?:cook|cooking|continue|finish|place|set|put|return|slide)\b", _FLAGS)
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


@dataclass(frozen=True, slots=True)
class _Role:
    what: str
    low_c: float
    high_c: float
    fahrenheit_from: float


@dataclass(frozen=True, slots=True)
class _Place:
    """A figure of a text: where it stands, its clause and sentence, and what is in use there."""

    text: str
    start: int
    end: int
    sentence: Span
    clause: Span
    apparatus: str

    @property
    def before(self) -> str:
        """The words of the clause before the figure."""
        return self.text[self.clause.start : self.start]

    @property
    def waited(self) -> bool:
        """Whether the figure is waited for: it stands behind an "until"."""
        waits = waiting(self.text, self.clause)
        return waits is not None and waits.start <= self.start

    @property
    def focus(self) -> Span:
        """The words that can tell what the figure is: what is waited for afterwards is another figure's."""
        waits = waiting(self.text, self.clause)
        return Span(self.clause.start, waits.start) if waits and waits.start > self.start else self.clause


@cache
def _roles() -> tuple[_Role, ...]:
    found = (_Role(r["id"], r["low_c"], r["high_c"], r["fahrenheit_from"]) for r in rows("temperature"))
    made = (_Role(r["temperature"], 30, 330, 131) for r in rows("apparatus") if r.get("temperature", OTHER) != OTHER)
    return (*found, *made)


def _role(what: str) -> _Role:
    return next(role for role in _roles() if role.what == what)


@cache
def _clause_word(name: str, tail: str) -> re.Pattern[str]:
    return re.compile(rf"{any_phrase(clause_words(name))}{tail}", _FLAGS)


def says(name: str, text: str) -> bool:
    """Whether a text says one of a list of words of the lexicon's section `clause`."""
    return bool(_clause_word(name, "").search(text))


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
        place = _Place(text, start, end, sentence, clause(text, sentence, start, end), used)
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
    place = _Place(text, start, end, sentence, part, "")
    return next(iter(_evidence(place, Habits(metric=True))), "") == OVEN


def _mark(match: re.Match[str], place: _Place, habits: Habits) -> TempMark | None:
    low = number(match["low"])
    high = number(match["high"]) if match["high"] else low
    signed = match.re in (_EXPLICIT, _BETWEEN, _SINGLE)
    unit = unit_of(match) if signed else None
    # "1 c" is a cup
    measure = signed and match["unit2"] in ("c", "C") and low < LEAST_BARE_LETTER
    if high < low or high > HOTTEST or measure or (unit is None and _turned(place)):
        return None
    mark = _settled(_evidence(place, habits, terse=match.re is TERSE), low, high, unit, habits, place)
    end, again = place.end, _AGAIN.match(place.text, place.end)
    if again and (other := unit_of(again)) and abs(_celsius(number(again["low"]), other) - mark.low_c) < 9:
        end = again.end()
    return replace(mark, start=place.start, end=end)


def _turned(place: _Place) -> bool:
    """Whether the figure is an angle: "rotate the pan 180°", "a 45° angle"."""
    if _TURN_AFTER.match(place.text, place.end):
        return True
    lead = place.text[max(place.clause.start, place.start - 50) : place.start]
    return bool(_clause_word("turned", r"(?!\s+(?:the\s+)?(?:oven|heat|temperature|up|down))[^.;,]*$").search(lead))


def _celsius(value: float, unit: Unit) -> float:
    return value if unit == "degC" else to_c(value)


# What a figure can be, the most believed first


def _evidence(place: _Place, habits: Habits, *, terse: bool = False) -> Iterator[str]:
    """What the figure may be of, best guess first."""
    named = _named(place, place.focus)
    around = [row for row in _named(place, place.sentence) if row.get("sentence")]
    strong = [row for row in rows("temperature") if row in [*named, *around] and not row.get("near")]
    to_reach = _to_reach(place)
    yield from (row["id"] for row in strong if not row["moves"] and row["id"] != HOLD)
    yield from _other_apparatus(place)
    yield from (row["id"] for row in strong if row["id"] == HOLD)
    if (_OVEN_TO.search(place.before) or terse) and not _other_apparatus(place):
        yield OVEN
    if says("reset", place.before):
        yield from (what for what in _earlier(place, place.clause) if what in (OVEN, FAT))
    yield from (row["id"] for row in strong if row["moves"])
    if to_reach:
        yield from (what for what in _nearest(place) if what in WARMED and not place.waited)
        yield FOOD
    yield from _nearest(place)
    if to_reach and _COOKED_TO.search(place.before):
        yield SUGAR
    yield from _earlier(place, place.sentence)
    if _COOKED_AT.search(place.before) and place.apparatus == OVEN:
        yield OVEN


def _named(place: _Place, part: Span) -> list[dict[str, Any]]:
    """The rows that are named in a piece of the text."""
    return [rows("temperature")[word.row] for word in words_in("temperature", place.text, part.start, part.end)]


def _to_reach(place: _Place) -> bool:
    """Whether the figure is one to be reached: "to 165", "until it reads 74 °C", "a minimum of 165 degrees"."""
    if _AT.search(place.before):
        return False
    return place.waited or bool(_clause_word("reached", _ABOUT).search(place.before))


def _other_apparatus(place: _Place) -> tuple[str, ...]:
    """What a figure is where the food cooks in something that is no oven."""
    row = next((r for r in rows("apparatus") if r["id"] == place.apparatus), {})
    return (row["temperature"],) if row.get("temperature") else ()


def _nearest(place: _Place) -> Iterator[str]:
    """The roles named by single words of the sentence, the nearest before the figure first."""
    here = words_in("temperature", place.text, place.sentence.start, place.sentence.end)
    before = sorted((w for w in here if w.end <= place.start), key=lambda w: place.start - w.end)
    after = sorted((w for w in here if w.start >= place.end), key=lambda w: w.start - place.end)
    yield from (w.what for w in (*before, *after))


def _earlier(place: _Place, part: Span) -> Iterator[str]:
    """The roles named before a piece of the text, the last first."""
    yield from (w.what for w in reversed(words_in("temperature", place.text, 0, part.start)))


def _settled(
    candidates: Iterable[str], low: float, high: float, unit: Unit | None, habits: Habits, place: _Place
) -> TempMark:
    """The first candidate that can be so hot, in the unit it is written in or would have to be in."""
    for what in candidates:
        for scale in _scales(_role(what), low, unit, habits):
            low_c, high_c = _celsius(low, scale), _celsius(high, scale)
            if _role(what).low_c <= low_c <= high_c <= _role(what).high_c:
                return TempMark(0, 0, low_c, high_c, scale, cast(TempOf, _doubted(what, low_c, habits, place)))
    scale = unit or habits.unit or ("degC" if high < (250 if habits.metric else 100) else "degF")
    low_c, high_c = _celsius(low, scale), _celsius(high, scale)
    what = _by_figure(low_c, habits.sweet, place)
    return TempMark(0, 0, low_c, high_c, scale, cast(TempOf, _doubted(what, low_c, habits, place)))


def _scales(role: _Role, figure: float, unit: Unit | None, habits: Habits) -> tuple[Unit, ...]:
    """The units a figure may be in: its own, that of the recipe, or the one in which the role can be so hot."""
    if unit:
        return (unit,)
    if habits.unit:
        least, most = READING_F
        other = role.what == FOOD and not habits.sweet and habits.unit == "degC" and least <= figure <= most
        return (habits.unit, "degF") if other else (habits.unit,)
    least = 250 if role.what == OVEN and habits.metric else role.fahrenheit_from
    return ("degF",) if figure >= least else ("degC",)


def _doubted(what: str, temp_c: float, habits: Habits, place: _Place) -> str:
    """What a figure is on a second look: some that would move are none of their kind."""
    if temp_c < 75 and what in (FOOD, *WARMED) and _COOLED_TO.search(place.before):
        return OTHER
    if what == OVEN and habits.warm and temp_c <= BARELY_WARM_C:
        return HOLD
    if what == WATER and temp_c >= BOILS_FROM_C and (_to_reach(place) or not _LIQUID_BOILS.search(place.before)):
        return FOOD if _to_reach(place) else OTHER
    return what


def _by_figure(temp_c: float, sweet: bool, place: _Place) -> str:
    if temp_c < 48:
        return "proof"
    if temp_c < SUGAR_FROM_C:
        return FOOD
    if sweet and temp_c < 180 and _to_reach(place):
        return SUGAR
    return OVEN if temp_c >= OVEN_FROM_C and not _to_reach(place) else OTHER
