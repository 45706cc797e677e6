"""Places of a conversation held against each other, or listed by name; and an earlier answer gone back to."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import pairwise, zip_longest
from typing import Any

from spacy.tokens import Doc

from assistant.dialogue.heard import Heard
from assistant.dialogue.made import Made, said_of
from assistant.dialogue.memory import Memory
from assistant.dialogue.thread import after, question_of, talked_of
from assistant.reading.elevation_mentions import height_m
from assistant.reading.spans import Elevation
from assistant.reading.tokens import norms
from assistant.understanding.conversation import settle_in
from assistant.understanding.cue_words import cues
from assistant.understanding.cue_words import said as said_among
from assistant.worked_out import work_out
from rules.catalogue import marked
from rules.model import Figure, Request, Units
from rules.physics.ambient import ambient
from rules.said import Value, Words, duration, elevation, listed, sentences, temp, together

say = sentences("dialogue/place_talk")

COMPARES, LISTING = cues("place_roles", "compares"), cues("place_roles", "listing")
WAYS = dict(zip(cues("place_roles", "way_words"), cues("place_roles", "ways"), strict=True))
WAY_NOUNS = frozenset(cues("place_roles", "way_nouns"))
LONGEST, NEAR_M, NEXT = 40, 60.0, 2
COOK_TIME, MINUTES = "cook_time", "min"


@dataclass(frozen=True, slots=True)
class Spot:
    """A place that is held against others. said: how it is told"""

    elevation_m: float
    said: Value
    pressure_pa: float | None = None

    @property
    def boil_c(self) -> float:
        """Where water boils there [degC]."""
        return ambient(self.elevation_m, self.pressure_pa).boiling_c


def of_places(heard: Heard, memory: Memory) -> Made | None:
    """What is told of two places or more, or of a way to cook that was talked of; None for any other utterance."""
    now, words = heard.hearing.request, norms(heard.doc)
    if now.recipe or heard.move or len(words) > LONGEST:
        return None
    return _compared(heard, memory, words) or _listed(heard, memory, words) or _way_again(heard, memory, words)


def _compared(heard: Heard, memory: Memory, words: Sequence[str]) -> Made | None:
    """The cook's place and another one: the lower is the faster."""
    if not said_among(words, COMPARES):
        return None
    last, spots = talked_of(memory), _two(heard, memory)
    if last is None or len(spots) < 2:
        return None
    low, high = sorted(spots, key=lambda spot: -spot.boil_c)
    figures: dict[str, Any] = {"low": low.said, "high": high.said, "low_boil": temp(low.boil_c)}
    if abs(low.elevation_m - high.elevation_m) < NEAR_M:
        return _told(heard, memory, say("differ-same", **figures))
    told = say("differ", **figures, high_boil=temp(high.boil_c))
    question = replace(last, dish=now.dish, dish_class=now.dish_class) if (now := heard.hearing.request).dish else last
    times = [_minutes(question, spot, memory) for spot in (low, high)]
    dish = question.dish or ""
    if not dish or None in times:
        return _told(heard, memory, told)
    low_time, high_time = (duration(time or 0.0) for time in times)
    each = say("differ-times", dish=dish, low=low.said, high=high.said, low_time=low_time, high_time=high_time)
    return _told(heard, memory, together(told, each))


def _two(heard: Heard, memory: Memory) -> list[Spot]:
    """The place that is named and the cook's own, or the last two that were spoken of."""
    units = memory.request.units if memory.request else memory.kitchen.units
    named = list(_spots(heard.doc, units))
    own = _own(memory)
    if len(named) >= 2:
        return named[:2]
    if named and own:
        return [named[0], own]
    known = [Spot(p.elevation_m, _called(p.place, p.elevation_m), p.pressure_pa) for p in memory.places[-2:]]
    return known if len(known) == 2 else []


def _own(memory: Memory) -> Spot | None:
    here = settle_in(memory.request or Request(), memory.kitchen)
    if here.elevation_m is None:
        return None
    return Spot(here.elevation_m, _called(here.place, here.elevation_m), here.pressure_pa)


def _spots(doc: Doc, units: Units) -> Iterator[Spot]:
    """The places that are named; a figure beside a name is how high it is."""
    mentions = [mention for mention in doc._.elevations if mention.role != "rejected"]
    for mention, after_it in zip_longest(mentions, mentions[1:]):
        owner = next((m for m in mentions if m.place and 0 <= mention.start - m.end <= NEXT), None)
        if not mention.place and owner:
            continue
        own = after_it if mention.place and after_it and not after_it.place else None
        own = own if own and own.start - mention.end <= NEXT else mention
        metres = height_m(own, units)
        if metres is not None:
            yield Spot(metres, _called(mention.place or _name_of(mention, doc), metres))


