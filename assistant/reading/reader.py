"""The one reader: any text -> its words, numbers, measures and times of day, each with its place in the text.

It reads a text once, from left to right, and loads no language: what the components of the pipeline hear in a
question is heard here in a line of a recipe, in a reply and in an option of a command.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache

from assistant.reading import figures, quantities, times_of_day
from assistant.reading.spans import Measure, Number
from assistant.reading.units import SPOKEN
from assistant.reading.words import Word, cut


@dataclass(frozen=True, slots=True)
class Heard:
    """What was heard in a text. Numbers, measures and times of day stand at words; `place` gives their characters.

    numbers: all of them, also those of measures; clock: times of day
    """

    words: tuple[Word, ...]
    numbers: tuple[Number, ...]
    measures: tuple[Measure, ...]
    clock: tuple[Measure, ...]

    def place(self, span: Number | Measure) -> tuple[int, int]:
        """The characters from start to end of the text as it was given.

        >>> heard = hear("about 1½ hrs at 7,000′")
        >>> [heard.place(m) for m in heard.measures]
        [(6, 12), (16, 22)]
        """
        return self.words[span.start].start, self.words[span.end - 1].end

    def alone(self) -> Iterator[Number]:
        """The numbers that belong to no measure."""
        taken = {i for m in self.measures for i in range(m.start, m.end)}
        return (number for number in self.numbers if number.start not in taken)

    def norms(self, start: int, end: int) -> list[str]:
        """The words from start to end, in the form in which words are compared."""
        return [word.norm for word in self.words[start:end]]

    def left(self) -> list[str]:
        """The words that belong to no number and no measure."""
        spans: tuple[Number | Measure, ...] = (*self.numbers, *self.measures)
        taken = {i for span in spans for i in range(span.start, span.end)}
        return [word.norm for i, word in enumerate(self.words) if i not in taken]

    def only(self) -> Measure | None:
        """The measure that is the whole text, but for a point at its end, or None."""
        end = len(self.words) - bool(self.words and self.words[-1].norm == ".")
        whole = [m for m in self.measures if (m.start, m.end) == (0, end)]
        return whole[0] if whole else None


@lru_cache(maxsize=256)
def hear(text: str, kinds: Sequence[str] = SPOKEN, *, ranges: bool = True) -> Heard:
    """Read a text.

    kinds: which kinds of measure can be meant, a tuple; they decide what a spelling of two units is
    ranges: whether two figures with a range sign between are one measure

    >>> [(m.kind, m.low, m.high) for m in hear("simmer 20 to 25 minutes").measures]
    [('time', 20.0, 25.0)]
    """
    seen = cut(text)
    numbers = figures.hear(seen.norms)
    measures = quantities.hear(seen.norms, seen.spelled, numbers, kinds, ranges)
    return Heard(seen.words, numbers, measures, times_of_day.hear(seen.norms, numbers, measures))


def value(text: str) -> float | None:
    """The number that a text is, with nothing else in it; None where it is none.

    >>> value("1½"), value("1-1/2"), value("a dozen"), value("2 cups")
    (1.5, 1.5, 12.0, None)
    """
    norms = cut(text).norms
    number = figures.number_from(norms, 0) if norms else None
    return number.value if number and number.end == len(norms) else None
