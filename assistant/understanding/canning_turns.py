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
SHORT, SHORTEST, LONGEST_PLACE, OPENING = 8, 5, 10, 4


def taken_up(words: Sequence[str], heard: Hearing, last: Request) -> Hearing | None:
    """An utterance behind a question of canning, where it goes on with it; None where it may be anything.

    words: of the utterance
    """
    if last.topic != CANNING or heard.request.dish not in (None, last.dish):
        return None
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
