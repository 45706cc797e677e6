"""The why in three depths: the explanations that `simmerline ask` gives, in a line, in full, and with their figures."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator

from assistant.printing.lesson.asking import answer_at, equation
from assistant.printing.lesson.blocks import Block, Lead, Sum, Text
from assistant.replies.sentences import worded
from rules.model import Units
from rules.said import sentences

LINE, FULL, FIGURES = 1, 2, 3
# where one equation ends and the next begins
BETWEEN = re.compile(r"(?<=\.) ")
say = sentences("printing/lesson")


def why(subjects: Iterable[str], elevation_m: float, units: Units) -> Iterator[Block]:
    """Explanations at an elevation [m]; figures that one before has given are not given again."""
    given: set[str] = set()
    for subject in subjects:
        ask = {"topic": "why", "subject": subject}
        line, full, figures = (answer_at(ask, elevation_m, units, depth) for depth in (LINE, FULL, FIGURES))
        yield Lead(str(line.headline), worded(say("line"), units))
        yield Text(str(full.because[0].text), worded(say("paragraph"), units))
        sums = BETWEEN.split(equation(full.because[0], figures.because[0]))
        if new := " ".join(sentence for sentence in sums if sentence not in given):
            yield Sum(new, worded(say("equation"), units))
        given.update(sums)
