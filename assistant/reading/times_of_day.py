"""Times of day: 6:30 pm, half past six, by noon, dinner at 6."""

from __future__ import annotations

import re
from collections.abc import Collection, Iterable, Mapping, Sequence

from assistant.reading.spans import Measure, Number
from assistant.understanding.cue_words import cues

NAMED = {"noon": 12 * 60, "midday": 12 * 60, "noontime": 12 * 60, "midnight": 24 * 60}
SIGNS, MINUTES = {"past": 1, "after": 1, "to": -1}, (5, 10, 20, 25)
HALVES = {tuple(said.split()): 0 for said in cues("clock", "before_noon")} | {
    tuple(said.split()): 12 for said in cues("clock", "after_noon")
}
MEAL_REACH = 4
LONGEST_HALF = max(map(len, HALVES))
OFFSETS = {"half past": 30, "quarter past": 15, "quarter after": 15, "quarter to": -15}
MEALS, MORNING_MEALS = cues("clock", "meals"), cues("clock", "morning")
# six sharp is a time behind these
SHARP_LEADS = ("at", "by", "for")
WRITTEN = re.compile(r"(\d{1,2})([:.])(\d{2})")
# as timetables write it, which no amount is written: 0700
PADDED = re.compile(r"0\d{3}")
LEADS, ENDS, HALF_LEADS = cues("clock", "leads"), cues("clock", "ends"), cues("clock", "half_leads")
ABOUT = ("about", "around", "like", "roughly", "say", "maybe")
POINTED = cues("clock", "pointed")
NOW, NOW_LEADS, SINCE = cues("clock", "now"), cues("clock", "now_leads"), cues("clock", "since")
# what is served or held at 140 is so warm
SERVED_F = range(135, 160)


def hear(words: Sequence[str], numbers: Sequence[Number], measures: Iterable[Measure]) -> tuple[Measure, ...]:
    """Times of day in minutes after midnight, in the order of the text."""
    morning = not set(words).isdisjoint(MORNING_MEALS)
    starts = {number.start: number for number in numbers}
    taken = {i for m in measures for i in range(m.start, m.end)}
    found = [*_named(words), *_past(words, starts, taken, morning), *_written(words, morning)]
    taken |= {i for f in found for i in range(f.start, f.end)}
    for number in numbers:
        if number.start not in taken:
            found += _from_number(words, number, starts, morning)
    return tuple(sorted(found, key=lambda f: f.start))


def _named(words: Sequence[str]) -> list[Measure]:
    return [_at(i, i + 1, NAMED[word]) for i, word in enumerate(words) if word in NAMED]


def _past(words: Sequence[str], starts: Mapping[int, Number], taken: Collection[int], morning: bool) -> list[Measure]:
    """half past six, quarter to seven, twenty past six, ten to seven"""
    found = []
    for number in starts.values():
        lead = tuple(words[max(0, number.start - 2) : number.start])
        minutes, start = OFFSETS.get(" ".join(lead)), number.start - 2
        if minutes is None and _is_half_past(words, number, taken):
            minutes, start = OFFSETS["half past"], number.start - 1
        if minutes is None and lead[-1:] and lead[-1] in SIGNS and number.start not in taken:
            before = next(
                (starts[at] for at in (start, start - 1) if at in starts and starts[at].end == start + 1), None
            )
            minutes = _minutes_said(before, lead[-1], number) if before else None
            start = before.start if before else start
        if minutes is not None and 1 <= number.value <= 12:
            for time in _time(words, number.start, number.end, int(number.value), 0, morning):
                found.append(_at(start, time.end, time.low + minutes))
    return found


def _is_half_past(words: Sequence[str], number: Number, taken: Collection[int]) -> bool:
    """Half six is half past six in Britain, behind a word of time or where a meal is spoken of; half 6 eggs is not."""
    if number.start in taken or not number.start or words[number.start - 1] != "half":
        return False
    lead = words[number.start - 2] if number.start > 1 else ""
    ends = number.end >= len(words) or words[number.end] in ENDS or _half(words, number.end) is not None
    meal = any(word in MEALS for word in words[max(0, number.start - 6) : number.end + 2])
    return (ends or meal) and (lead in HALF_LEADS or meal)


def _minutes_said(before: Number, sign: str, hour: Number) -> int | None:
    """How far from the hour it is. "Five to seven" is a span of hours as well, and is left alone."""
    if before.value not in MINUTES or (sign == "to" and before.value <= hour.value):
        return None
    return int(before.value) * SIGNS[sign]


def _written(words: Sequence[str], morning: bool) -> list[Measure]:
    """6:30; with a point only where the words round it make it a time: 6.30 pm, dinner is 18.45, it's 6.45."""
    found = []
    for i, word in enumerate(words):
        if (time := WRITTEN.fullmatch(word)) and (time[2] == ":" or _half(words, i + 1) or _is_pointed(words, i)):
            found += _time(words, i, i + 1, int(time[1]), int(time[3]), morning)
    return found


def _is_pointed(words: Sequence[str], at: int) -> bool:
    """Whether a figure with a point is a time: behind a meal, or as the time it is now, with no unit behind it."""
    ends = at + 1 >= len(words) or words[at + 1] in (*ENDS, *NOW)
    meal = any(word in MEALS for word in words[max(0, at - MEAL_REACH) : at])
    return ends and (meal or _stands_before(words, at, (*NOW_LEADS, *POINTED)))


