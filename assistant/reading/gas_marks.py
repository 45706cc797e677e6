"""The marks of British gas ovens as temperatures: gas mark 4, gas 6, mark half."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from functools import cache

from assistant.reading.spans import Measure, Number
from assistant.understanding.cue_words import cues
from rules import tables

TABLE = "tables/gas_marks_common-practice.csv"
NAMES = tuple(tuple(name.split()) for name in cues("gas_mark", "names"))
NO_OVEN_BEHIND = cues("gas_mark", "no_oven_behind")
RANGE_SIGNS = ("-", "to", "or", "~")


@cache
def marks() -> Mapping[float, float]:
    """The mark and its temperature [degC].

    >>> marks()[4.0]
    180.0
    """
    return {float(row["mark"]): float(row["temp_c"]) for row in tables.read_csv(TABLE).rows}


def hear(words: Sequence[str], numbers: Sequence[Number]) -> Iterator[Measure]:
    """Every gas mark, or two as the ends of a range; a burner's number is none."""
    if not numbers or not any(name[-1] in words for name in NAMES):
        return
    starts = {number.start: number for number in numbers}
    for number in numbers:
        name = next((n for n in NAMES if tuple(words[max(0, number.start - len(n)) : number.start]) == n), None)
        if name is None or number.value not in marks():
            continue
        last = _other_end(words, number, starts)
        if words[last.end : last.end + 1] and words[last.end] in NO_OVEN_BEHIND:
            continue
        low, high = marks()[number.value], marks()[last.value]
        yield Measure(number.start - len(name), last.end, "temperature", low, high, low, "degC")


def _other_end(words: Sequence[str], number: Number, starts: Mapping[int, Number]) -> Number:
    """The 5 of gas mark 4 to 5, or the number itself."""
    other = starts.get(number.end + 1)
    fits = other and words[number.end] in RANGE_SIGNS and other.value in marks() and other.value > number.value
    return other if other and fits else number
