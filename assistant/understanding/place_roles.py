"""The part that a place plays in a conversation: a baseline, where somebody else cooks, or none at all."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from spacy.tokens import Doc

from assistant.reading import places
from assistant.reading.elevation_mentions import METRIC_BARE, TOO
from assistant.reading.tokens import norms
from assistant.understanding import answer_preferences
from assistant.understanding.cue_words import cues, said
from assistant.understanding.request import Hearing
from rules.catalogue import marked
from rules.model import PLACE_SLOTS, Request, Unused
from rules.physics.units import M_PER_FT
from rules.said import duration, sentences

say = sentences("dialogue/place_talk")

THEIRS, OURS, ASKED_FOR = (cues("place_roles", name) for name in ("theirs", "ours", "asked_for"))
BOIL, BOILING = cues("instruments", "boil"), "boiling_point"
SAME_M, BARE_FT = 30.0, (1000.0, 16_000.0)
LONGEST = 30
# who lives in a place that is told of, right before it
PERSONS, PERSON_IN, PERSON_REACH = frozenset(cues("place_roles", "persons")), ("in", "from", "of"), 3
FOR_THEM = cues("place_roles", "theirs_asked")


def played(doc: Doc, hearing: Hearing, last: Request | None, earlier: Sequence[Request]) -> Hearing:
    """What is said, with each place in the part that it plays in the conversation."""
    if last is None or hearing.request.recipe:
        return hearing
    now, words = hearing.request, norms(doc)
    if is_somebody_elses(doc, words, last):
        return _as_baseline(hearing)
    if len(doc) > LONGEST:
        return hearing
    if is_only_of_units(words, now):
        request = nowhere(now)
        told = now.topic in marked("of_nothing") or now.dish is None
        leans = replace(request, topic=last.topic, subject=None, small_talk=None, choices=()) if told else request
        return replace(hearing, request=leans, elliptical=hearing.elliptical or told)
    if any(m.role == "apart" for m in doc._.elevations) and said(words, BOIL) and answer_preferences.system(words):
        # where water boils is asked in other units by somebody who does not cook here
        return replace(hearing.about(BOILING, method=None, choices=()), elliptical=False) if not now.dish else hearing
    own_m = _theirs_m(doc, words)
    if own_m is not None and now.elevation_m is None:
        place = next((m.place for m in doc._.elevations if m.role == "apart" and m.place), "") or ""
        return replace(hearing, request=replace(now, elevation_m=own_m, elevation_from="stated", place=place))
    told_m = _told_of_another(doc, words, last)
    if told_m is not None:
        return replace(hearing, request=replace(nowhere(now), from_elevation_m=told_m))
    if now.time_min is None:
        return hearing
    unknown = next((u for u in now.unused if u.kind == "elevation" and u.text), None)
    if unknown and now.elevation_m is None and last.elevation_m is not None:
        return replace(hearing, request=_taken_for_the_sea(now, unknown))
    if is_baseline(words, now, (*earlier, last)):
        return _as_baseline(hearing)
    return hearing


def is_somebody_elses(doc: Doc, words: Sequence[str], last: Request) -> bool:
    """Whether the only place is where somebody else lives, and the cook's own is known: my grandmother in Lima did so.

    Where it is asked for them, it is where the cooking is: my sister in Lima, how long for her.
    """
    here = [m for m in doc._.elevations if m.role == "here"]
    if len(here) != 1 or not here[0].place or last.elevation_m is None or said(words, FOR_THEM):
        return False
    before = words[max(0, here[0].start - PERSON_REACH) : here[0].start]
    return len(before) > 1 and before[-1] in PERSON_IN and not PERSONS.isdisjoint(before[:-1])


def is_only_of_units(words: Sequence[str], now: Request) -> bool:
    """Whether units are asked for beside a place where nothing is cooked: in F please, a class from Tampa."""
    placed = now.elevation_from == "place" or (now.from_elevation_m is not None and now.elevation_m is None)
    cooks = now.dish or now.method or now.time_min or now.temperature_c
    return bool(placed and not cooks and answer_preferences.system(words))


def is_baseline(words: Sequence[str], now: Request, asked: Sequence[Request]) -> bool:
    """Whether a time was told of a place that is not the cook's: 15 min in Chennai, where Chennai was the baseline."""
    here_m = now.elevation_m
    if here_m is None or now.elevation_from != "place" or now.from_elevation_m is not None:
        return False
    if asked[-1].elevation_m is None or abs(asked[-1].elevation_m - here_m) < SAME_M:
        return False
    before = any(q.from_elevation_m is not None and abs(q.from_elevation_m - here_m) < SAME_M for q in asked)
    return before or said(words, OURS)


def _told_of_another(doc: Doc, words: Sequence[str], last: Request) -> float | None:
    """Another place whose times are told before those of the cook's own are asked [m]: 9 min in Lima, give me Quito."""
    named = [(m, places.elevation_m(m.place)) for m in doc._.elevations if m.place]
    timed = any(measure.kind == "time" for measure in doc._.measures)
    if not timed or len(named) != 2 or last.elevation_m is None:
        return None
    (_, other_m), (own, own_m) = named
    if other_m is None or own_m is None or abs(own_m - last.elevation_m) > SAME_M or abs(other_m - own_m) < SAME_M:
        return None
    return other_m if own.start and words[own.start - 1] in ASKED_FOR else None


def _taken_for_the_sea(now: Request, unknown: Unused) -> Request:
    """A time that is usual in a town that nobody knows, as one of sea level; it is said so."""
    reason = say("taken-for-the-sea", name=unknown.text, time=duration(now.time_min or 0.0))
    unused = (*(u for u in now.unused if u is not unknown), Unused("baseline", unknown.text, reason))
    return replace(now, unused=unused, from_elevation_m=0.0)


def _theirs_m(doc: Doc, words: Sequence[str]) -> float | None:
    """How high it is where somebody else cooks, told as a bare figure [m]: my aunt in Leh, hers is 3500."""
    apart = [m for m in doc._.elevations if m.role == "apart" and m.place]
    if not apart or not said(words, THEIRS):
        return None
    metric = places.height_unit(apart[0].place or "") == "m"
    low, high = METRIC_BARE if metric else BARE_FT
    figure = next((value for value in _bare(doc) if low <= value <= high), None)
    return figure if figure is None or metric else figure * M_PER_FT


def _bare(doc: Doc) -> Iterator[float]:
    spoken = {i for measure in doc._.measures for i in range(measure.start, measure.end)}
    return (number.value for number in doc._.numbers if number.start not in spoken)


def _as_baseline(hearing: Hearing) -> Hearing:
    """What is said, with its place as that of the baseline, and none where the cook is."""
    now = hearing.request
    return replace(hearing, request=replace(nowhere(now), from_elevation_m=now.elevation_m))


def nowhere(now: Request) -> Request:
    """What is said without its place."""
    empty = {slot: getattr(Request(), slot) for slot in PLACE_SLOTS}
    unused = tuple(u for u in now.unused if u.kind != TOO)
    return replace(now, **empty, from_elevation_m=None, unused=unused)
