"""An utterance that asks several things, or the same of several dishes: each is answered in a short paragraph."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from functools import partial

from assistant.dialogue.heard import Heard
from assistant.dialogue.memory import Memory
from assistant.dialogue.thread import question_of
from assistant.replies.together import together
from assistant.understanding import parts
from assistant.understanding.conversation import merge, settle_in
from assistant.understanding.pipeline import read
from assistant.understanding.request import TIMER
from assistant.understanding.utterance import listen
from assistant.worked_out import WorkedOut, work_out
from rules.catalogue import marked
from rules.model import PLACE_SLOTS, Answer, Kitchen, Request

BRIEF = 1
OUTSIDE = "out_of_scope"


@dataclass(frozen=True, slots=True)
class Several:
    """Answers to the pieces of an utterance. question: the one the conversation goes on with"""

    reply: WorkedOut
    question: Request
    missing: str | None


def several(heard: Heard, memory: Memory) -> Several | None:
    """The answers to an utterance that asks several things; None for one that asks one."""
    if memory.asked or heard.hearing.request.recipe or heard.hearing.elliptical:
        return None
    base = question_of(heard.hearing, memory, back_to_recipe=False)
    asked = _distinct(_questions(heard, base, memory)) or _distinct(_dishes(heard, base, memory))
    if len(asked) < 2:
        return None
    depth = heard.depth or heard.hearing.depth or BRIEF
    done = [(q, work_out(replace(settle_in(q, memory.kitchen), depth=depth))) for q in asked]
    answered = [(q, work) for q, work in done if not work.missing]
    if not any(q.topic != OUTSIDE for q, _ in answered):
        return None
    open_ones = [(q, work) for q, work in done if work.missing]
    told = [*answered, *open_ones[:1]]
    first = next(q for q, _ in answered if q.topic != OUTSIDE)
    missing = open_ones[0][1].missing[:1] if open_ones else ()
    reply = WorkedOut(heard.hearing.request, missing, partial(_worded, [work for _, work in told], heard.text))
    return Several(reply, open_ones[0][0] if open_ones else first, missing[0] if missing else None)


def _questions(heard: Heard, base: Request, memory: Memory) -> Iterator[Request]:
    """The question that each piece puts, with the place and, where it names none, the dish of the whole utterance."""
    before = base
    for piece in parts.questions(heard.doc):
        hearing = listen(piece, memory.kitchen).hearing
        if hearing.request.topic in marked("none_beside"):
            continue
        question = _placed(merge(before, hearing), base)
        before = before if question.topic == OUTSIDE else question
        yield question


def _dishes(heard: Heard, base: Request, memory: Memory) -> Iterator[Request]:
    """The question of the whole utterance about each of its dishes."""
    if base.topic in marked("laid_together") or base.topic not in marked("of_a_dish"):
        return
    for piece in parts.of_dishes(heard.doc):
        own = listen(piece, memory.kitchen).hearing.request
        yield _placed(replace(own, topic=base.topic, subject=None, forms=base.forms), base)


def _placed(question: Request, base: Request) -> Request:
    """A question where the whole utterance was asked, unless it names a place of its own."""
    place = {slot: getattr(base, slot) for slot in (*PLACE_SLOTS, "from_elevation_m")}
    here = {} if question.elevation_m is not None and question.elevation_m != base.elevation_m else place
    return replace(question, units=base.units, unused=base.unused, **here)


def _distinct(asked: Iterator[Request]) -> list[Request]:
    """The questions that differ in more than their words."""
    kept: dict[tuple[object, ...], Request] = {}
    for question in asked:
        kept.setdefault((question.topic, question.subject, question.dish, question.method), question)
    return list(kept.values())


def _worded(told: Sequence[WorkedOut], text: str) -> Answer:
    return together([work.answer for work in told], text, _left_out(text))


def _left_out(text: str) -> list[str]:
    """What is asked beside that can only be done by itself."""
    pieces = parts.questions(read(text))
    return [piece for piece in pieces if listen(piece, Kitchen()).hearing.request.topic == TIMER]
