"""One step of the method -> Step: its times, temperatures, pressures, cues and vessels, each marked where it stands."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from functools import cache
from itertools import chain, pairwise
from typing import Literal, cast, get_args

from assistant.recipes.lines import any_of
from assistant.recipes.numbers import NUMBER, NUMBER_WORD, RANGE_SIGN, number
from rules import tables
from rules.recipe import Cue, CueOf, PressureMark, Step, TempMark, TempOf, TimeMark, TimeOf, Vessel
from rules.say import PSI_PER_PA, to_c

LONGEST = 8_000
OVERNIGHT_MIN = (480.0, 720.0)
# What can be at a temperature at all [degC]: a candidate outside is no candidate.
PLAUSIBLE_C: dict[str, tuple[float, float]] = {
    "oven": (60, 450),
    "food": (30, 103),
    "sugar": (99, 195),
    "fat": (115, 215),
    "proof": (1, 50),
    "water": (1, 101),
    "hold": (1, 100),
    "other": (50, 300),
}
# From which bare figure on it must be Fahrenheit, by what is at that temperature.
BARE_FAHRENHEIT = {
    "oven": 250, "food": 106, "sugar": 200, "fat": 216, "proof": 55, "water": 101, "hold": 100, "other": 200,
}  # fmt: skip

_FLAGS = re.IGNORECASE
_FIGURE = rf"(?:{NUMBER}|{NUMBER_WORD})"
_TIME_UNIT = r"(?:seconds?|secs?|minutes?|mins?|hours?|hrs?|h|m|days?)(?![\w/])"
_ONE_TIME = rf"{_FIGURE}(?:\s+an?d\s+a\s+half)?[\s-]*(?:more\s+|full\s+|further\s+)?{_TIME_UNIT}(?:\s+and\s+a\s+half)?"
_TIME = re.compile(
    rf"(?P<soft>(?:\b(?:about|around|approximately|approx\.?|roughly)\s+|~)?)(?P<least>(?:\bat\s+least\s+)?)(?<![\d/.,])"
    rf"(?:(?P<from>{_FIGURE}){RANGE_SIGN}(?:about\s+)?)?(?P<time>{_ONE_TIME}(?:,?\s+(?:and\s+)?{_ONE_TIME})?)"
    rf"(?:{RANGE_SIGN}(?:up\s+to\s+)?(?P<upto>{_ONE_TIME}(?:,?\s+(?:and\s+)?{_ONE_TIME})?))?(?P<more>\s+or\s+(?:more|longer)\b)?",
    _FLAGS,
)
_PIECE = re.compile(
    rf"(?P<figure>{_FIGURE})(?P<half>\s+an?d\s+a\s+half)?[\s-]*(?:more\s+|full\s+|further\s+)?(?P<unit>{_TIME_UNIT})"
    r"(?P<half2>\s+and\s+a\s+half)?",
    _FLAGS,
)
_MINUTES = {"s": 1 / 60, "m": 1.0, "h": 60.0, "d": 1440.0}
_TEMP_UNIT = (
    r"\s?(?:(?:º|°|˚|deg\.?|degrees?)\s?(?P<unit>f|c|fahrenheit|celsius|centigrade)?"
    r"|(?P<unit2>f|c|fahrenheit|celsius))(?!\w)"
)
_EXPLICIT = re.compile(
    rf"(?<![\d/.,])(?P<low>{NUMBER})(?:\s?(?:°|º|˚)?\s?[fc]?{RANGE_SIGN}(?P<high>{NUMBER}))?{_TEMP_UNIT}",
    _FLAGS,
)
_BARE = re.compile(
    r"\b(?:at|to|of|above|below|over|under|reaches|registers|reads|hits|past|oven:?|preheat)\s+"
    r"(?:about\s+|around\s+|a\s+steady\s+)?"
    rf"(?P<low>\d{{2,3}})(?:{RANGE_SIGN}(?P<high>\d{{2,3}}))?(?![\d/.,]*\d)"
    r"(?=\s*(?:$|[.,;:)]|(?:for|until|about|on|with|and|or|if|before|then|in|while|so|over|without|to\s+a)\b|\d))",
    _FLAGS,
)
# "350 - 10 to 12 min", "375 for 25 minutes", as cards have it.
TERSE = re.compile(
    r"(?:^|(?<=[.;:]\s))\s*(?P<low>[1-5]\d\d)(?P<high>(?!))?(?=\s*(?:for|[-–—,])\s*(?:about\s+)?\d[^.;]{0,14}?(?:min|hour|hr|h\b))",
    _FLAGS,
)
_AGAIN = re.compile(
    rf"\s?[(/\[,]\s?(?:about\s+)?(?P<low>{NUMBER})(?:{RANGE_SIGN}(?P<high>{NUMBER}))?{_TEMP_UNIT}\s?(?:fan\s?)?[)\]]?",
    _FLAGS,
)
_PRESSURE = re.compile(
    rf"(?P<figure>{NUMBER})\s?(?:-\s?)?(?P<unit>psig?|lbs?\.?(?:\s+of)?\s+pressure|pounds?(?:\s+of)?\s+pressure|kpa|bar)(?!\w)",
    _FLAGS,
)
_PA = {"p": 1 / PSI_PER_PA, "l": 1 / PSI_PER_PA, "k": 1000.0, "b": 100_000.0}
_OF = re.compile(r"\s*-?\s*(?:of\s+)?(?:\w+\s+)?", _FLAGS)
_AGAIN_WORD = re.compile(r"\b(?:more|another|longer|further|additional)\b", _FLAGS)
_COOLED_TO = re.compile(r"\b(?:cool|chill)(?:ed|s|ing)?\b[^.;]{0,40}$", _FLAGS)
_COOKED_TO = re.compile(r"\b(?:cook|boil|cooked|boiled)\b[^.;]{0,25}\bto\s+(?:about\s+)?$", _FLAGS)
_SENTENCE = re.compile(r"(?<=[.;!?])\s+|\n+")
# Words that name no action here: what is waited for, what is done meanwhile, and names of things.
_MASKED = re.compile(
    r"\buntil\b(?![^,.;]*\b(?:doubled?|doubles|puffy|risen|reduced)\b)[^,.;]*"
    r"|\b(?:stirring|whisking|turning|basting|skimming|swirling|tossing|flipping|rotating)\b[^,.;]*?(?=\bfor\b|[,.;]|$)"
    r"|\breduce\s+(?:the\s+)?(?:heat|oven|temperature|speed|flame)|\bthe\s+rest\b(?!\s+time)|\bstand\s+mixer|\bwith\s+steam"
    r"|\b(?:low|medium|high|moderate|gentle|off\s+the|off|the|of|from)\s+heat\b"
    r"|\bdutch\s+oven|\bboiling\s+water|\bover\s+(?:\w+\s+){0,2}simmering\s+water|\bdouble\s+boiler|\b(?:heavy|sour|ice|whipped|whipping|double|pastry|the)\s+cream\b|\bcream\s+cheese"
    r"|\bcream\s+of\s+tartar|\b(?:brown|icing|granulated)\s+sugar|\bbaking\s+(?:sheet|pan|dish|powder|soda|stone|steel|paper|tin)s?\b|\bbaked?\s+goods|\bfrying\s+pan"
    r"|\broasting\s+pan|\bcake\s+mix|\bslow\s+cooker|\bpressure\s+cooker|\brice\s+cooker|\bcold\s+milk|\bcooking\s+(?:liquid|water|spray)"
    r"|\bcooled?\s+(?:to|butter|syrup)|\bfried\b|\bmixing\s+bowl|\bcooling\s+rack|\b(?:into|onto)\s+the\s+(?:mix|batter)",
    _FLAGS,
)


@dataclass(frozen=True, slots=True)
class _Word:
    what: str
    start: int
    end: int


@cache
def _lexicon(section: str) -> tuple[tuple[str, re.Pattern[str]], ...]:
    kinds = tables.read_toml("lexicon/recipe_words.toml")[section]
    return tuple((kind, re.compile(rf"(?<![\w-]){any_of(section, kind)}", _FLAGS)) for kind in kinds)


def _words_in(section: str, text: str) -> list[_Word]:
    """The words of a section in a text, in order; a longer word hides the shorter ones inside it."""
    found = [_Word(kind, m.start(), m.end()) for kind, pattern in _lexicon(section) for m in pattern.finditer(text)]
    found.sort(key=lambda w: (w.start, w.start - w.end))
    kept: list[_Word] = []
    for word in found:
        if not kept or word.start >= kept[-1].end:
            kept.append(word)
    return kept


def _sentences(text: str) -> Iterator[tuple[int, int]]:
    cuts = [0, *(m.end() for m in _SENTENCE.finditer(text)), len(text)]
    return ((a, b) for a, b in pairwise(cuts) if b > a)


def _minutes(text: str) -> float:
    total, last = 0.0, "h"
    for piece in _PIECE.finditer(text):
        last = piece["unit"][0].lower()
        half = 0.5 if piece["half"] or piece["half2"] else 0.0
        total += (number(piece["figure"]) + half) * _MINUTES[last]
    return total


def _time_of(words_here: list[_Word], start: int, end: int, text: str, pressed: bool) -> TimeOf:
    """What a time is the time of: "20 minutes of baking", else the nearest word before, else the nearest after.

    "cook" says little: a more telling word of the same sentence wins over it.
    """
    direct = next((w.what for w in words_here if w.start >= end and _OF.fullmatch(text, end, w.start)), None)
    before = [w.what for w in words_here if w.end <= start]
    after = [w.what for w in words_here if w.start >= end]
    ranked = ([direct] if direct else []) + before[::-1] + after
    telling = [w for w in ranked if w not in ("cook", "preheat")]
    chosen = ranked[0] if ranked else None
    if chosen == "cook" or chosen == "preheat":
        chosen = "pressure" if pressed else telling[0] if telling and telling[0] in _WET else chosen
    return cast(TimeOf, chosen) if chosen in get_args(TimeOf) else "other"


_WET = {"simmer", "boil", "braise", "poach", "steam", "reduce", "fry", "pressure", "microwave", "bake"}


@cache
def _verb_first() -> re.Pattern[str]:
    return re.compile(rf"^\s*{any_of('steps', 'verbs')}", _FLAGS)


def _carries(sentence: str) -> bool:
    """Whether a sentence goes on with what the one before was about: "About 20 minutes.", "Then 10 minutes more"."""
    return bool(_AGAIN_WORD.search(sentence)) or not _verb_first().match(sentence)


def _times(text: str) -> Iterator[TimeMark]:
    masked = _MASKED.sub(lambda m: " " * len(m[0]), text)
    pressed = bool(re.search(r"\bpressure\b|\bpsi\b", text, _FLAGS))
    carried: list[_Word] = []
    for begin, stop in _sentences(text):
        here = [_Word(w.what, w.start + begin, w.end + begin) for w in _words_in("times", masked[begin:stop])]
        if terse := TERSE.match(text, begin):
            here.append(_Word("bake", terse.start("low"), terse.end("low")))
        for found in _TIME.finditer(text, begin, stop):
            low, high = _span(found)
            if high <= 0:
                continue
            again = here or (carried if _carries(text[begin:stop]) else [])
            what = _time_of(again, found.start("time"), found.end(), masked, pressed)
            start = min(found.start(name) for name in ("from", "time") if found.start(name) >= 0)
            yield TimeMark(
                start, found.end(), low, high, what, bool(found["soft"]), bool(found["least"] or found["more"])
            )
        for night in re.compile(r"\bovernight\b", _FLAGS).finditer(text, begin, stop):
            what = _time_of(here or carried, night.start(), night.end(), masked, pressed)
            yield TimeMark(night.start(), night.end(), *OVERNIGHT_MIN, what, approx=True)
        carried = [_Word(w.what, -1, -1) for w in here] or carried


def _span(found: re.Match[str]) -> tuple[float, float]:
    time = _minutes(found["time"])
    if found["upto"]:
        return min(time, _minutes(found["upto"])), max(time, _minutes(found["upto"]))
    if found["from"]:
        unit = _PIECE.search(found["time"])
        low = number(found["from"]) * _MINUTES[unit["unit"][0].lower()] if unit else time
        return (low, time) if low <= time else (time, time)
    return time, time


def _celsius(value: float, unit: str) -> float:
    return value if unit == "degC" else to_c(value)


def _unit(found: re.Match[str]) -> Literal["degF", "degC"] | None:
    letter = (found["unit"] or found["unit2"] or "").lower()[:1]
    return "degF" if letter == "f" else "degC" if letter else None


def _candidates(text: str, start: int, end: int, span: tuple[int, int]) -> list[str]:
    """What the temperature may be of, best guess first: the nearest words of its sentence, those before it first."""
    begin, stop = span
    here = [_Word(w.what, w.start + begin, w.end + begin) for w in _words_in("temperatures", text[begin:stop])]
    before = sorted((w for w in here if w.end <= start), key=lambda w: start - w.end)
    after = sorted((w for w in here if w.start >= end), key=lambda w: w.start - end)
    telling = [w.what for w in here if w.what in ("hold", "food") and abs(w.start - start) < 60]
    earlier = [w.what for w in reversed(_words_in("temperatures", text[:begin]))]
    if not here and _COOKED_TO.search(text[max(begin, start - 40) : start]):
        telling.append("sugar")
    return list(dict.fromkeys([*telling, *(w.what for w in before), *(w.what for w in after), *earlier]))


def _temp_of(
    candidates: Iterable[str], low: float, high: float, unit: str | None, metric: bool, sweet: bool
) -> TempMark:
    for what in candidates:
        scale = unit or ("degF" if low >= _bare_from(what, metric) else "degC")
        low_c, high_c = _celsius(low, scale), _celsius(high, scale)
        least, most = PLAUSIBLE_C[what]
        if least <= low_c <= high_c <= most:
            return TempMark(0, 0, low_c, high_c, cast(Literal["degF", "degC"], scale), cast(TempOf, what))
    scale = unit or ("degC" if high < (250 if metric else 100) else "degF")
    low_c, high_c = _celsius(low, scale), _celsius(high, scale)
    return TempMark(0, 0, low_c, high_c, cast(Literal["degF", "degC"], scale), _by_figure(low_c, sweet))


def _bare_from(what: str, metric: bool) -> float:
    return 250 if what == "oven" and metric else 200 if what == "oven" else BARE_FAHRENHEIT[what]


def _by_figure(temp_c: float, sweet: bool) -> TempOf:
    if temp_c < 48:
        return "proof"
    if temp_c < 100:
        return "food"
    return "sugar" if sweet and temp_c < 180 else "oven"


def _temperatures(text: str, metric: bool, sweet: bool) -> Iterator[TempMark]:
    spans = list(_sentences(text))
    every = chain.from_iterable(pattern.finditer(text) for pattern in (_EXPLICIT, _BARE, TERSE))
    found = sorted(every, key=lambda m: (m.start("low"), -m.end()))
    bare = [(m, next(s for s in spans if s[0] <= m.start("low") < s[1])) for m in found if m.re is _BARE]
    metric |= any(
        int(m["low"]) < 200 and _candidates(text, m.start("low"), m.end("low"), span)[:1] == ["oven"]
        for m, span in bare
    )
    reached = -1
    for match in found:
        start = match.start("low")
        if start < reached:
            continue
        low = number(match["low"])
        high = number(match["high"]) if match["high"] else low
        unit = _unit(match) if match.re is _EXPLICIT else None
        if high < low or high > 900:
            continue
        end = (
            match.end("high")
            if match.re is _BARE and match["high"]
            else match.end("low")
            if match.re is _BARE
            else match.end()
        )
        span = next(s for s in spans if s[0] <= start < s[1])
        mark = _temp_of(_candidates(text, start, end, span), low, high, unit, metric, sweet)
        if mark.low_c < 75 and _COOLED_TO.search(text[span[0] : start]):
            mark = replace(mark, what="other")
        again = _AGAIN.match(text, end)
        if again and (other := _unit(again)) and abs(_celsius(number(again["low"]), other) - mark.low_c) < 9:
            end = again.end()
        reached = end
        yield TempMark(start, end, mark.low_c, mark.high_c, mark.unit, mark.what)


def _cues(text: str) -> tuple[Cue, ...]:
    return tuple(Cue(w.start, w.end, cast(CueOf, w.what)) for w in _words_in("cues", text))


@cache
def _vessel() -> re.Pattern[str]:
    side = r"\d[\d./ ]{0,11}(?:\s?(?:x|×|by|-)\s?\d[\d./]{0,7}){0,3}"
    size = rf"(?P<size>{side}[\s-]*(?:inch(?:es)?|in\.|cm|quart|qt\.?|liter|litre|cup|\"|”)[\s-]*)?"
    kind = r"(?:(?:round|square|deep|heavy|nonstick|metal|glass|greased)\s+)*"
    return re.compile(rf"(?<![\w/]){size}{kind}(?P<name>{any_of('vessels', 'names')})", _FLAGS)


def vessels(text: str) -> tuple[Vessel, ...]:
    """The pans and pots that a text names."""
    return tuple(
        Vessel(m.start(), m.end(), " ".join(m["name"].lower().split()), (m["size"] or "").strip(" -"))
        for m in _vessel().finditer(text[:LONGEST])
    )


def read_step(text: str, component: str = "", *, metric: bool = False, sweet: bool = False) -> Step:
    """Read one step of a method.

    text: the step, any text; what lies beyond 8,000 characters is kept but not marked
    metric: whether the recipe speaks Celsius, for a bare "bake at 220"
    sweet: whether it boils sugar, for "cook to 240"
    returns: the step with its text unchanged

    >>> step = read_step("Bake at 350 for 30 to 35 minutes.")
    >>> [(t.low_min, t.high_min, t.what) for t in step.times], [(round(t.low_c), t.what) for t in step.temperatures]
    ([(30.0, 35.0, 'bake')], [(177, 'oven')])
    """
    seen = text[:LONGEST]
    pressures = tuple(
        PressureMark(m.start(), m.end(), number(m["figure"]) * _PA[m["unit"][0].lower()])
        for m in _PRESSURE.finditer(seen)
    )
    return Step(
        text=text,
        component=component,
        times=tuple(_times(seen)),
        temperatures=tuple(_temperatures(seen, metric, sweet)),
        pressures=pressures,
        cues=_cues(seen),
        vessels=vessels(seen),
    )
