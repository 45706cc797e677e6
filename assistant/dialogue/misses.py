"""Utterances that were not followed: after two in a row it is said what can be asked, of the dish that is talked of."""

from __future__ import annotations

from assistant.dialogue.made import said
from assistant.dialogue.memory import Memory
from assistant.dialogue.several import OUTSIDE
from assistant.dialogue.thread import talked_of
from assistant.worked_out import WorkedOut
from rules.catalogue import topics
from rules.model import Request
from rules.said import sentences

say = sentences("dialogue/talk")

MOST_MISSES = 2
SMALL_TALK = "smalltalk"
EXAMPLE = "time"


def is_missed(put: Request) -> bool:
    """Whether a reply says no more than that it was not followed, or is outside what is known."""
    return put.topic == OUTSIDE or (put.topic == SMALL_TALK and put.small_talk is None)


def offer(text: str, memory: Memory) -> WorkedOut:
    """What can be asked, with the dish that is talked of as the example."""
    last = talked_of(memory)
    if last and last.dish:
        return said(text, say("offer", dish=last.dish), memory, "help")
    return said(text, say("offer-alone", example=topics()[EXAMPLE].example), memory, "help")
