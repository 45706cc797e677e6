"""Component: times of day: 6:30 pm, half past six, by noon, dinner at 6."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from spacy.language import Language
from spacy.tokens import Doc

from assistant.reading.spans import Measure, Number
from assistant.understanding.cue_words import cues

HALVES = {"am": 0, "pm": 12}
NAMED = {"noon": 12 * 60, "midday": 12 * 60, "noontime": 12 * 60, "midnight": 24 * 60}
OFFSETS = {("half", "past"): 30, ("quarter", "past"): 15, ("quarter", "after"): 15, ("quarter", "to"): -15}
MEALS, MORNING_MEALS = cues("clock", "meals"), cues("clock", "morning")
LEADS, ENDS = cues("clock", "leads"), cues("clock", "ends")

Doc.set_extension("clock", default=(), force=True)


@Language.component("kitchen_clock", requires=["doc._.numbers", "doc._.measures"], assigns=["doc._.clock"])
def kitchen_clock(doc: Doc) -> Doc:
    """Hear every time of day."""
    doc._.clock = hear([token.norm_ for token in doc], doc._.numbers, doc._.measures)
    return doc


def hear(words: Sequence[str], numbers: Sequence[Number], measures: Iterable[Measure]) -> tuple[Measure, ...]:
    """Times of day in minutes after midnight, in the order of the text."""
    taken = {i for m in measures for i in range(m.start, m.end)}
    found = [*_named(words), *_past(words, numbers)]
    for i, word in enumerate(words):
        if ":" in word and len(word) > 1:
            hour, minute = (int(part) for part in word.split(":"))
            found += _time(words, i, i + 1, hour, minute)
    for number in numbers:
        if number.start not in taken and not any(f.start <= number.start < f.end for f in found):
            found += _from_number(words, number, numbers)
    return tuple(sorted(found, key=lambda f: f.start))


def _named(words: Sequence[str]) -> list[Measure]:
    return [_at(i, i + 1, NAMED[word]) for i, word in enumerate(words) if word in NAMED]


def _past(words: Sequence[str], numbers: Iterable[Number]) -> list[Measure]:
    """half past six, quarter to seven"""
    found = []
    for number in numbers:
        lead = tuple(words[max(0, number.start - 2) : number.start])
        if lead in OFFSETS and 1 <= number.value <= 12:
            for time in _time(words, number.start, number.end, int(number.value), 0):
                found.append(_at(number.start - 2, time.end, time.low + OFFSETS[lead]))
    return found


def _from_number(words: Sequence[str], number: Number, numbers: Iterable[Number]) -> list[Measure]:
    """6 pm, 6 o'clock, six thirty pm, and where the talk is of a meal plain 6, six thirty or 1830."""
    value, end = int(number.value) if number.value == int(number.value) else -1, number.end
    hour, minute = divmod(value, 100) if value >= 100 else (value, 0)
    following = next((n for n in numbers if n.start == end and 0 <= n.value < 60 and n.value == int(n.value)), None)
    if value < 24 and following and _word(words, following.end) in HALVES:
        minute, end = int(following.value), following.end
    if _word(words, end) in (*HALVES, "oclock") or (value > 0 and _is_plain_time(words, number, end)):
        return _time(words, number.start, end, hour, minute)
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
    return tuple(_time(words, number.start, number.end, hour, minute))


def _is_plain_time(words: Sequence[str], number: Number, end: int) -> bool:
    """Whether the talk of a meal makes a plain figure a time. A meal for 6 may be one, a meal for 14 has 14 guests."""
    start = number.start
    lead = _word(words, start - 1) if start else ""
    meal = lead == "by" or any(word in MEALS for word in words[max(0, start - 6) : start])
    guests = lead == "for" and 12 < number.value < 100
    return lead in LEADS and meal and not guests and (end >= len(words) or words[end] in ENDS)


def _word(words: Sequence[str], at: int) -> str:
    return words[at] if at < len(words) else ""


def _time(words: Sequence[str], start: int, end: int, hour: int, minute: int) -> list[Measure]:
    """The time with its half of the day; where none is said, meals from one to nine are in the afternoon."""
    if not (0 <= hour < 24 and 0 <= minute < 60):
        return []
    if _word(words, end) == "oclock":
        end += 1
    half = _word(words, end)
    if half in HALVES and 1 <= hour <= 12:
        return [_at(start, end + 1, (hour % 12 + HALVES[half]) * 60 + minute)]
    if 1 <= hour <= 9 and not any(word in words for word in MORNING_MEALS):
        hour += 12
    return [_at(start, end, hour * 60 + minute)]


def _at(start: int, end: int, minutes: float) -> Measure:
    minutes %= 24 * 60
    return Measure(start, end, "clock", minutes, minutes, minutes, "min")
