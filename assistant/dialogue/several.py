"""An utterance that asks several things, or the same of several dishes: each is answered in a short paragraph."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from functools import partial

from assistant.dialogue.heard import Heard
from assistant.dialogue.memory import Memory
from assistant.dialogue.thread import question_of
from assistant.replies.together import lines_left_out, together
from assistant.understanding import leaning, parts
from assistant.understanding.conversation import merge, settle_in
from assistant.understanding.cue_words import cues
from assistant.understanding.request import FIRST, TIMER, WHY
from assistant.understanding.utterance import listen
from assistant.worked_out import WorkedOut, told, work_out
from rules import engine, example
from rules.catalogue import marked
from rules.foods.dishes import usual_method
from rules.heat.ranked import ranked
from rules.model import PLACE_SLOTS, Answer, Request

BRIEF = 1
RANK = "rank"
TIME = "time"
HEAT = "temperature"
CENTRE = "doneness"
TIME_OR_HEAT = (TIME, HEAT, CENTRE)
OF_CENTRE = frozenset(cues("parts", "of_centre"))
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
    if (whole := _with_reason(heard, memory)) is not None:
        return whole
    asked: Sequence[Piece] = (
        _distinct(_led(heard, memory))
        or _told_apart(_questions(heard, base, memory))
        or _told_apart(_time_and_heat(heard, base))
        or (() if FIRST in base.forms else _distinct(_dishes(heard, base, memory)))
    )
    clear = [piece for piece in asked if piece.is_clear]
    if len(clear) == 1 and asked[0] is clear[0]:
        return _but_for(asked, base, heard, memory)
    if len(clear) < 2:
        return None
    done = [(p.question, work_out(_as_asked(p.question, heard, memory, BRIEF))) for p in clear]
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


def _as_asked(question: Request, heard: Heard, memory: Memory, usual_depth: int | None = None) -> Request:
    """A question of the utterance in the kitchen in use, as deep as is asked and with what is warned of beside it."""
    settled = replace(settle_in(question, memory.kitchen), dangers_too=heard.warned_beside)
    return replace(settled, depth=heard.depth or heard.hearing.depth or usual_depth or settled.depth)


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


def _but_for(asked: Sequence[Piece], base: Request, heard: Heard, memory: Memory) -> Several | None:
    """The one question that is clear, answered as by itself, with what is left out named behind it.

    Where the whole was heard as another question, such as one of safety, that is the one to answer.
    """
    unknown = [piece.text for piece in asked if not piece.is_clear and piece.question.topic in marked("none_beside")]
    question = asked[0].question
    other = (question.topic, question.subject) != (base.topic, base.subject)
    if not unknown or other or question.topic in (TIMER, OUTSIDE):
        return None
    work = work_out(_as_asked(question, heard, memory))
    return None if work.missing else Several(replace(work, word=partial(_with_rest, work, unknown)), question, None)


def _with_rest(work: WorkedOut, left_out: Sequence[str]) -> Answer:
    answer = work.answer
    return replace(answer, text="\n\n".join((answer.text, *lines_left_out(left_out, answer.request.units))))


def _told_apart(asked: Iterator[Piece]) -> list[Piece]:
    """The pieces where they put several questions; none where it is one, of whose dishes it may still be asked."""
    pieces = _distinct(asked)
    return pieces if len(pieces) > 1 else []


def _with_reason(heard: Heard, memory: Memory) -> Several | None:
    """The question before its "and why", whose answer holds the reasons anyway."""
    text = parts.without_reason(heard.doc)
    if text is None:
        return None
    hearing = listen(text, memory.kitchen).hearing
    question = question_of(hearing, memory, back_to_recipe=False)
    topic, none = hearing.request.topic, {WHY, OUTSIDE, TIMER, *marked("none_beside")}
    if hearing.elliptical or WHY in hearing.request.forms or topic in none:
        return None
    reply = work_out(replace(_as_asked(question, heard, memory), text=heard.text))
    return None if reply.missing else Several(reply, question, None)


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
            if parts.asks_of_the_unknown(utterance.doc):
                yield Piece(text, replace(hearing.request, text=text), is_clear=False)
            continue
        if before is base and hearing.request.dish:
            # whoever begins with a dish leaves nothing out: what the whole was heard as is not its topic
            hearing = replace(hearing, elliptical=False)
        question = _placed(merge(before, hearing), base)
        unclear = topic in (TIMER, OUTSIDE) or bool(question.choices)
        before = before if unclear else question
        yield Piece(text, question, is_clear=not unclear)


def _time_and_heat(heard: Heard, base: Request) -> Iterator[Piece]:
    """How long and how hot, where both are asked in one breath: each by the topic that answers it."""
    asked = parts.time_and_heat(heard.doc)
    if asked is None or base.temperature_c is not None or base.dish is None or base.topic not in TIME_OR_HEAT:
        return
    of_centre = base.topic == CENTRE or any(word in OF_CENTRE for word in asked.heat.casefold().split())
    wanted = {TIME: asked.time, (CENTRE if of_centre else HEAT): asked.heat}
    order = list(wanted) if asked.time_first else list(wanted)[::-1]
    method = base.method or usual_method(base.dish, base.dish_class or "general")
    for topic in order:
        by = None if topic == CENTRE else method
        yield Piece(wanted[topic], replace(base, topic=topic, subject=None, forms=(), choices=(), method=by))


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
    portions = base.portions if question.portions is None else question.portions
    return replace(question, units=base.units, unused=base.unused, portions=portions, **here)


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
