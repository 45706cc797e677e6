"""What a thermometer was read at, and in what: in melting ice, in boiling water, in food."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

from spacy.tokens import Doc

from assistant.reading.tokens import norms
from assistant.reading.units import to_si
from assistant.understanding.cue_words import cues, said

ICE, BOIL, SHOWS, THINGS = (cues("instruments", name) for name in ("ice", "boil", "shows", "things"))
OF_OTHERS, ELSEWHERE, WITHDRAWN = (cues("instruments", name) for name in ("of_others", "elsewhere", "withdrawn"))
MUST_SHOW, BY_IT, TAKEN = (cues("instruments", name) for name in ("must_show", "by_it", "taken"))
BOILS_AT = cues("instruments", "boils_at")
TO_A_TENTH = cues("instruments", "to_a_tenth")
# what a reading may be in each place [degC]; a figure without a scale is in the one in which it may be
IN_ICE, AT_BOIL, IN_FOOD = (-12.0, 12.0), (80.0, 102.0), (45.0, 103.0)
LONGEST = 45
CELSIUS = "c"
Way = Literal["ice", "boil", "wanted", "taken"]


@dataclass(frozen=True, slots=True)
class Read:
    """A reading [degC].

    way: in ice, in boiling water, in food that was taken out at it, or what is wanted in food
    foreign: whether it is somebody else's thermometer; elsewhere: whether it was read in another place
    """

    way: Way
    value_c: float
    foreign: bool = False
    elsewhere: bool = False
    celsius: bool = True


def heard(doc: Doc) -> Read | None:
    """The reading that is told or wanted; None where there is none, or its figure cannot be right."""
    words = norms(doc)
    if len(words) > LONGEST:
        return None
    way = way_of(words)
    if way is None:
        return None
    span = {"ice": IN_ICE, "boil": AT_BOIL}.get(way, IN_FOOD)
    found = next((read for read in _figures(doc) if _fits(read[0], span)), None)
    if found is None:
        return None
    return Read(way, found[0], said(words, OF_OTHERS), said(words, ELSEWHERE), found[1])


def way_of(words: Sequence[str]) -> Way | None:
    """In what a thermometer was read, for all that the words tell.

    >>> way_of("slush reads minus 4".split()), way_of("probe reads 91 in boiling water".split())
    ('ice', 'boil')
    >>> way_of("pulled the duck at 70 on this probe".split()), way_of("for 70 what must it show".split())
    ('taken', 'wanted')
    """
    if said(words, MUST_SHOW):
        return "wanted"
    if said(words, ICE) and said(words, SHOWS):
        return "ice"
    if said(words, BOIL) and said(words, (*SHOWS, *BOILS_AT)) and said(words, THINGS):
        return "boil"
    return "taken" if said(words, BY_IT) and said(words, TAKEN) else None


def is_withdrawn(words: Sequence[str]) -> bool:
    """Whether a reading is taken back: that was before it boiled."""
    return len(words) <= LONGEST and said(words, WITHDRAWN)


def is_to_a_tenth(words: Sequence[str]) -> bool:
    """Whether a temperature is asked for to a tenth of a degree."""
    return said(words, TO_A_TENTH)


def _figures(doc: Doc) -> list[tuple[float, bool]]:
    """The temperatures of a text [degC] and whether each was told in Celsius; a bare figure by what it may be."""
    measures = {i: m for m in doc._.measures for i in range(m.start, m.end)}
    found: list[tuple[float, bool]] = []
    words = norms(doc)
    for number in doc._.numbers:
        measure = measures.get(number.start) or measures.get(number.end - 1)
        if measure is None or measure.kind == "degree":
            found += [(number.value, True), (to_si(number.value, "degF"), False)]
        elif measure.kind == "volume" and words[measure.end - 1] == CELSIUS:
            # what a thermometer reads is no cup
            found.append((number.value, True))
        elif measure.kind == "temperature":
            found.append((to_si(number.value, measure.unit), measure.unit == "degC"))
    return found


def _fits(value_c: float, span: tuple[float, float]) -> bool:
    low, high = span
    return low <= value_c <= high
