"""The places that a conversation has spoken of, by the words they were called: the bakery; my sister's; back home."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from assistant.understanding.cue_words import cues, said
from assistant.understanding.request import Hearing
from rules.model import PLACE_SLOTS, ElevationFrom, Kitchen, Request

CALLED, HOME, MOVED, OTHERS = (cues("whereabouts", name) for name in ("called", "home", "moved", "others"))
FIRST_PLACE = cues("whereabouts", "first")
MOST = 8
# nearer than this [m], two are one
SAME_M = 5.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Whereabouts:
    """A place that was spoken of. words: by which it is called; own: whether the cook works there"""

    elevation_m: float
    elevation_from: ElevationFrom | None = None
    place: str = ""
    pressure_pa: float | None = None
    words: tuple[str, ...] = ()
    own: bool = False


def of_kitchen(kitchen: Kitchen) -> tuple[Whereabouts, ...]:
    """A kitchen that is known before anybody speaks of it; none without an elevation."""
    if kitchen.elevation_m is None:
        return ()
    words = tuple(kitchen.name.casefold().split())
    return (Whereabouts(elevation_m=kitchen.elevation_m, elevation_from="kitchen", words=words, own=True),)


def noted(places: Sequence[Whereabouts], question: Request | None, words: Sequence[str]) -> tuple[Whereabouts, ...]:
    """The places after a question; the one it was asked in stands last. words: of the utterance"""
    if question is None or question.elevation_m is None:
        return tuple(places)
    height_m = question.elevation_m
    known = next((one for one in places if abs(one.elevation_m - height_m) < SAME_M), None)
    if known is not None and known is places[-1] and not question.sets_kitchen:
        return tuple(places)
    theirs = _theirs(places, question, words)
    called = () if theirs else _called(words)
    called += tuple(question.place.casefold().split())
    own = not said(words, OTHERS) and (not places or question.sets_kitchen or said(words, MOVED))
    here = Whereabouts(
        elevation_m=height_m,
        elevation_from=question.elevation_from,
        place=question.place,
        pressure_pa=question.pressure_pa,
        words=tuple(dict.fromkeys((*(known.words if known else ()), *called))),
        own=own or bool(known and known.own),
    )
    return (*(one for one in places if one is not known), *theirs, here)[-MOST:]


def _theirs(places: Sequence[Whereabouts], question: Request, words: Sequence[str]) -> tuple[Whereabouts, ...]:
    """The place of somebody whose recipe it is, where it is told whose: my aunt in Veracruz."""
    called, height_m = _called(words), question.from_elevation_m
    if not called or height_m is None or any(abs(one.elevation_m - height_m) < SAME_M for one in places):
        return ()
    return (Whereabouts(elevation_m=height_m, elevation_from="stated", words=called),)


def _called(words: Sequence[str]) -> tuple[str, ...]:
    """The words by which an utterance calls places, my aunt's as my aunt."""
    return tuple(dict.fromkeys(word.removesuffix("s") for word in CALLED if said(words, (word,))))


def recalled(hearing: Hearing, words: Sequence[str], places: Sequence[Whereabouts], now: Request | None) -> Hearing:
    """What an utterance says, with the place that it speaks of by a word alone: and at the bakery? back home."""
    request = hearing.request
    spoken = request.elevation_m is not None or request.pressure_pa is not None or request.place
    if not places or spoken or any(u.kind in ("elevation", "baseline") for u in request.unused):
        return hearing
    meant = _meant(words, places)
    if meant is None or (now and now.elevation_m is not None and abs(meant.elevation_m - now.elevation_m) < SAME_M):
        return hearing
    where = {slot: getattr(meant, slot) for slot in PLACE_SLOTS if slot != "elevations_m"}
    return replace(hearing, request=replace(request, **where))


def _meant(words: Sequence[str], places: Sequence[Whereabouts]) -> Whereabouts | None:
    called = set(_called(words))
    by_word = [one for one in places if called.intersection(one.words)]
    if by_word:
        return by_word[-1]
    if said(words, FIRST_PLACE):
        return places[0]
    own = [one for one in places if one.own]
    return own[-1] if own and said(words, HOME) and not called else None
