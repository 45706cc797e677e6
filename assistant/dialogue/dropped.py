"""The dish that is talked of, dropped: forget the veal. The place stays, and the next dish begins anew."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from assistant.dialogue.heard import Heard
from assistant.dialogue.made import said
from assistant.dialogue.memory import Memory
from assistant.reading.tokens import norms
from assistant.understanding.cue_words import cues
from assistant.understanding.cue_words import said as said_among
from assistant.worked_out import WorkedOut
from rules.model import PLACE_SLOTS, Request
from rules.said import sentences

say = sentences("dialogue/dropped")
DROPS, NEVER_MIND = cues("menu_turns", "drops"), cues("dropped", "never_mind")
INSTEAD = cues("dropped", "instead")
LONGEST, OPENING = 7, 4


def dropped(heard: Heard, memory: Memory) -> tuple[WorkedOut, Memory] | None:
    """What comes of an utterance that drops the dish that is talked of, and asks nothing; None for any other."""
    last = memory.request
    if last is None or last.dish is None or memory.menu or memory.asked or not drops(heard, last.dish):
        return None
    kept: dict[str, Any] = {slot: getattr(last, slot) for slot in (*PLACE_SLOTS, "units", "depth")}
    left = tuple(question for question in memory.earlier if question.dish != last.dish)
    forgotten = replace(memory, request=Request(text=heard.text, **kept), before=None, earlier=left)
    return said(heard.text, say("gone", dish=last.dish), memory), forgotten


def drops(heard: Heard, dish: str) -> bool:
    """Whether nothing is said but that a dish is dropped, by any word of its name."""
    words = [word for word in norms(heard.doc) if word.isalnum()]
    named = set(dish.split()) & set(words)
    figured = heard.doc._.numbers or heard.doc._.measures or "?" in heard.text
    if said_among(words, INSTEAD):
        # what is dropped was said before, and the dish that is named takes its place: scratch that, chicken soup
        return False
    return len(words) <= LONGEST and bool(named) and not figured and said_among(words[:OPENING], (*DROPS, *NEVER_MIND))
