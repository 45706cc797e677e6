"""Figures as elevations: with a unit of height, in thousands of feet, or bare where the sentence makes them one."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Sequence
from dataclasses import replace

from assistant.reading.elevation_names import unit_that_fits
from assistant.reading.places import height_unit
from assistant.reading.spans import Elevation, Measure, Number
from assistant.reading.units import spellings, tells_heights, to_si
from assistant.understanding.cue_words import cues

SMALLEST_BARE = 300
HIGHEST_MILES = 3
EXPLICIT, EXPLICIT_REACH = ("elevation", "altitude", "altimeter", "gps"), 4
# between a word for elevation and a figure on which it acts: does altitude shift the 170
ACTS_ON = frozenset(("shift", "shifts", "affect", "affects", "alter", "alters", "move", "moves", "change", "changes"))
SIGNS = ("to", "and", "or", "not", "-", "vs", "versus", "into")
LISTED = (*SIGNS, ",", "then")
YEARS = range(1900, 2101)
SMALLEST_PLAIN, SMALLEST_AT_END, HIGHEST_PLAIN = 1000, 2000, 20_000
CORRECTIONS = cues("elevation", "corrections")
# the mid station, 1900: a figure behind such a place is its elevation
STATIONS = cues("elevation", "stations")
LEADS, LINKS, ENDS = cues("elevation", "leads"), cues("elevation", "links"), cues("elevation", "ends")
NOT_AFTER, DWELLING = cues("elevation", "not_after"), cues("elevation", "dwelling")
PER, RELATIVE, LENGTHS = cues("elevation", "per"), cues("elevation", "relative"), cues("elevation", "lengths")
BOUNDS, ADVICE, ADVISERS = cues("elevation", "bounds"), cues("elevation", "advice"), cues("elevation", "advisers")
COLUMNS, CONVERTED = cues("elevation", "columns"), cues("elevation", "converted")
UNIT_CORRECTIONS, UNIT_FILLERS = cues("elevation", "unit_corrections"), cues("elevation", "unit_fillers")
SHORT_LEADS = ("at", "elevation", "altitude", "from", "to", "im", "were", "minus")
THOUSAND = 1000
HEIGHT_WORDS = ("feet", "ft", "metres", "meters", "metre", "meter", "m")
# we sleep on 4,200
SLEEPS = cues("elevation", "sleeps")
# words before a figure among which it is put right
CORRECTION_REACH = 5
# shorter than this a length is a height only where a word says so [m]
LEAST_HEIGHT_M, MOST_FILLERS = 60.0, 6
# from here on a length behind a word of place is a height, whatever thing is named next: at 2,400 m oven 200 [m]
LEAST_PLACED_M = 300.0
# eight five, twelve two: thousands and hundreds of feet said as two figures
THOUSANDS_SAID, HUNDREDS_SAID = range(5, 15), range(1, 10)
# bare figures that are no round ones in feet and fit the metres of towns
IN_METRES, ROUND_FT = (1500, 3999), 50
# what tells in which unit heights are told there, and up to where a kitchen or a camp may be
LANDS = {"m": cues("elevation", "lands_in_metres"), "ft": cues("elevation", "lands_in_feet")}
HIGHEST_IN = {"m": 5900.0, "ft": 20_000.0}
FEET_SPOKEN = ("ft", "mi", "degF", "lb", "oz", "inHg", "qt", "gal", "pt", "in", "fl_oz", "psi", "cup", "tbsp", "tsp")


def stated(words: Sequence[str], measures: Iterable[Measure]) -> list[Elevation]:
    """Lengths that are heights: 7,000 ft, 2.1 km, 200 feet below sea level. A mile up is one, a drive of 20 is not."""
    found = []
    for measure in measures:
        if measure.kind != "length" or not tells_heights(measure.unit):
            continue
        m = _put_right(words, measure)
        tail = list(words[m.end : m.end + 3])
        if tail in (["above", "sea", "level"], ["below", "sea", "level"]):
            found.append(Elevation(m.start, m.end + 3, -m.said if tail[0] == "below" else m.said, m.unit, "here"))
        elif not _is_no_height(words, m):
            found.append(Elevation(m.start, m.end, m.said, m.unit, "here"))
    return found


def _put_right(words: Sequence[str], m: Measure) -> Measure:
    """The length in the unit that was meant: 3,200 ft, sorry, METRES."""
    at, corrected = m.end, False
    while (
        at < len(words) and at - m.end < MOST_FILLERS and (words[at] in UNIT_CORRECTIONS or words[at] in UNIT_FILLERS)
    ):
        corrected |= words[at] in UNIT_CORRECTIONS
        at += 1
    meant = words[at] if at < len(words) else ""
    if not corrected or words[at - 1] == "not" or meant not in spellings() or not tells_heights(meant):
        return m
    length_m = to_si(m.said, meant)
    return replace(m, end=at + 1, unit="ft" if meant[0] == "f" else "m", low=length_m, high=length_m)


def unit_meant(words: Sequence[str]) -> str | None:
    """The unit of height that is all an utterance puts right: sorry, I meant metres.

    >>> unit_meant("sorry i meant metres".split()), unit_meant("not metres".split()), unit_meant("ok feet".split())
    ('m', None, 'ft')
    >>> unit_meant("not feet , metres".split()), unit_meant("sorry meter 4200".split())
    ('m', 'm')
    """
    named = [i for i, word in enumerate(words) if word in HEIGHT_WORDS]
    units = [i for i in named if not (i and words[i - 1] == "not")]
    if len(units) != 1 or any(word[0].isdigit() for word in words[: units[0]]):
        # 2,500 m is told anew
        return None
    rest = [word for i, word in enumerate(words) if i not in named and word[0].isalpha()]
    little = (*UNIT_CORRECTIONS, *UNIT_FILLERS, "ok", "okay", "yes", "then")
    return ("ft" if words[units[0]][0] == "f" else "m") if all(word in little for word in rest) else None


def _is_no_height(words: Sequence[str], m: Measure) -> bool:
    """Whether a length is a drive, a step of a rule, a difference, a row of a table or the size of a thing."""
    lead, behind = _word(words, m.start - 1), _word(words, m.end)
    if lead == "of" and _word(words, m.start - 2) in LENGTHS:
        return True
    if m.unit == "mi":
        return m.said > HIGHEST_MILES or behind in LENGTHS
    placed = lead in SHORT_LEADS and m.low >= LEAST_PLACED_M
    if (
        lead in PER
        or (behind in LENGTHS and not placed)
        or (behind == "from" and m.low < LEAST_HEIGHT_M)
        or _is_difference(words, m)
    ):
        return True
    told = lead in SHORT_LEADS or behind in SIGNS or _is_explicit(words, m.start, m.end)
    if m.said != 0 and m.low < LEAST_HEIGHT_M and not told:
        return True
    return _is_bound(words, m)


def _is_difference(words: Sequence[str], m: Measure) -> bool:
    """2,000 ft higher than before, another 500 m up."""
    behind, then = _word(words, m.end), _word(words, m.end + 1)
    return behind in RELATIVE and (not then or not then[0].isalnum() or then in ("than", "up", "down", "now", "from"))


def _is_bound(words: Sequence[str], m: Measure) -> bool:
    """Above 3,000 ft add 5 min; the box says over 3,500 ft. We are above 9,000 ft is none."""
    if _word(words, m.start - 1) not in BOUNDS:
        return False
    before = words[max(0, m.start - 6) : m.start - 1]
    if before and before[-1] in DWELLING:
        return False
    behind = words[m.end : m.end + 4]
    return any(word in ADVICE for word in behind) or any(word in ADVISERS for word in before)


def _is_explicit(words: Sequence[str], start: int, end: int) -> bool:
    near = (*words[max(0, start - EXPLICIT_REACH) : start], *words[end : end + 1])
    if not ACTS_ON.isdisjoint(near):
        return False
    return any(word in EXPLICIT for word in near) or list(words[end : end + 2]) == ["above", "sea"]


def mile_high(words: Sequence[str]) -> list[Elevation]:
    """Mile high is 5,280 ft, and so is a mile up."""
    counted = ("a", "one", "1", "2", "two")
    high = ("high", "up")
    hits = [i for i in range(len(words) - 1) if words[i] == "mile" and words[i + 1] in high]
    return [Elevation(i, i + 2, 5280.0, "ft", "here") for i in hits if not i or words[i - 1] not in counted]


def without_bands(words: Sequence[str], numbers: Sequence[Number], mentions: Sequence[Elevation]) -> list[Elevation]:
    """The mentions where two ends of one range are their middle, and rows of a table (0-1,000 ft) are none."""
    ends = {number.end: number for number in numbers}
    bands = {id(m): low for m in mentions if (low := _lower_end(words, m, ends))}
    kept = []
    for mention in mentions:
        low = bands.get(id(mention))
        if low is None:
            kept.append(mention)
        elif not _is_row(words, low, mention, alone=len(mentions) == 1):
            middle = (low.value + mention.said) / 2
            kept.append(replace(mention, start=low.start, said=middle))
    return kept


def _lower_end(words: Sequence[str], mention: Elevation, ends: dict[int, Number]) -> Number | None:
    """The 6,000 of 6,000-7,000 ft, or of: we are between 6,000 and 7,000 ft."""
    low, sign = ends.get(mention.start - 1), _word(words, mention.start - 1)
    if low is None or mention.place or not low.value < mention.said or _is_to_convert(words):
        return None
    lead = words[max(0, low.start - 4) : low.start]
    between = sign == "and" and lead[-1:] == ["between"] and any(word in DWELLING for word in lead)
    return low if sign == "-" or between else None


def _is_to_convert(words: Sequence[str]) -> bool:
    return any(word in CONVERTED for word in words)


def _is_row(words: Sequence[str], low: Number, high: Elevation, *, alone: bool) -> bool:
    if low.value == 0 or low.value % 10 == 1 or _word(words, high.end) in COLUMNS:
        return True
    return not alone and _word(words, low.start - 1) not in (*DWELLING, *LEADS, "between")


def bare(
    words: Sequence[str], numbers: Sequence[Number], measures: Iterable[Measure], mentions: Sequence[Elevation]
) -> list[Elevation]:
    """Numbers without a unit where the sentence makes them an elevation: at 7,000; from 0 to 7,000 ft; no, 6,000."""
    spans: tuple[Measure | Elevation, ...] = (*measures, *mentions)
    taken = {i for span in spans for i in range(span.start, span.end)}
    towns, found = [m for m in mentions if m.place], list[Elevation]()
    for number in numbers:
        if number.start in taken or _word(words, number.end) in NOT_AFTER:
            continue
        known = [*mentions, *found]
        said = _partner(words, number, known) or _of_town(words, number, towns) or _plain(words, number, known)
        if said:
            found.append(said)
    return [*_listed(words, numbers, [*mentions, *found], taken), *found, *_said_apart(words, numbers, taken)]


def _word(words: Sequence[str], at: int) -> str:
    return words[at] if 0 <= at < len(words) else ""


def _mention(number: Number, unit: str = "") -> Elevation:
    return Elevation(number.start, number.end, number.value, unit, "here")


def _partner(words: Sequence[str], number: Number, mentions: Sequence[Elevation]) -> Elevation | None:
    """The 6,000 of `6,000 not 7,000 ft`, and the 0 of `from 0 to 7,000 ft`, in the unit of the other.

    Of `5 or 6 thousand feet` the 5 are thousands too.
    """
    if _word(words, number.end) not in SIGNS:
        return None
    partner = next((m for m in mentions if m.start == number.end + 1 and m.unit), None)
    if partner and 0 < number.value < THOUSAND / 10 and partner.said >= THOUSAND:
        number = replace(number, value=number.value * THOUSAND)
    return _mention(number, partner.unit if partner.said else "") if partner else None


def put_right(
    words: Sequence[str], numbers: Sequence[Number], measures: Iterable[Measure], mentions: Sequence[Elevation]
) -> list[Elevation]:
    """The 1,800 of `1,800 not 1,850`, where neither has a unit."""
    spans: tuple[Measure | Elevation, ...] = (*measures, *mentions)
    taken = {i for span in spans for i in range(span.start, span.end)}
    wrong = {m.start: m for m in mentions if m.said >= SMALLEST_PLAIN and not m.place}
    pairs = ((number, wrong.get(number.end + 1)) for number in numbers if _word(words, number.end) == "not")
    return [
        _mention(number, mention.unit)
        for number, mention in pairs
        if mention and number.start not in taken and number.value >= SMALLEST_PLAIN
    ]


def _listed(
    words: Sequence[str], numbers: Sequence[Number], mentions: Sequence[Elevation], taken: Collection[int]
) -> list[Elevation]:
    """The figures of a list that has its unit at the end: 2400, 2800 and 4700 m."""
    starts = {m.start: m for m in mentions if m.unit and m.said}
    found = []
    for number in reversed(numbers):
        at = number.end
        while _word(words, at) in LISTED and at < number.end + 2:
            at += 1
        partner = starts.get(at)
        plain = number.start not in taken and SMALLEST_PLAIN <= number.value <= HIGHEST_PLAIN
        if partner and at > number.end and plain and not any(m.start == number.start for m in mentions):
            starts[number.start] = _mention(number, partner.unit)
            found.append(starts[number.start])
    return found


def _of_town(words: Sequence[str], number: Number, towns: Sequence[Elevation]) -> Elevation | None:
    """The figure of the town that was named before it: Telluride 8750; Bogota, 2640."""
    said = _mention(number)
    last = max((town for town in towns if town.end <= number.start), key=lambda town: town.end, default=None)
    near = last and number.start - last.end <= 3 and number.value >= SMALLEST_PLAIN
    unit = unit_that_fits(last.place or "", said) if last and near else None
    return replace(said, unit=unit) if unit else None


def _plain(words: Sequence[str], number: Number, mentions: Sequence[Elevation]) -> Elevation | None:
    """A bare number by the words around it."""
    if number.value < SMALLEST_BARE and number.value % 1:
        # nobody tells where they are in parts of a foot
        return None
    if not SMALLEST_BARE <= number.value <= HIGHEST_PLAIN * 5 and not _is_explicit(words, number.start, number.end):
        return None
    return _mention(number) if _is_bare_elevation(words, number, mentions) else None


def _is_bare_elevation(words: Sequence[str], number: Number, mentions: Sequence[Elevation]) -> bool:
    if _is_explicit(words, number.start, number.end):
        return True
    before, after = list(words[max(0, number.start - 3) : number.start]), words[number.end : number.end + 2]
    at_end = number.end == len(words) or after[0] in ENDS
    plain = SMALLEST_PLAIN <= number.value <= HIGHEST_PLAIN
    if plain and number.value % 10 == 0 and at_end and (before[-1:] or [""])[0] in DWELLING:
        return True
    if (
        plain
        and number.value % 10 == 0
        and at_end
        and before[-1:] == [","]
        and before[-2:-1]
        and before[-2] in STATIONS
    ):
        return True
    if plain and before[-1:] == ["("] and (after[:1] == [")"] or after == ["ish", ")"]):
        return True
    if plain and number.value % 10 == 0 and " ".join(before).endswith(SLEEPS):
        return True
    while before and before[-1] in LINKS and before[-1] not in ("at", "of"):
        before.pop()
    lead = before[-1] if before else ""
    if number.value < SMALLEST_PLAIN and any(m.place for m in mentions):
        # an oven, grams or covers beside a town that was named
        return False
    if lead in LEADS:
        return lead != "in" or number.value >= SMALLEST_PLAIN
    corrected = any(
        " ".join(words[max(0, number.start - CORRECTION_REACH) : number.start]).rstrip(" ,").endswith(cue)
        for cue in CORRECTIONS
    )
    if number.value < SMALLEST_PLAIN or int(number.value) in YEARS or (number.value % 10 and not corrected):
        return False
    linked = lead in (*SIGNS, "from", "im", "for", "than") and (bool(mentions) or at_end)
    towns = any(m.place for m in mentions)
    return corrected or linked or (at_end and number.value >= SMALLEST_AT_END and not towns)


def _said_apart(words: Sequence[str], numbers: Sequence[Number], taken: Collection[int]) -> list[Elevation]:
    """We are at eight five: 8,500 ft, as pilots and locals say it."""
    found = []
    ends = {number.end: number for number in numbers}
    for low in numbers:
        high = ends.get(low.start)
        if high is None or high.start in taken or low.start in taken or words[low.start][0].isdigit():
            continue
        at_home = _word(words, high.start - 1) == "at" and _word(words, high.start - 2) in (*DWELLING, "up", "here")
        fits = high.value in THOUSANDS_SAID and low.value in HUNDREDS_SAID and not words[high.start][0].isdigit()
        if at_home and fits:
            found.append(Elevation(high.start, low.end, 1000 * high.value + 100 * low.value, "ft", "here"))
    return found


def land_unit(words: Sequence[str], places: Iterable[Elevation]) -> str:
    """The unit of heights where the talk is of a land or of places: metres in the Alps, feet in Colorado.

    Empty where nothing tells, or one thing tells the one and another the other.

    >>> land_unit("a rifugio in the alps".split(), ()), land_unit("a cabin in utah".split(), ())
    ('m', 'ft')
    """
    text = f" {' '.join(words)} "
    told = {unit for unit, lands in LANDS.items() if any(f" {land} " in text for land in lands)}
    told |= {unit for place in places if (unit := height_unit(place.place or ""))}
    return told.pop() if len(told) == 1 else ""


def alike(mentions: Sequence[Elevation], measures: Iterable[Measure], land: str = "") -> list[Elevation]:
    """The mentions with a unit for bare figures: that of the other ones, of the land, or metres where they look so.

    2640 beside nothing that is American is no elevation in feet that anybody would tell.
    land: the unit of heights in the land that is spoken of
    """
    units = {m.unit for m in mentions if m.unit and m.said}
    other = units.pop() if len(units) == 1 else ""
    american = any(m.unit in FEET_SPOKEN for m in measures)
    return [_in_unit(m, other, land, american=american) for m in mentions]


def _in_unit(mention: Elevation, other: str, land: str, *, american: bool) -> Elevation:
    if mention.unit or mention.place:
        return mention
    if not other and land and SMALLEST_PLAIN <= mention.said <= HIGHEST_IN[land]:
        return replace(mention, unit=land)
    if other in ("m", "km"):
        return replace(mention, unit="m") if mention.said >= SMALLEST_BARE else mention
    like_metres = IN_METRES[0] <= mention.said <= IN_METRES[1] and mention.said % ROUND_FT != 0
    return replace(mention, unit="m") if like_metres and not american and not other else mention
