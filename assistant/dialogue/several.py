"""An utterance that asks several things, or the same of several dishes: each is answered in a short paragraph."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from functools import partial
from typing import Any

from assistant.dialogue.heard import Heard
from assistant.dialogue.memory import Memory
from assistant.dialogue.thread import question_of
from assistant.replies.together import together
from assistant.understanding import leaning, parts
from assistant.understanding.conversation import merge, settle_in
from assistant.understanding.request import FIRST, TIMER, WHY
from assistant.understanding.utterance import listen
from assistant.worked_out import WorkedOut, told, work_out
from rules import engine, example
from rules.catalogue import marked
from rules.heat.ranked import ranked
from rules.model import PLACE_SLOTS, Answer, Request

BRIEF = 1
RANK, TIME = "rank", "time"
OUTSIDE = "out_of_scope"


@dataclass(frozen=True, slots=True)
class Several:
    """Answers to the pieces of an utterance.

    question: the one the conversation goes on with; others: those that were answered beside it
    """

    reply: WorkedOut
    question: Request
    missing: str | None
    others: tuple[Request, ...] = ()


@dataclass(frozen=True, slots=True)
class Piece:
    """A piece of an utterance with the question that it puts, and whether it is clear what that is."""

    text: str
    question: Request
    is_clear: bool = True


def several(heard: Heard, memory: Memory) -> Several | None:
    """The answers to an utterance that asks several things; None for one that asks one."""
    if memory.asked or heard.hearing.request.recipe or heard.hearing.elliptical:
        return None
    base = question_of(heard.hearing, memory, back_to_recipe=False)
    if RANK in base.forms and (found := _ranking(heard, replace(base, topic=TIME), memory)):
        return found
    asked = (
        _distinct(_led(heard, memory))
        or _distinct(_questions(heard, base, memory))
        or (() if FIRST in base.forms else _distinct(_dishes(heard, base, memory)))
    )
    clear = [piece for piece in asked if piece.is_clear]
    if len(clear) < 2:
        return None
    as_said: dict[str, Any] = {"depth": heard.depth or heard.hearing.depth or BRIEF, "dangers_too": heard.warned_beside}
    done = [(p.question, work_out(replace(settle_in(p.question, memory.kitchen), **as_said))) for p in clear]
    answered = [(question, work) for question, work in done if not work.missing]
    awaiting = [(question, work) for question, work in done if work.missing][:1]
    if not answered:
        return None
    left_out = [piece.text for piece in asked if not piece.is_clear]
    works = [work for _, work in (*answered, *awaiting)]
    missing = awaiting[0][1].missing[:1] if awaiting else ()
    reply = WorkedOut(heard.hearing.request, missing, partial(_worded, works, heard.text, left_out))
    goes_on = next((question for question, _ in (*awaiting, *answered)), base)
    others = tuple(question for question, _ in answered if question is not goes_on)
    return Several(reply, goes_on, next(iter(missing), None), others)


def _ranking(heard: Heard, base: Request, memory: Memory) -> Several | None:
    """The dishes of an utterance ranked by how much they change."""
    listed = (listen(text, memory.kitchen).hearing.request for text in parts.of_listed(heard.doc))
    asked = (_placed(replace(own, topic=TIME, subject=None, nearest=(), choices=()), base) for own in listed)
    pieces = [settle_in(question, memory.kitchen) for question in asked if question.dish]
    nowhere = base.elevation_m is None and all(piece.elevation_m is None for piece in pieces)
    placed = [replace(piece, elevation_m=example.EXAMPLE_M) if nowhere else piece for piece in pieces]
    found = ranked([engine.answer(replace(piece, forms=())) for piece in placed]) if len(pieces) > 1 else None
    if found is None:
        return None
    if nowhere:
        found = replace(found, headline=example.told(found.headline, base), cautions=(*found.cautions, example.ASK))
    depth = heard.depth or heard.hearing.depth or found.request.depth
    told_of = replace(found, request=replace(found.request, depth=depth))
    return Several(told(told_of, told_of.request), found.request, None, tuple(pieces[1:]))


def _led(heard: Heard, memory: Memory) -> Iterator[Piece]:
    """The question before in the units that are asked for, and the question behind that."""
    cut, last = parts.led(heard.doc), memory.request
    if cut is None or last is None or last.topic in marked("ends_there"):
        return
    head, rest = (listen(text, memory.kitchen) for text in cut)
    if not head.hearing.elliptical or head.hearing.units is None or head.hearing.request.dish:
        return
    before = merge(last, head.hearing)
    asked = leaning.taken_up(rest.doc, rest.hearing, before, memory.earlier)
    question = replace(merge(before, asked), units=before.units)
    yield Piece(cut[0], before)
    yield Piece(cut[1], question, is_clear=question.topic != OUTSIDE and not question.choices)


def _questions(heard: Heard, base: Request, memory: Memory) -> Iterator[Piece]:
    """The question that each piece puts, with the place and, where it names none, the dish of the whole utterance."""
    before = base
    for text in parts.questions(heard.doc):
        utterance = listen(text, memory.kitchen)
        hearing = utterance.hearing
        topic = hearing.request.topic
        if topic == OUTSIDE and WHY in hearing.request.forms and before.dish_class:
            hearing, topic = hearing.about(WHY, subject=None), WHY
        if topic in marked("none_beside") and topic != TIMER:
            continue
        question = _placed(merge(before, hearing), base)
        unclear = topic in (TIMER, OUTSIDE) or bool(question.choices)
        before = before if unclear else question
        yield Piece(text, question, is_clear=not unclear)


def _dishes(heard: Heard, base: Request, memory: Memory) -> Iterator[Piece]:
    """The question of the whole utterance about each of its dishes."""
    if base.topic in marked("laid_together") or base.topic not in marked("of_a_dish"):
        return
    if base.method == "pressure_cook" and sum(measure.kind == "time" for measure in heard.doc._.measures) == 1:
        # one cooker, one time: what is in it together
        return
    for text in parts.of_dishes(heard.doc):
        own = listen(text, memory.kitchen).hearing.request
        yield Piece(text, _placed(replace(own, topic=base.topic, subject=None, forms=base.forms, choices=()), base))


def _placed(question: Request, base: Request) -> Request:
    """A question where the whole utterance was asked, unless it names a place of its own."""
    place = {slot: getattr(base, slot) for slot in (*PLACE_SLOTS, "from_elevation_m")}
    own = question.elevation_m is not None and question.elevation_m not in (base.elevation_m, base.from_elevation_m)
    here = {} if own else place
    return replace(question, units=base.units, unused=base.unused, **here)


def _distinct(asked: Iterator[Piece]) -> list[Piece]:
    """The pieces whose questions differ in more than their words."""
    kept: dict[tuple[object, ...], Piece] = {}
    for piece in asked:
        question = piece.question
        kept.setdefault((question.topic, question.subject, question.belief, question.dish, question.method), piece)
    return list(kept.values())


def _worded(told: Sequence[WorkedOut], text: str, left_out: Sequence[str]) -> Answer:
    answers = {work.answer.headline: work.answer for work in told}
    return together(list(answers.values()), text, left_out)
