"""What a cook says next of jars in a canner: weighted?; what pressure then; at my sister's, at 5,000."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from assistant.understanding.cue_words import cues, said
from assistant.understanding.request import Hearing
from rules.model import Request

CANNING, TIME, KITCHEN = "preserve", ("time", "temperature"), "set_kitchen"
PRESSURES, THEIR_PLACE = cues("canning_turns", "pressures"), cues("canning_turns", "their_place")
GAUGES = {"dial_gauge": cues("turning", "dial"), "weighted_gauge": cues("turning", "weighted")}
BESIDE = cues("canning_turns", "beside")
# what keeps without a canner, as a subject of its own: what tells it, and what tells of another use
WAYS = {
    id: (cues("canning_turns", id), cues("canning_turns", other))
    for id, other in (("keeps_dry", "not_dry"), ("freezing", "not_freezing"), ("pickled", "not_pickled"))
}
# a food of its own, which the way is not for
IN_WATER = "boiling_water_canning"
PICKLED, PLAIN = "pickled", cues("canning_turns", "plain")
OF_ITS_OWN, LONGEST_WAY, WORD_FOR_IT = "keeps_dry", 10, "pickle"
SHORT, SHORTEST, LONGEST_PLACE, OPENING = 8, 5, 10, 4


def taken_up(words: Sequence[str], heard: Hearing, last: Request) -> Hearing | None:
    """An utterance behind a question of canning, where it goes on with it; None where it may be anything.

    words: of the utterance
    """
    if last.topic != CANNING:
        return None
    if last.subject == PICKLED and said(words, PLAIN) and len(words) <= LONGEST_WAY:
        # the same food without the vinegar is asked about as a food for jars
        return of_the_way(IN_WATER, heard)
    way = way_without(words, heard, last)
    if way:
        return of_the_way(way, heard)
    if heard.request.dish not in (None, last.dish):
        # what holds for honey or for pickles holds for no other food
        other = heard.elliptical and last.subject in (PICKLED, OF_ITS_OWN)
        return of_the_way(IN_WATER, heard, named=True) if other else None
    gauge = asked_gauge(words, heard)
    if gauge:
        about = heard.about(CANNING, subject=gauge, choices=(), small_talk=None)
        return replace(about, elliptical=True, subject_for=lambda topic: gauge)
    now = heard.request
    jarred = bool(now.jars) and now.topic in TIME
    pressure = said(words, PRESSURES) and len(words) <= SHORT and now.gauge_pa is None
    their_place = said(words[:OPENING], THEIR_PLACE) and now.elevation_m is not None and len(words) <= LONGEST_PLACE
    if not (jarred or pressure or (their_place and now.topic in (KITCHEN, CANNING))):
        return None
    about = heard.about(CANNING, subject=last.subject, choices=(), small_talk=None, method=None)
    unused = tuple(u for u in about.request.unused if u.kind != "explanation")
    request = replace(about.request, unused=unused, sets_kitchen=False, nearest=())
    return replace(about, elliptical=True, request=request, subject_for=lambda topic: last.subject)


def asked_gauge(words: Sequence[str], heard: Hearing) -> str | None:
    """The gauge that is asked about, and nothing else: weighted?; and on a dial?"""
    named = [id for id, cue in GAUGES.items() if any(word in cue for word in words)]
    return named[0] if len(named) == 1 and len(words) <= SHORTEST and not heard.request.forms else None


def way_without(words: Sequence[str], heard: Hearing, last: Request) -> str | None:
    """What keeps without a canner and is asked about behind jars: and honey?; freeze them then; so pickled is fine?"""
    if len(words) > LONGEST_WAY or heard.request.jars:
        return None
    told = next((id for id, (cue, other) in WAYS.items() if said(words, cue) and not said(words, other)), None)
    if told is None:
        return None
    if told == OF_ITS_OWN:
        return told if asks_of_dry(words) else None
    kinds = (last.dish_class, heard.request.dish_class)
    pickles = WORD_FOR_IT in kinds[:1]
    # a pickle that is named by its own words is another food
    unnamed = kinds[1] == WORD_FOR_IT and set(words).isdisjoint((heard.request.dish or "").split())
    same = heard.request.dish in (None, last.dish) or (told == PICKLED and unnamed)
    return told if same and last.dish is not None and not pickles else None


def asks_of_dry(words: Sequence[str]) -> bool:
    """Whether food that keeps in a dry jar is asked about, and nothing more of it: and oatmeal?"""
    cue, other = WAYS[OF_ITS_OWN]
    opens = said(words[:OPENING], BESIDE)
    return len(words) <= LONGEST_WAY and opens and said(words, cue) and not said(words, other)


def of_the_way(way: str, heard: Hearing, *, named: bool = False) -> Hearing:
    """An utterance as a question about what keeps without a canner; of the food before, but for one of its own.

    named: whether it is of the food that it names
    """
    about = heard.about(CANNING, subject=way, choices=(), small_talk=None, method=None)
    if not named:
        about = replace(about, request=replace(about.request, dish=None, dish_class=None))
    unused = tuple(u for u in about.request.unused if u.kind != "explanation")
    request = replace(about.request, unused=unused, nearest=(), forms=())
    return replace(about, elliptical=way != OF_ITS_OWN, request=request, subject_for=lambda topic: way)
