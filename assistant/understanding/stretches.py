"""How long something stood, told by two times of day: from nine till two, made at 7 and it is 1 pm now."""

from __future__ import annotations

from collections.abc import Iterator

from spacy.tokens import Doc

from assistant.reading.tokens import norms
from assistant.understanding.cue_words import cues

BEFORE, BEHIND = frozenset(cues("stretch", "before")), frozenset(cues("stretch", "behind"))
HALF_DAY_H, DAY_H = 12.0, 24.0


def hours(doc: Doc) -> float:
    """The hours from the first time of day to the last that was said; 0.0 where there are not two.

    Which half of the day is meant is seldom said; where it is not, longer stretches count as shorter ones, never
    the other way.

    >>> from assistant.understanding.pipeline import read
    >>> hours(read("in the car from nine till two")), hours(read("left at 9"))
    (5.0, 0.0)
    """
    times = [hour for _, hour in sorted(set(_times(doc)))]
    if len(times) < 2:
        return 0.0
    return max((later - times[0]) % (DAY_H if later > HALF_DAY_H else HALF_DAY_H) for later in times[1:])


def _times(doc: Doc) -> Iterator[tuple[int, float]]:
    words = norms(doc)
    clock = {i for time in doc._.clock for i in range(time.start, time.end)}
    yield from ((time.start, time.low / 60) for time in doc._.clock)
    measured = {i for m in (*doc._.measures, *doc._.elevations) for i in range(m.start, m.end)}
    for number in doc._.numbers:
        if (
            number.start not in clock | measured
            and 1 <= number.value <= 12
            and _is_time(words, number.start, number.end)
        ):
            yield number.start, number.value


def _is_time(words: list[str], start: int, end: int) -> bool:
    before = words[start - 1] if start else ""
    return before in BEFORE or (end < len(words) and words[end] in BEHIND)