def _name_of(mention: Elevation, doc: Doc) -> str:
    """The place whose name is part of a mention that gives its figure; none where there is none."""
    named = (f.id for f in doc._.found if f.kind == "place" and mention.start <= f.start < mention.end)
    return next(named, "")


def _called(name: str, metres: float) -> Value:
    return say("named", name=name, place=elevation(metres)) if name else elevation(metres)


def _listed(heard: Heard, memory: Memory, words: Sequence[str]) -> Made | None:
    """Each of the places that are named, in the order said: where water boils, and how long the dish takes."""
    units = memory.request.units if memory.request else heard.hearing.request.units
    found = list(_spots(heard.doc, units))
    spots = [spot for i, spot in enumerate(found) if all(spot.said != other.said for other in found[:i])]
    if len(spots) < 2 or not said_among(words, LISTING):
        return None
    question = question_of(heard.in_context(memory), memory, back_to_recipe=False)
    last = talked_of(memory)
    if last and last.dish and last.dish.endswith(question.dish or ""):
        # that egg is the one that is talked of
        question = replace(question, dish=last.dish, dish_class=last.dish_class, method=last.method)
    base = _baseline(heard, units)
    rows = [_row(question, spot, base, memory) for spot in spots]
    return _told(heard, memory, listed(rows, "sentences"), "boiling_point")


def _baseline(heard: Heard, units: Units) -> tuple[float, float] | None:
    """The place right before a time, and the time, which is its own: Durban is 6 minutes [m], [min]."""
    time = next((m for m in heard.doc._.measures if m.kind == "time"), None)
    before = [m for m in _places(heard.doc) if time and 0 <= time.start - m.end <= NEXT]
    height = height_m(before[-1], units) if before else None
    return (height, time.low) if time and height is not None else None


def _places(doc: Doc) -> list[Elevation]:
    """Every place that is named, whatever part it plays, as often as it is named."""
    return [Elevation(f.start, f.end, 0.0, "", "here", f.id) for f in doc._.found if f.kind == "place"]


def _row(question: Request, spot: Spot, base: tuple[float, float] | None, memory: Memory) -> Words:
    boil = temp(spot.boil_c)
    minutes = _scaled(question, spot, base, memory) if base else _minutes(question, spot, memory)
    if minutes is None:
        return say("row", place=spot.said, boil=boil)
    return say("row-time", place=spot.said, boil=boil, dish=question.dish or "", time=duration(minutes))


def _scaled(question: Request, spot: Spot, base: tuple[float, float], memory: Memory) -> float | None:
    """How long the dish takes at a place, where so long is what it takes at another one [min]."""
    plain = replace(question, time_min=None, from_elevation_m=None)
    here, there = (_minutes(plain, at, memory) for at in (spot, Spot(base[0], "")))
    return base[1] * here / there if here and there else here


def _minutes(question: Request, spot: Spot, memory: Memory) -> float | None:
    """How long the dish takes at a place [min]; None where no time is known."""
    if not question.dish:
        return None
    where: dict[str, Any] = {
        "elevation_m": spot.elevation_m,
        "elevation_from": "stated",
        "pressure_pa": spot.pressure_pa,
    }
    asked = replace(question, topic="time", subject=None, forms=(), choices=(), unused=(), elevations_m=(), **where)
    work = work_out(settle_in(asked, memory.kitchen))
    figures: Sequence[Figure] = () if work.missing else work.answer.figures
    timed = next((f for f in figures if f.id == COOK_TIME), None) or next(
        (f for f in figures if f.unit == MINUTES), None
    )
    return timed.value if timed else None


def _way_again(heard: Heard, memory: Memory, words: Sequence[str]) -> Made | None:
    """The last answer about a way to cook that is gone back to, where the cook is now: the pressure one."""
    way = next((WAYS[a] for a, b in pairwise(words) if a in WAYS and b in WAY_NOUNS), None)
    steps = [
        step.request for step in memory.past if step.request.method == way and step.request.dish and not step.danger
    ]
    now = heard.hearing.request
    if way is None or not steps or now.dish or now.time_min:
        return None
    placed = now if now.elevation_m is not None else memory.request or now
    slots = ("elevation_m", "elevation_from", "place", "pressure_pa", "units")
    question = replace(steps[-1], **{slot: getattr(placed, slot) for slot in slots}, text=heard.text)
    work = work_out(settle_in(question, memory.kitchen))
    if work.missing or question.topic in marked("by_the_way"):
        return None
    return work, replace(after(question, memory), asked=None)


def _told(heard: Heard, memory: Memory, told: Words, topic: str = "smalltalk") -> Made:
    units = heard.hearing.units or (memory.request.units if memory.request else heard.hearing.request.units)
    there = replace(memory, kitchen=replace(memory.kitchen, units=units))
    now = heard.hearing.request
    of_nothing = now.topic in marked("of_nothing")
    return said_of(now, told, there, topic if of_nothing else now.topic), replace(memory, asked=None)
