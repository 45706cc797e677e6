"""A syrup that was boiled to a figure of the cook's own, and whether that was too far: I took it to 240."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from spacy.tokens import Doc

from assistant.reading.tokens import norms
from assistant.reading.units import to_si
from assistant.understanding.cue_words import cues, said
from assistant.understanding.request import Hearing
from rules.foods.sugar import cooked_to

TOOK, WRITTEN, OVER, TOO_HIGH = (cues("sugar_taken", name) for name in ("took", "written", "over", "too_high"))
TALK = cues("sugar_figures", "talk")
BEFORE_A_FIGURE = frozenset((*cues("temperature", "leads"), *cues("sugar_taken", "stages"), *TOOK, *WRITTEN))
SUGAR = "sugar_stage"
BOILED_CLASSES = ("candy", "syrup", "jam")
# how hot sugar is boiled [degC]; a bare figure from so many degrees on is in Fahrenheit
SPAN_C, LOWEST_F = (102.0, 186.0), 215.0
BEFORE, BEHIND = 6, 3


def judged(doc: Doc, hearing: Hearing) -> Hearing:
    """What is said, with the recipe's figure and the one the syrup was taken to, where that is judged."""
    now, words = hearing.request, norms(doc)
    if now.recipe or not _asks_how_far(words) or not _is_boiled(words, hearing):
        return hearing
    figures = list(_figures(doc))
    if not figures:
        return hearing
    taken_c, written_c = told_apart(words, figures)
    slots = {"temperature_c": written_c, "taken_c": taken_c, "temperatures_c": (), "time_min": None}
    slots |= {"choices": (), "symptoms_too": (), "subject": None, "forms": (), "method": None}
    return replace(hearing.about(SUGAR, **slots), elliptical=False)


def _asks_how_far(words: Sequence[str]) -> bool:
    """Whether it is asked if it went too far; too high alone may ask of a figure that nobody has boiled to yet."""
    return said(words, OVER) or (said(words, TOO_HIGH) and not set(TOOK).isdisjoint(words))


def told_apart(words: Sequence[str], figures: Sequence[tuple[int, float]]) -> tuple[float, float]:
    """The figure that the syrup was taken to and that of the recipe [degC]; a lone one is both.

    >>> told_apart("card says 240 and i took it to 250".split(), [(2, 115.6), (7, 121.1)])
    (121.1, 115.6)
    """
    parts = {at: _part(words, at) for at, _ in figures}
    taken = [temp_c for at, temp_c in figures if parts[at] == "took"]
    written = [temp_c for at, temp_c in figures if parts[at] == "written"]
    others = [temp_c for at, temp_c in figures if parts[at] is None]
    own = next(iter((*taken, *others, *written)))
    return own, next(iter((*written, *others, own)))


def _part(words: Sequence[str], at: int) -> str | None:
    """By the nearest word before the figure that tells its part, else by those behind it."""
    behind = words[at + 1 : at + 1 + BEHIND]
    for word in (*reversed(words[max(0, at - BEFORE) : at]), *behind):
        if word in TOOK:
            return "took"
        if word in WRITTEN:
            return "written"
    return None


def _is_boiled(words: Sequence[str], hearing: Hearing) -> bool:
    now = hearing.request
    return now.dish_class in BOILED_CLASSES or cooked_to(now.dish) is not None or said(words, TALK)


def each_c(doc: Doc) -> tuple[float, ...]:
    """Every temperature that a syrup is boiled to [degC]; a bare figure only behind a word that makes it one."""
    words, degrees = norms(doc), {m.start for m in doc._.measures if m.kind in ("temperature", "degree")}
    sweets = {f.end for f in doc._.found if f.kind == "dish"}
    bare = {at for at in range(1, len(words)) if at in sweets or words[at - 1] in BEFORE_A_FIGURE}
    told = (c for at, c in _figures(doc) if at in degrees or at in bare)
    return tuple(dict.fromkeys(told))


def _figures(doc: Doc) -> Iterator[tuple[int, float]]:
    """Where each figure stands that a syrup may be boiled to, and what it is [degC]."""
    degrees = {m.start: m for m in doc._.measures if m.kind in ("temperature", "degree")}
    spoken = {i for m in (*doc._.measures, *doc._.elevations) for i in range(m.start, m.end)} - set(degrees)
    for number in doc._.numbers:
        measure = degrees.get(number.start)
        if number.start in spoken:
            continue
        if measure is not None and measure.kind == "temperature":
            temp_c = measure.low
        else:
            temp_c = to_si(number.value, "degF") if number.value >= LOWEST_F else number.value
        if SPAN_C[0] <= temp_c <= SPAN_C[1]:
            yield number.start, temp_c
