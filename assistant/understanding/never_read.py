"""A reading that the cook waits for and never gets: the middle of a loaf does not get so hot here."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from assistant.understanding.complaints import TROUBLE
from assistant.understanding.cue_words import cues, said
from assistant.understanding.request import Hearing
from rules.baking.styles import is_baked
from rules.model import Request

READ_OFF, DRY_LOAF, CORE = "calibrate", "loaf_dry", "core"
NEVER, MIDDLE = cues("never_read", "never"), cues("never_read", "middle")


def as_never_read(heard: Hearing, words: Sequence[str], last: Request) -> Hearing:
    """An utterance of a reading in a bake that never comes, as the complaint that it is; any other as it stands.

    words: of the utterance; last: the question before, which tells what is baked
    """
    now = heard.request
    baked = is_baked(now.dish_class or last.dish_class)
    if now.topic != READ_OFF or now.temperature_c is None or not baked:
        return heard
    if not (said(words, NEVER) and said(words, MIDDLE)):
        return heard
    as_fault = heard.about(TROUBLE, subject=DRY_LOAF, choices=(), temperature_of=CORE)
    dish, dish_class = (now.dish, now.dish_class) if now.dish else (last.dish, last.dish_class)
    request = replace(as_fault.request, dish=dish, dish_class=dish_class)
    return replace(as_fault, elliptical=False, request=request)
