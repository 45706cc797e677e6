"""A turn whose answer would be the one before: what it adds is asked for, or the answer is said to stay as it was."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from functools import partial
from typing import Any

from assistant.dialogue.heard import Heard
from assistant.dialogue.made import said
from assistant.dialogue.memory import Memory
from assistant.dialogue.recipe_room import with_note
from assistant.reading.tokens import norms
from assistant.understanding.claims import plain_numbers
from assistant.understanding.conversation import settle_in
from assistant.understanding.cue_words import cues
from assistant.understanding.cue_words import said as said_among
from assistant.worked_out import WorkedOut, work_out
from rules.model import Answer, Request
from rules.said import elevation, number, sentences

say = sentences("dialogue/said_again")
AGAIN, SAID_AGAIN = cues("turning", "again"), cues("turning", "said_again")
# what two questions may differ in and still be one
UNTOLD: dict[str, Any] = {
    "text": "", "forms": (), "asked_way": None, "nearest": (), "choices": (), "sets_kitchen": False, "small_talk": None,
    "belief": None, "denied": False,
}  # fmt: skip


def adds_nothing(heard: Heard, question: Request, memory: Memory) -> bool:
    """Whether nothing was heard that the question before did not hold already, and nobody asked for it again."""
    now, last, words = heard.hearing.request, memory.request, norms(heard.doc)
    if last is None or last.dish is None or memory.asked or heard.move or heard.is_refused or question.recipe:
        return False
    asks = now.forms or heard.hearing.units or heard.hearing.unit_meant or heard.hearing.depth or "?" in heard.text
    names = any(found.kind in ("dish", "method", "place", "equipment") for found in heard.doc._.found)
    measured = bool(heard.doc._.measures or heard.doc._.elevations)
    told = names or measured or now.unused or question.unused
    again = said_among(words, (*AGAIN, *SAID_AGAIN))
    return not (asks or told or again) and _bare(question) == _bare(last)


def asked_back(heard: Heard, memory: Memory) -> WorkedOut:
    """What is asked of an utterance that adds nothing: what its figure counts, or what is meant."""
    last = settle_in(memory.request or Request(), memory.kitchen)
    memory = replace(memory, kitchen=replace(memory.kitchen, units=last.units))
    figures: Sequence[Any] = plain_numbers(heard.doc)
    dish, place = last.dish or "", elevation(last.elevation_m or 0.0)
    if len(figures) == 1:
        return said(heard.text, say("figure", figure=number(figures[0].value, 2), dish=dish), memory)
    placed = "yes" if last.elevation_m is not None else "no"
    return said(heard.text, say("what-of-it", dish=dish, placed=placed, place=place), memory)


def noting_the_same(reply: WorkedOut, question: Request, memory: Memory) -> WorkedOut:
    """The reply; where something was changed and it comes out as before, with a word that says so."""
    last = memory.request
    if (
        last is None
        or reply.missing
        or memory.asked
        or question.topic != last.topic
        or question.dish != last.dish
        or question.forms
    ):
        return reply
    if (
        question.elevation_m != last.elevation_m
        or question.units != last.units
        or question.depth != last.depth
        or _bare(question) == _bare(last)
    ):
        return reply
    return replace(reply, word=partial(_noted, reply, settle_in(last, memory.kitchen)))


def _noted(reply: WorkedOut, last: Request) -> Answer:
    before = work_out(last)
    if before.missing or before.answer.text != reply.answer.text or last.danger:
        return reply.answer
    return with_note(reply, say("as-before")).answer


def _bare(question: Request) -> Request:
    return replace(question, **UNTOLD)
