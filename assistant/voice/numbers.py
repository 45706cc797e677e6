"""Numbers that were not surely heard, and what else each may have been. None is ever changed here."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from spacy.tokens import Doc

from assistant.reading.spans import Measure
from assistant.understanding.pipeline import read
from assistant.voice import words
from rules.physics.units import M_PER_FT

# no kitchen stands higher, and no figure of this size beside a place is anything but feet
HIGHEST_KITCHEN_M = 5_500.0
# a height below this is more likely one that lost a word: seven thousand, seven hundred
LOW_M, TIMES = 450.0, 10
ELEVATION = "elevation"


@dataclass(frozen=True, slots=True)
class Unsure:
    """A number, or a place, that is to be read back.

    said: as it stands in the text; value: None of a place; others: what else it may have been
    """

    said: str
    value: float | None
    others: tuple[str, ...]


def unsure_numbers(text: str, takes: Sequence[str]) -> tuple[Unsure, ...]:
    """The numbers of a text that are to be read back.

    text: as it was mended; takes: what was heard each time. Unsure is what the takes do not agree on, what sounds like
    another number that would do as well, and a height without its unit where both units would do.

    >>> unsure_numbers("boil rice for fifteen minutes at 7,000 feet", ["boil rice for fifteen minutes at 7,000 feet"])
    (Unsure(said='fifteen minutes', value=15.0, others=('50 minutes',)),)
    """
    doc = read(text)
    heard = [[number.value for number in read(take)._.numbers] for take in takes]
    found = []
    for number in doc._.numbers:
        said, unit, is_height = _as_said(doc, number.start, number.end)
        others = [*_heard_instead(number.value, doc, heard), *_sounding_alike(number.value, unit, is_height)]
        others += [number.value * TIMES] if is_height and 0 < _in_m(number.value, unit) < LOW_M else []
        named = list(dict.fromkeys(f"{_written(other)} {unit}".strip() for other in others))
        if is_height and not unit and number.value <= HIGHEST_KITCHEN_M:
            named += [f"{_written(number.value)} {other}" for other in ("feet", "metres")]
        if named:
            found.append(Unsure(said, number.value, tuple(named)))
    return tuple(found)


def _as_said(doc: Doc, start: int, end: int) -> tuple[str, str, bool]:
    """A number with its unit as it stands in the text, the unit alone, and whether it is a height."""
    height = any(one.start <= start < one.end for one in doc._.elevations)
    measure: Measure | None = next((one for one in doc._.measures if one.start <= start and end <= one.end), None)
    if measure is None:
        return doc[start:end].text, "", height
    return doc[start : measure.end].text, doc[end : measure.end].text, height


def _heard_instead(value: float, doc: Doc, heard: Sequence[Sequence[float]]) -> list[float]:
    """What other takes have where a number should stand; itself where one only has lost it."""
    known = {number.value for number in doc._.numbers}
    without = [take for take in heard if value not in take]
    instead = sorted({other for take in without for other in take} - known)
    return instead or ([value] if without else [])


def _sounding_alike(value: float, unit: str, is_height: bool) -> list[float]:
    """The numbers that sound like one and would do in its place."""
    pairs = (pair for pair in words.alike() if value in pair)
    others = [float(low if value == high else high) for low, high in pairs if not (is_height and value == high)]
    highest = HIGHEST_KITCHEN_M if unit.startswith("m") else HIGHEST_KITCHEN_M / M_PER_FT
    return [other for other in others if not is_height or other <= highest]


def _in_m(height: float, unit: str) -> float:
    return height if unit.startswith("m") else height * M_PER_FT


def _written(value: float) -> str:
    return f"{value:,.10g}"
