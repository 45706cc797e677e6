"""What a reply gives for the piece that was asked for, where the reply by itself is too bare to say so.

Asked for the elevation, 850 is one; asked for whom, 12 are people. The spans that were heard in the reply fill the
piece; nothing is read again.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from typing import Any

from spacy.tokens import Doc

from assistant.reading import elevation_mentions, instruments, times_of_day
from assistant.reading.elevation_figures import SMALLEST_BARE
from assistant.reading.spans import Elevation, Number
from assistant.reading.tokens import norms
from assistant.understanding import faults, unclaimed, wondering
from assistant.understanding.amounts import MOST_PORTIONS
from assistant.understanding.claims import plain_numbers
from assistant.understanding.cue_words import cues
from assistant.understanding.request import Hearing, service_time, spoken_method
from assistant.understanding.utterance import Utterance, listen
from rules.engine import known
from rules.model import Kitchen, Request
from rules.physics import water

Slots = dict[str, Any]
# a figure alone, asked what boiling water reads, stands where these words would
BOILING = ("water", "boils")
# words of a reply that may do without more than "the second"
SHORTEST_TALK = 5
FIRST, SECOND, YES = (frozenset(cues("choice", name)) for name in ("first", "second", "yes"))


@dataclass(frozen=True, slots=True)
class Reply:
    """A reply to what was asked. words: in lower case; figure: the number that is the reply, if one is

    asked: the question it is the reply to
    """

    doc: Doc
    hearing: Hearing
    words: tuple[str, ...]
    figure: Number | None
    kitchen: Kitchen
    asked: Request | None = None

    @property
    def request(self) -> Request:
        """What it says by itself."""
        return self.hearing.request


def in_reply(word: str, text: str) -> Request:
    """What a text says as the reply to a piece that was asked for, such as the value of an option.

    >>> in_reply("elevation", "850 m").elevation_m
    850.0
    """
    kitchen = Kitchen()
    heard = listen(text, kitchen)
    said = heard.hearing.request
    return said if known(said, word) else replace(said, **given(word, heard, kitchen))


def given(word: str, heard: Utterance, kitchen: Kitchen, asked: Request | None = None) -> Slots:
    """The slots that a reply fills; none where it does not give the piece.

    word: of rules.model.MISSING_WORDS; kitchen: decides what figures without a unit mean; asked: the question
    """
    fill = FILLS.get(word)
    return fill(_reply(heard, kitchen, asked)) if fill else {}


def choice(doc: Doc, offered: Sequence[str]) -> str | None:
    """Which of two offered topics a reply means: the first, the second, or the one that it sounds like by itself."""
    words = norms(doc)
    for topic, told in zip(offered, (FIRST, SECOND), strict=False):
        if not told.isdisjoint(words) and len(words) <= SHORTEST_TALK:
            return topic
    return doc._.topic.id if doc._.topic.id in offered else None


def _reply(heard: Utterance, kitchen: Kitchen, asked: Request | None) -> Reply:
    numbers = plain_numbers(heard.doc)
    opens = numbers and (heard.hearing.elliptical or numbers[0].start == 0)
    words = tuple(norms(heard.doc))
    return Reply(heard.doc, heard.hearing, words, numbers[0] if opens else None, kitchen, asked)


def _elevation(reply: Reply) -> Slots:
    """A bare figure, or a place whose name is an everyday word as well."""
    figure, units = reply.figure, reply.request.units
    places = [Elevation(f.start, f.end, 0.0, "", "here", f.id) for f in reply.doc._.found if f.kind == "place"]
    bare = [Elevation(figure.start, figure.end, figure.value, "", "here")] if figure else []
    mentions = [m for m in (*places[:1], *bare) if m.place or m.said >= SMALLEST_BARE]
    height = elevation_mentions.settle(mentions[:1], reply.words, units)
    known = {"elevation_m": height.here_m, "elevation_from": height.known_from, "place": height.place}
    return {} if height.here_m is None else known


def _dish(reply: Reply) -> Slots:
    """A dish that nobody has heard of."""
    unknown = unclaimed.named(reply.doc, at_start=True)
    return {"dish_class": "general", "unused": (*reply.request.unused, unknown)} if unknown else {}


def _method(reply: Reply) -> Slots:
    """A method in words that sound like a question without one."""
    method = spoken_method(reply.words, reply.doc._.found)
    return {"method": method} if method else {}


def _temperature(reply: Reply) -> Slots:
    """Degrees of the kitchen's scale."""
    if not reply.figure:
        return {}
    return {"temperature_c": instruments.unscaled_c(reply.figure.value, reply.words, reply.request.units)}


def _reading(reply: Reply) -> Slots:
    """What a thermometer reads in boiling water, and so the elevation."""
    if not reply.figure or not instruments.is_reading(reply.figure.value, reply.request.units):
        return {}
    temp_c = instruments.unscaled_c(reply.figure.value, BOILING, reply.request.units)
    boiled_c = instruments.boil_test_c([temp_c], BOILING, in_water=True)
    if boiled_c is None or any(unused.kind == "elevation" for unused in reply.request.unused):
        return {"temperature_c": temp_c}
    elevation_m = water.elevation_from_boiling_m(boiled_c)
    return {"temperature_c": boiled_c, "elevation_m": elevation_m, "elevation_from": "boil_test"}


def _portions(reply: Reply) -> Slots:
    """A number of people."""
    fits = reply.figure and 1 <= reply.figure.value <= MOST_PORTIONS
    return {"portions": int(reply.figure.value)} if reply.figure and fits else {}


def _service_time(reply: Reply) -> Slots:
    """A figure that is a time of day, and so counts nobody."""
    time = service_time(times_of_day.of_figure(reply.words, reply.figure)) if reply.figure else None
    return {"service_time": time, "portions": None} if time else {}


def _symptom(reply: Reply) -> Slots:
    """The fault that is named, or the nearest to what is said."""
    subject = reply.hearing.subject_for("troubleshoot") or faults.nearest(" ".join(reply.words))
    return {"subject": subject} if subject else {}


def _explanation(reply: Reply) -> Slots:
    """The first or the second of those that were offered, or the one whose words are said."""
    offered = reply.asked.nearest if reply.asked else ()
    row = offered_by_number(offered, reply.words) or wondering.offered(offered, reply.doc)
    return {"subject": row} if row else {}


def offered_by_number(offered: Sequence[str], words: Sequence[str]) -> str | None:
    """The one that a reply names by its place; a yes means the only one.

    >>> offered_by_number(("lid_matters", "harder_boil"), ("the", "second", "one"))
    'harder_boil'
    """
    if len(offered) == 1 and not YES.isdisjoint(words):
        return offered[0]
    named = (row for row, place in zip(offered, (FIRST, SECOND), strict=False) if not place.isdisjoint(words))
    return next(named, None)


FILLS: dict[str, Callable[[Reply], Slots]] = {
    "elevation": _elevation,
    "dish": _dish,
    "method": _method,
    "temperature": _temperature,
    "reading": _reading,
    "portions": _portions,
    "service_time": _service_time,
    "symptom": _symptom,
    "explanation": _explanation,
}