def _from_number(words: Sequence[str], number: Number, starts: Mapping[int, Number], morning: bool) -> list[Measure]:
    """6 pm, 6 o'clock, six thirty pm, and where the talk is of a meal plain 6, six thirty or 1830."""
    value, end = int(number.value) if number.value == int(number.value) else -1, number.end
    hour, minute = divmod(value, 100) if value >= 100 else (value, 0)
    following = starts.get(end)
    minutes = int(following.value) if following and following.value in range(60) else None
    if value < 24 and following and minutes is not None and _half(words, following.end):
        minute, end = minutes, following.end
    told = _word(words, end) == "oclock" or (hour <= 12 and _half(words, end)) or _is_now(words, number.start, end)
    told = told or (1 <= hour <= 12 and _word(words, end) == "sharp" and words[max(number.start - 1, 0)] in SHARP_LEADS)
    if told or PADDED.fullmatch(words[number.start]) or (value > 0 and _is_plain_time(words, number, end)):
        return _time(words, number.start, end, hour, minute, morning)
    return []


def _half(words: Sequence[str], at: int) -> tuple[int, int] | None:
    """The half of the day that the words from one on tell: the hours it adds, and the word after it."""
    for end in range(min(at + LONGEST_HALF, len(words)), at, -1):
        hours = HALVES.get(tuple(words[at:end]))
        if hours is not None:
            return hours, end
    return None


def half_told(words: Sequence[str], time: Measure) -> bool:
    """Whether the words of a time tell the half of the day it is on: 7 pm, noon."""
    inside = range(time.start, time.end)
    return any(words[i] in NAMED for i in inside) or any(_half(words, i) for i in (*inside, time.end))


def _is_now(words: Sequence[str], start: int, end: int) -> bool:
    """Whether it is said that it is so late: its 345 now."""
    return _stands_before(words, start, NOW_LEADS) and _word(words, end) in NOW


def is_now(words: Sequence[str], time: Measure) -> bool:
    """Whether a time of day is the one it is now, and not that of a meal.

    >>> is_now(["its", "3:45", "now"], Measure(1, 2, "clock", 945.0, 945.0, 945.0, "min"))
    True
    """
    behind = time.end >= len(words) or words[time.end] in NOW or not words[time.end][0].isalnum()
    return _stands_before(words, time.start, NOW_LEADS) and (behind or _stands_before(words, time.start, NOW))


def is_service(words: Sequence[str], time: Measure) -> bool:
    """Whether the words before a time tell that it is served then: by 7, doors at 6."""
    before = words[max(0, time.start - MEAL_REACH) : time.start]
    return "by" in before[-2:] or any(word in MEALS for word in before)


def is_beginning(words: Sequence[str], time: Measure) -> bool:
    """Whether something began at a time of day: on since 10."""
    start = time.start - 1 if time.start and words[time.start - 1] in ABOUT else time.start
    return _stands_before(words, start, SINCE)


def _stands_before(words: Sequence[str], at: int, phrases: Iterable[str]) -> bool:
    """Whether one of the phrases stands right before a word."""
    return any(list(words[max(0, at - len(lead)) : at]) == lead for lead in (phrase.split() for phrase in phrases))


def of_figure(words: Sequence[str], number: Number) -> tuple[Measure, ...]:
    """The time of day that a bare figure is where one was asked for; none where words behind it make it another thing.

    >>> [time.low / 60 for time in of_figure(["6"], Number(0, 1, 6.0))]
    [18.0]
    """
    value = int(number.value) if number.value == int(number.value) else 0
    if value < 1 or (number.end < len(words) and words[number.end] not in ENDS):
        return ()
    hour, minute = divmod(value, 100) if value >= 100 else (value, 0)
    morning = not set(words).isdisjoint(MORNING_MEALS)
    return tuple(_time(words, number.start, number.end, hour, minute, morning))


def _is_plain_time(words: Sequence[str], number: Number, end: int) -> bool:
    """Whether the talk of a meal makes a plain figure a time. A meal for 6 may be one, a meal for 14 has 14 guests."""
    start = number.start
    lead = _word(words, start - 1) if start else ""
    if int(number.value) in SERVED_F and lead != "by":
        return False
    meal = lead == "by" or any(word in MEALS for word in words[max(0, start - 6) : start])
    timed = start > 3 and words[start - 3] in ("at", "by") and words[start - 2][0].isalnum()
    guests = lead == "for" and (12 < number.value < 100 or timed)
    placed = lead in ("at", "by") and _word(words, end) == "at" and _is_height(_word(words, end + 1))
    return lead in LEADS and meal and not guests and (end >= len(words) or words[end] in ENDS or placed)


def _is_height(word: str) -> bool:
    """Whether a figure behind a time can only be an elevation: dinner at 6 at 7,000 ft."""
    digits = word.replace(",", "")
    return digits.isdigit() and len(digits) >= 4


def _word(words: Sequence[str], at: int) -> str:
    return words[at] if at < len(words) else ""


def _time(words: Sequence[str], start: int, end: int, hour: int, minute: int, morning: bool) -> list[Measure]:
    """The time with its half of the day; where none is said, meals from one to nine are in the afternoon."""
    if not (0 <= hour < 24 and 0 <= minute < 60):
        return []
    if _word(words, end) == "oclock":
        end += 1
    half = _half(words, end)
    if half and 1 <= hour <= 12:
        return [_at(start, half[1], (hour % 12 + half[0]) * 60 + minute)]
    if 1 <= hour <= 9 and not morning and not PADDED.fullmatch(words[start]):
        hour += 12
    return [_at(start, end, hour * 60 + minute)]


def _at(start: int, end: int, minutes: float) -> Measure:
    minutes %= 24 * 60
    return Measure(start, end, "clock", minutes, minutes, minutes, "min")
