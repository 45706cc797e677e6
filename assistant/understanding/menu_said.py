"""What an utterance changes of a menu: when it is served, for how many, a dish more or less, the list once more."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from spacy.tokens import Doc

from assistant.reading import times_of_day as clock_words
from assistant.reading.spans import Measure, Number
from assistant.reading.tokens import norms
from assistant.understanding.allergens import counts_guest
from assistant.understanding.claims import plain_numbers
from assistant.understanding.cue_words import cues, said
from rules.physics.units import to_c

MOVES, EARLIER, LATER = (cues("menu_turns", name) for name in ("moves", "earlier", "later"))
SERVICE, RIGHTED, NOT_MEANT = (cues("menu_turns", name) for name in ("service", "righted", "not_meant"))
MEATLESS, COVERS, READING = (cues("menu_turns", name) for name in ("meatless", "covers", "reading"))
LONGEST, SHORT, NEAR, OPENING = 24, 6, 5, 3
HALF_DAY, DAY = 12 * 60, 24 * 60
# an oven that is named in Celsius, and the most in Fahrenheit
OVEN_C, OVEN_MOST_F, WANTS = (140, 260), 550, cues("menu_turns", "wants")
# covers that are put right are not more times, or fewer, than before
NEARLY = 2.5
HOURS, LEAST_COVERS, MOST_COVERS = range(1, 13), 2, 100_000


def service_moved(doc: Doc, before_min: int, *, in_focus: bool) -> int | None:
    """The minute of the day of the service as it is now; None where nothing is said of it.

    before_min: of the service before, on whose half of the day a bare hour stands
    in_focus: whether the plan was talked of last, so that a time alone is that of the service
    """
    words = norms(doc)
    if len(words) > LONGEST:
        return None
    of_service = said(words, SERVICE)
    by = moved_by(doc)
    if by is not None and (in_focus or of_service):
        return int(before_min + by) % DAY
    moves = of_service or said(words, MOVES)
    told = [m for m in doc._.clock if not clock_words.is_now(words, m) and not is_past(words, m.start)]
    if told and (moves or in_focus):
        last = told[-1]
        return nearest(int(last.low), before_min) if is_bare(words, last) else int(last.low)
    hour = _plain_hour(doc, words)
    if hour is None:
        return None
    opens = in_focus and len(words) <= SHORT and (said(words[:OPENING], RIGHTED) or words[0].isdigit())
    moved = in_focus and said(words, MOVES) and len(words) <= SHORT
    return nearest(hour * 60, before_min) if of_service or opens or moved else None


def told_at(doc: Doc, near_min: int) -> int | None:
    """The last time of day that is told, or a bare hour behind `at` [min]: from 7 pm, tonight at 7; None without one.

    near_min: on whose half of the day a bare hour stands
    """
    words = norms(doc)
    times = [m for m in doc._.clock if not clock_words.is_now(words, m)]
    if times:
        last = times[-1]
        return nearest(int(last.low), near_min) if is_bare(words, last) else int(last.low)
    hours = (n for n in plain_numbers(doc) if n.value in HOURS and words[n.start - 1 : n.start] == ["at"])
    hour = next(hours, None)
    return None if hour is None else nearest(int(hour.value) * 60, near_min)


def _plain_hour(doc: Doc, words: Sequence[str]) -> int | None:
    """A bare figure that can be an hour: we serve at 8 now; actually 7."""
    for number in plain_numbers(doc):
        behind = words[number.end : number.end + 1]
        counted = bool(behind) and behind[0].isalpha() and behind[0] not in clock_words.ENDS and behind[0] != "now"
        if number.value in HOURS and not counted and not is_past(words, number.start) and not _counts(words, number):
            return int(number.value)
    return None


def _counts(words: Sequence[str], number: Number) -> bool:
    """Whether a figure counts those who eat: for 8."""
    return words[max(0, number.start - 1) : number.start] == ["for"]


def moved_by(doc: Doc) -> float | None:
    """By how much the service is moved [min], later where it is positive: push by 45 minutes, half an hour earlier."""
    words = norms(doc)
    times = [m for m in doc._.measures if m.kind == "time"]
    if len(times) != 1 or not said(words, MOVES):
        return None
    told = [m for m in doc._.clock if not clock_words.is_now(words, m)]
    if told:
        return None
    sooner = said(words, EARLIER) or (words[0] in ("bring", "pull") if words else False)
    if not sooner and not said(words, LATER) and not said(words, ("shift", "move", "moved", "shifted")):
        return None
    return -times[0].low if sooner else times[0].low


def is_past(words: Sequence[str], at: int) -> bool:
    """Whether a figure is what holds no longer: not 7, from 7."""
    before = " ".join(words[max(0, at - 2) : at])
    return any(
        before == phrase or before.endswith(f" {phrase}") or words[at - 1 : at] == [phrase] for phrase in NOT_MEANT
    )


def is_bare(words: Sequence[str], time: Measure) -> bool:
    """Whether the words leave open on which half of the day a time is."""
    told = clock_words.half_told(words, time)
    hour = int(time.low) // 60
    written = words[time.start].split(":")[0]
    as_written = int(written) if written.isdigit() and len(written) <= 2 else hour
    return not told and as_written in HOURS


def nearest(minutes: int, before_min: int) -> int:
    """A time on the half of the day that is nearer to the service before.

    >>> nearest(7 * 60, 18 * 60) // 60, nearest(11 * 60, 12 * 60) // 60
    (19, 11)
    """
    halves = (minutes % HALF_DAY, minutes % HALF_DAY + HALF_DAY)
    return min(halves, key=lambda minute: abs(minute - before_min))


@dataclass(frozen=True, slots=True)
class Covers:
    """How many eat, and how many of them no meat; None where that is not said."""

    all: int | None
    meatless: int | None


def covers(doc: Doc, before: int | None, *, in_focus: bool) -> Covers:
    """The covers as they are now: make it 92, for 60, 92 not 85, 6 of them veg."""
    words = norms(doc)
    numbers = [n for n in plain_numbers(doc) if n.value == int(n.value) and LEAST_COVERS <= n.value <= MOST_COVERS]
    # the figure that stands nearest before the word
    meatless = next((n for n in reversed(plain_numbers(doc)) if _is_meatless(words, n)), None)
    apart = {m.start for m in (*doc._.measures, *numbers) if counts_guest(doc, m.start, m.end)}
    numbers = [n for n in numbers if n.start not in apart]
    groups = [m for m in doc._.measures if m.kind == "portion" and m.start not in apart and not is_past(words, m.start)]
    every: int | None = int(groups[-1].said) if groups else None
    if every is None:
        others = [n for n in numbers if n is not meatless and not is_past(words, n.start)]
        every = next((int(n.value) for n in others if _is_covers(words, n, before, in_focus=in_focus)), None)
    return Covers(every, int(meatless.value) if meatless else None)


def oven_wanted_c(doc: Doc) -> float | None:
    """The heat that a dish wants of the oven [degC]: the puddings want 220. Up to 260 the figure is Celsius."""
    words = norms(doc)
    for number in plain_numbers(doc):
        if (
            words[number.start - 1 : number.start]
            and words[number.start - 1] in WANTS
            and OVEN_C[0] <= number.value <= OVEN_MOST_F
        ):
            return number.value if number.value <= OVEN_C[1] else to_c(number.value)
    return None


def figure_alone(doc: Doc, before: int | None) -> int | None:
    """The covers as they are now, where a figure is a sentence by itself and could be them: they rang. 165."""
    words = ["." if word in ("!", ";") else word for word in norms(doc)]
    for number in plain_numbers(doc):
        ahead, behind = words[number.start - 1 : number.start], words[number.end : number.end + 1]
        alone = ahead in ([], ["."]) and behind in ([], ["."])
        if (
            before
            and alone
            and number.value == int(number.value)
            and before / NEARLY <= number.value <= before * NEARLY
        ):
            return int(number.value) if number.value not in HOURS else None
    return None


def is_probed(doc: Doc) -> bool:
    """Whether a figure is what something reads, by the time that opens the utterance: 11.40 and the joint is at 48."""
    words = norms(doc)
    return opening_time(doc) is not None and said(words, READING) and not said(words, (*COVERS, *MOVES, *SERVICE))


def opening_time(doc: Doc) -> int | None:
    """The minute of the day that opens an utterance as the time it is now: 11.40 and ..; None where none does."""
    words = norms(doc)
    time = clock_words.WRITTEN.fullmatch(words[0]) if len(words) > 1 and words[1] in ("and", ",", "-") else None
    if time is None or int(time[1]) >= DAY // 60 or int(time[3]) >= 60:
        return None
    return int(time[1]) * 60 + int(time[3])


def _is_meatless(words: Sequence[str], number: Number) -> bool:
    return said(words[number.end : number.end + NEAR], MEATLESS)


def _is_covers(words: Sequence[str], number: Number, before: int | None, *, in_focus: bool) -> bool:
    """Whether a figure counts those who eat."""
    denied = words[number.end : number.end + 1] == ["not"] and words[number.end + 1 : number.end + 2] == [str(before)]
    if denied or said(words[number.end : number.end + 2], COVERS):
        return True
    opens = said(words[: number.start], (*RIGHTED, "for"))
    alone = len(words[number.end :]) == 0 or words[number.end] in (",", ".", "now", "not", ";", "-", "please")
    return in_focus and opens and alone and number.value not in HOURS and len(words) <= LONGEST // 2
