"""What a move does: a reply about the conversation, or the question before answered in another way."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import Any

from assistant.dialogue.memory import Memory, moved, place_of, without_place
from assistant.dialogue.moves import Move
from assistant.dialogue.thread import after
from assistant.reading.text import LONGEST
from assistant.understanding.conversation import settle_in
from assistant.understanding.hazards import hazard_of
from assistant.worked_out import WorkedOut, told, work_out
from rules import engine
from rules.catalogue import marked
from rules.heat.batch_size import BATCH
from rules.heat.equipment import label
from rules.model import Answer, Quantity, Request
from rules.said import Words, elevation, listed, sentences, together

say = sentences("dialogue/made")

BRIEFEST, DEEPEST = 1, 3
OF_KITCHEN = "set_kitchen"
WHY = "why"
MOST_REASONS = 4
Made = tuple[WorkedOut, Memory]


def make(move: Move, text: str, memory: Memory) -> Made | None:
    """What comes of a move, and the memory after it; None where it is only a reply, or a question by itself."""
    do = MOVES.get(move.id)
    return do(text, memory, move) if do else None


def said(text: str, headline: Words, memory: Memory, topic: str = "smalltalk") -> WorkedOut:
    """An answer that is one sentence about the conversation, or about the kitchen it is held in."""
    request = Request(text=text[:LONGEST], topic=topic, units=memory.kitchen.units)
    return told(Answer(request=request, headline=headline))


def said_of(request: Request, headline: Words, memory: Memory, topic: str) -> WorkedOut:
    """A sentence that answers a question, with what was heard in it."""
    asked = replace(request, topic=topic, units=memory.kitchen.units, unused=(), choices=(), text=request.text[:LONGEST])
    return told(Answer(request=asked, headline=headline))


def ask(memory: Memory) -> WorkedOut:
    """The question so far, answered, or its missing piece asked for."""
    return work_out(settle_in(memory.request or Request(topic="help"), memory.kitchen))


def answer_again(text: str, memory: Memory, depth: int | None = None) -> Made:
    """Answer the question before once more, at another depth where one is given, as far as there is a deeper one."""
    if memory.request is None:
        return said(text, say("nothing-yet"), memory), memory
    if depth is not None:
        depth = min(DEEPEST, max(BRIEFEST, depth))
        memory = replace(memory, request=replace(memory.request, depth=depth))
    return ask(memory).asked_as(text), memory


def _repeat(text: str, memory: Memory, move: Move) -> Made:
    return answer_again(text, memory)


def _shorter(text: str, memory: Memory, move: Move) -> Made:
    return answer_again(text, memory, memory.request.depth - 1 if memory.request else None)


def _longer(text: str, memory: Memory, move: Move) -> Made:
    return answer_again(text, memory, memory.request.depth + 1 if memory.request else None)


def _why_so(text: str, memory: Memory, move: Move) -> Made | None:
    """The reasons of the last answer; of a reason the deeper one. None where there is no answer, or it gave none.

    What was refused stays refused: its verdict is said again before its reasons.
    """
    last, danger = memory.request, memory.scene.danger
    if last is None:
        return None
    if last.topic == WHY and not danger:
        return answer_again(text, memory, last.depth + 1)
    settled = settle_in(last, memory.kitchen)
    answered = work_out(replace(settled, **refused(danger)) if danger else settled).answer
    if answered.missing or not answered.because:
        return None
    because = answered.because[:MOST_REASONS]
    question = replace(last, topic=WHY, subject=None, text=text)
    reasons = replace(answered.request, topic=WHY, subject=None, text=text, unused=(), danger=None)
    first = answered.headline if danger else because[0].text
    cautions = answered.cautions if danger else ()
    return told(Answer(request=reasons, headline=first, because=because, cautions=cautions)), after(question, memory)


def refused(danger: str) -> dict[str, Any]:
    """The slots by which a request is refused: the subject of safety that a hazard is, or the hazard itself."""
    subject = hazard_of(danger).subject
    return {"subject": subject} if subject else {"danger": danger}


def _drop(text: str, memory: Memory, move: Move) -> Made:
    return said(text, say("drop"), memory), replace(memory, asked=None)


def _start_over(text: str, memory: Memory, move: Move) -> Made:
    memory = Memory(kitchen=memory.kitchen)
    place = place_of(memory)
    fresh = say("clean-slate-in-kitchen", place=place) if place else say("clean-slate")
    return said(text, fresh, memory), memory


def _forget_kitchen(text: str, memory: Memory, move: Move) -> Made:
    memory = replace(without_place(memory), asked=None)
    return said(text, say("kitchen-forgotten"), memory, OF_KITCHEN), memory


def _recall_kitchen(text: str, memory: Memory, move: Move) -> Made:
    return said(text, kitchen_told(memory), memory, OF_KITCHEN), memory


def kitchen_told(memory: Memory) -> Words:
    """What is known of the kitchen, and where the last question was about another place."""
    kitchen, place = memory.kitchen, place_of(memory)
    last_m = settle_in(memory.request or Request(), kitchen).elevation_m
    last = None if last_m is None else elevation(last_m)
    owned = listed((label(id) for id in kitchen.equipment), "commas")
    equipment = say("equipment", owned=owned) if kitchen.equipment else None
    if place is None:
        return together(say("no-kitchen-but-last", last=last) if last else say("no-kitchen"), equipment)
    here = say("kitchen-by-name", name=kitchen.name, place=place) if kitchen.name else say("kitchen", place=place)
    return together(here, equipment, say("last-question", last=last) if last and last != place else None)


def _scale(text: str, memory: Memory, move: Move) -> Made:
    """More or less of the last question, or of the one before a why; where no amount was said, of a batch."""
    question = moved(memory.before, memory.request) if memory.before and memory.request else memory.request
    amount = question and (question.quantity or question.portions)
    if question is None or not (amount or question.topic in marked("scaled")):
        return _nothing_to_scale(text, memory), memory
    quantity, portions = question.quantity if amount else Quantity(1, BATCH), question.portions
    scaled = replace(
        question,
        quantity=quantity and Quantity(quantity.value * move.factor, quantity.unit),
        portions=portions and max(1, round(portions * move.factor)),
    )
    return answer_again(text, after(scaled, memory))


def _nothing_to_scale(text: str, memory: Memory) -> WorkedOut:
    """That there is no amount yet, said of the question so far."""
    told_so = said(text, say("nothing-to-scale"), memory)
    if memory.request is None:
        return told_so
    request = engine.settle(settle_in(replace(memory.request, text=text), memory.kitchen))
    return replace(told_so, request=request, word=lambda: replace(told_so.answer, request=request))


MOVES: dict[str, Callable[[str, Memory, Move], Made | None]] = {
    "why_so": _why_so,
    "repeat": _repeat,
    "shorter": _shorter,
    "longer": _longer,
    "drop": _drop,
    "start_over": _start_over,
    "forget_kitchen": _forget_kitchen,
    "recall_kitchen": _recall_kitchen,
    "scale": _scale,
}
