"""When the food is to be served, when the cook means to start, and what is wanted between."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import takewhile

from spacy.tokens import Doc

from assistant.reading import times_of_day as times_of_day_read
from assistant.reading.spans import Measure
from assistant.understanding.claims import plain_numbers
from assistant.understanding.cue_words import cues, said

SLACK, REST, OVENS = cues("schedule", "slack"), cues("schedule", "rest"), cues("schedule", "ovens")
STARTING, STARTED = cues("schedule", "starting"), cues("schedule", "started")
RIGHT_BEFORE = cues("schedule", "right_before_start")
SERVING = (*cues("clock", "meals"), *cues("schedule", "for_service"))
HOURS = range(1, 13)
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


def times_of_day(doc: Doc) -> tuple[Measure | None, Measure | None]:
    """The service, and of two times of day the one that is the start, by the words beside it.

    Beside a start alone plain `for 8` is the service.
    """
    clock: Sequence[Measure] = doc._.clock
    starts = [m for m in clock if is_start(doc, m)]
    others = [m for m in clock if m not in starts]
    if starts and not others and len(clock) == 1 and (plain := plain_service(doc)):
        others = [plain]
    return next(iter(others or clock), None), starts[0] if starts and others else None


def service(doc: Doc) -> Measure | None:
    """The time at which it is served: not the one it is now, nor one since which something has stood."""
    words = [token.norm_ for token in doc]
    later = (
        m for m in doc._.clock if not (times_of_day_read.is_now(words, m) or times_of_day_read.is_beginning(words, m))
    )
    return next(iter(sorted(later, key=lambda m: not times_of_day_read.is_service(words, m))), None)


def is_start(doc: Doc, time: Measure) -> bool:
    """Whether a time of day is when the cook starts, or the time now: the word that tells stands nearest before it."""
    opens = max((m.end for m in doc._.clock if m.end <= time.start), default=0)
    before = [token.norm_ for token in doc[max(opens, time.start - BEFORE) : time.start]]
    behind = [token.norm_ for token in doc[time.end : time.end + 2]]
    if times_of_day_read.is_beginning([token.norm_ for token in doc], time):
        return True
    if (before[-1:] and before[-1] in RIGHT_BEFORE) or any(word in STARTED for word in behind):
        return True
    told = [word in STARTING for word in before if word in STARTING or word in SERVING]
    return bool(told) and told[-1]


def plain_service(doc: Doc) -> Measure | None:
    """A figure behind `for` that can be an hour of the afternoon: lamb for 8."""
    words = [token.norm_ for token in doc]
    for number in plain_numbers(doc):
        if number.start and words[number.start - 1] == "for" and number.value in HOURS:
            return next(iter(times_of_day_read.of_figure(words[: number.end], number)), None)
    return None


def length(doc: Doc, words: Sequence[str]) -> Measure | None:
    """The length of time that stands beside such a word: an hour of slack, rest it 30 min."""
    for measure in doc._.measures:
        near = [token.norm_ for token in doc[max(0, measure.start - NEAR) : measure.end + NEAR]]
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
