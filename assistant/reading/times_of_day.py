"""Times of day: 6:30 pm, half past six, by noon, dinner at 6."""

from __future__ import annotations

import re
from collections.abc import Collection, Iterable, Mapping, Sequence

from assistant.reading.spans import Measure, Number
from assistant.understanding.cue_words import cues

HALVES = {"am": 0, "pm": 12}
NAMED = {"noon": 12 * 60, "midday": 12 * 60, "noontime": 12 * 60, "midnight": 24 * 60}
SIGNS, MINUTES = {"past": 1, "after": 1, "to": -1}, (5, 10, 20, 25)
OFFSETS = {"half past": 30, "quarter past": 15, "quarter after": 15, "quarter to": -15}
MEALS, MORNING_MEALS = cues("clock", "meals"), cues("clock", "morning")
WRITTEN = re.compile(r"(\d{1,2})([:.])(\d{2})")
LEADS, ENDS = cues("clock", "leads"), cues("clock", "ends")


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


def _minutes_said(before: Number, sign: str, hour: Number) -> int | None:
    """How far from the hour it is. "Five to seven" is a span of hours as well, and is left alone."""
    if before.value not in MINUTES or (sign == "to" and before.value <= hour.value):
        return None
    return int(before.value) * SIGNS[sign]


def _written(words: Sequence[str], morning: bool) -> list[Measure]:
    """6:30; with a point only where the half of the day is said: 6.30 pm."""
    found = []
    for i, word in enumerate(words):
        if (time := WRITTEN.fullmatch(word)) and (time[2] == ":" or _word(words, i + 1) in HALVES):
            found += _time(words, i, i + 1, int(time[1]), int(time[3]), morning)
    return found


def _from_number(words: Sequence[str], number: Number, starts: Mapping[int, Number], morning: bool) -> list[Measure]:
    """6 pm, 6 o'clock, six thirty pm, and where the talk is of a meal plain 6, six thirty or 1830."""
    value, end = int(number.value) if number.value == int(number.value) else -1, number.end
    hour, minute = divmod(value, 100) if value >= 100 else (value, 0)
    following = starts.get(end)
    minutes = int(following.value) if following and following.value in range(60) else None
    if value < 24 and following and minutes is not None and _word(words, following.end) in HALVES:
        minute, end = minutes, following.end
    if _word(words, end) in (*HALVES, "oclock") or (value > 0 and _is_plain_time(words, number, end)):
        return _time(words, number.start, end, hour, minute, morning)
    return []


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
    meal = lead == "by" or any(word in MEALS for word in words[max(0, start - 6) : start])
    guests = lead == "for" and 12 < number.value < 100
    return lead in LEADS and meal and not guests and (end >= len(words) or words[end] in ENDS)


def _word(words: Sequence[str], at: int) -> str:
    return words[at] if at < len(words) else ""


def _time(words: Sequence[str], start: int, end: int, hour: int, minute: int, morning: bool) -> list[Measure]:
    """The time with its half of the day; where none is said, meals from one to nine are in the afternoon."""
    if not (0 <= hour < 24 and 0 <= minute < 60):
        return []
    if _word(words, end) == "oclock":
        end += 1
    half = _word(words, end)
    if half in HALVES and 1 <= hour <= 12:
        return [_at(start, end + 1, (hour % 12 + HALVES[half]) * 60 + minute)]
    if 1 <= hour <= 9 and not morning:
        hour += 12
    return [_at(start, end, hour * 60 + minute)]


def _at(start: int, end: int, minutes: float) -> Measure:
    minutes %= 24 * 60
    return Measure(start, end, "clock", minutes, minutes, minutes, "min")
