"""When the food is to be served, when the cook means to start, and what is wanted between."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from itertools import takewhile

from spacy.tokens import Doc

from assistant.reading import times_of_day as clock_words
from assistant.reading.spans import Measure
from assistant.reading.tokens import norms
from assistant.understanding.claims import plain_numbers
from assistant.understanding.cue_words import cues, said

SLACK, REST, OVENS = cues("schedule", "slack"), cues("schedule", "rest"), cues("schedule", "ovens")
STARTING, STARTED = cues("schedule", "starting"), cues("schedule", "started")
RIGHT_BEFORE = cues("schedule", "right_before_start")
BACK = frozenset(cues("schedule", "back"))
SERVING = (*cues("clock", "meals"), *cues("schedule", "for_service"))
HOURS, HALF_DAY_MIN = range(1, 13), 12 * 60
# words between a length of time, or a number, and what tells of it; and before a time of day what tells a start
NEAR, BEFORE = 3, 8
OVENS_NEAR, PAUSES, MOST_OVENS = 5, (",", ".", ";", "?"), 50


@dataclass(frozen=True, slots=True)
class Serving:
    """What is said of the time. slack, rest: lengths of time that are no cooking time"""

    service: Measure | None = None
    start: Measure | None = None
    slack: Measure | None = None
    rest: Measure | None = None
    ovens: int | None = None


def heard(doc: Doc) -> Serving:
    """The times of day and the lengths of time round them."""
    service, start = times_of_day(doc)
    slack, rest = (length(doc, words) for words in (SLACK, REST))
    return Serving(service, start, slack if slack != rest else None, rest, ovens(doc))


def service(doc: Doc) -> Measure | None:
    """The time at which it is served, where nothing is planned: not the one it is now, nor one since which it stood."""
    words = norms(doc)
    return next(iter(sorted(ahead(doc), key=lambda m: not clock_words.is_service(words, m))), None)


def ahead(doc: Doc) -> list[Measure]:
    """The times of day that are still to come, by the words beside them."""
    words = norms(doc)
    return [m for m in doc._.clock if not clock_words.is_now(words, m) and not began(words, m)]


def began(words: Sequence[str], time: Measure) -> bool:
    """Whether something has been on since a time of day; one counts BACK from the service."""
    counted_back = not BACK.isdisjoint(words[max(0, time.start - NEAR) : time.start])
    return clock_words.is_beginning(words, time) and not counted_back


def times_of_day(doc: Doc) -> tuple[Measure | None, Measure | None]:
    """The service, and of two times of day the one that is the start, by the words beside it, or the time it is now.

    Beside a start alone plain `for 8` is the service. What something has been on since is a start too.
    """
    words = norms(doc)
    clock: Sequence[Measure] = doc._.clock
    starts = [m for m in clock if is_start(doc, m)]
    others = [m for m in clock if m not in starts]
    if starts and not others and len(clock) == 1 and (plain := plain_service(doc)):
        others = [plain]
    served = sorted(others, key=lambda m: not clock_words.is_service(words, m))
    serving = next(iter((*served, *ahead(doc))), None)
    return serving, earlier(starts[0], serving) if starts and others and serving else None


def earlier(start: Measure, serving: Measure) -> Measure:
    """A start on the half of the day before the service, where the words left its half open."""
    late = start.low > serving.low and start.low >= HALF_DAY_MIN
    return replace(start, low=start.low - HALF_DAY_MIN) if late else start


def is_start(doc: Doc, time: Measure) -> bool:
    """Whether a time of day is when the cook starts, or the time now: the word that tells stands nearest before it."""
    words = norms(doc)
    if clock_words.is_now(words, time) or began(words, time):
        return True
    opens = max((m.end for m in doc._.clock if m.end <= time.start), default=0)
    before, behind = words[max(opens, time.start - BEFORE) : time.start], words[time.end : time.end + 2]
    # a now behind a pause is of the next time: guests at 8, now 6:15
    behind = list(takewhile(lambda word: word not in PAUSES, behind))
    if (before[-1:] and before[-1] in RIGHT_BEFORE) or any(word in STARTED for word in behind):
        return True
    told = [word in STARTING for word in before if word in STARTING or word in SERVING]
    return bool(told) and told[-1]


def plain_service(doc: Doc) -> Measure | None:
    """A figure behind `for` that can be an hour of the afternoon: lamb for 8."""
    words = norms(doc)
    for number in plain_numbers(doc):
        if number.start and words[number.start - 1] == "for" and number.value in HOURS:
            return next(iter(clock_words.of_figure(words[: number.end], number)), None)
    return None


def length(doc: Doc, words: Sequence[str]) -> Measure | None:
    """The length of time that stands beside such a word: an hour of slack, rest it 30 min."""
    for measure in doc._.measures:
        near = norms(doc)[max(0, measure.start - NEAR) : measure.end + NEAR]
        if measure.kind == "time" and said(near, words):
            return measure
    return None


def ovens(doc: Doc) -> int | None:
    """How many ovens there are: two, two full-size convection ovens."""
    numbers = {n.start for n in doc._.numbers}
    for number in plain_numbers(doc):
        rest = doc[number.end : number.end + OVENS_NEAR]
        behind = [t.norm_ for t in takewhile(lambda t: t.i not in numbers and t.norm_ not in PAUSES, rest)]
        if number.value == int(number.value) and 1 <= number.value <= MOST_OVENS and said(behind, OVENS):
            return int(number.value)
    return None
