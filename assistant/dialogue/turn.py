"""One turn of a conversation: an utterance and what is remembered -> an Answer and what is remembered after it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from typing import Any

from assistant import drill
from assistant.answering import reply_to_request
from assistant.dialogue import moves, timers
from assistant.dialogue.memory import Memory, learn_kitchen, moved, place_of, without_place
from assistant.dialogue.moves import Move
from assistant.replies import dress, line
from assistant.understanding import danger
from assistant.understanding.conversation import PLACE_SLOTS, listen, merge, settle_in, spoken
from assistant.understanding.danger import Listened
from assistant.understanding.hazards import Hazard
from assistant.understanding.pipeline import read
from assistant.understanding.request import PASSING, Hearing
from rules.engine import known
from rules.heat.batch_size import BATCH
from rules.heat.equipment import label
from rules.model import Answer, Quantity, Request
from rules.say import Say

# topics of an utterance that may be nothing but the reply to what was asked
GIVING = (*PASSING, "set_kitchen", "calibrate")
# topics after which the question before them is gone on with
BY_THE_WAY = ("why", "timer", "set_kitchen")
# what a cook says after one of them to go back to the work
TO_DO = (
    "dish",
    "dish_class",
    "method",
    "quantity",
    "portions",
    "time_min",
    "service_time",
    "gauge_pa",
    "covered",
    "soaked",
)
# what was said of one way to cook and does not hold for another
OF_A_METHOD: dict[str, Any] = dict.fromkeys(
    ("time_min", "time_high_min", "temperature_c", "temperature_of", "gauge_pa", "covered", "soaked")
)
# questions that can be asked of twice as much
SCALED = ("time", "temperature", "convert_recipe", "schedule")
BRIEFEST, DEEPEST = 1, 3


@dataclass(frozen=True, slots=True)
class Turn:
    """answer: what is said; memory: what is remembered after it."""

    answer: Answer
    memory: Memory


def take_turn(text: str, memory: Memory, depth: int | None = None) -> Turn:
    """Answer an utterance in the light of what was said before. Never raises because of what the text says.

    An aside while a piece is awaited is answered, and the piece asked for again.
    depth: of the answer, whatever the cook says about it; None leaves it to the cook
    """
    answer = aside(text, memory)
    if answer is None:
        return go_on(text, memory, depth)
    question = ask(memory)
    return Turn(followed_by(replace(question, request=replace(question.request, text=text)), answer, question), memory)


def listen_for_danger(text: str, memory: Memory) -> Listened:
    """The danger in an utterance, and what stands after it; a recipe that was pasted is not listened to."""
    return danger.listen(read(spoken(text)), memory.scene)


def answers_drill(text: str, memory: Memory) -> bool:
    """Whether an utterance is a reply to the question of a drill, whose answers speak of danger all the time."""
    sitting = memory.drill
    return bool(sitting and not sitting.over and memory.asked is None and drill.understood(sitting, text))


def warned(text: str, memory: Memory, listened: Listened, depth: int | None = None) -> Turn:
    """The answer to an utterance in which danger was heard; the question is remembered, so that it can be put right."""
    heard = in_context(hear(text, memory), memory.request)
    question = merge(basis(heard, memory), heard)
    request = replace(settle_in(question, memory.kitchen), depth=depth or question.depth)
    hazard, others = listened.hazard, tuple(h.id for h in listened.others if h.subject is None)
    if hazard and hazard.subject:
        request = replace(request, subject=hazard.subject)
    elif hazard:
        request = replace(request, danger=hazard.id, dangers_too=others)
    kept = memory if passes(heard) else after(question, memory)
    return Turn(reply_to_request(request), replace(kept, asked=None))


def warned_first(turn: Turn, hazard: Hazard) -> Turn:
    """The answer with a warning before it."""
    answer = turn.answer
    warning = reply_to_request(replace(answer.request, danger=hazard.id, depth=BRIEFEST))
    both = followed_by(answer, warning, answer)
    cautions = tuple(dict.fromkeys((*warning.cautions, *answer.cautions)))
    return replace(turn, answer=replace(both, headline=warning.headline, cautions=cautions))


def followed_by(answer: Answer, first: Answer, second: Answer) -> Answer:
    """The answer with the words of two, one after the other."""
    return replace(answer, text=f"{first.text}\n\n{second.text}", spoken=f"{first.spoken} {second.spoken}")


def aside(text: str, memory: Memory) -> Answer | None:
    """The reply to an utterance that leaves the awaited piece awaited; None where it does not, or none is."""
    if memory.asked is None or memory.request is None or drill.wanted(text):
        return None
    if listen_for_danger(text, memory).hazard:
        return None
    move, piece = moves.heard(text), moves.pieces()[memory.asked]
    if move and move.id in ("why_asked", "dont_know"):
        return said(text, piece.why if move.id == "why_asked" else piece.find_out, memory)
    if move and move.id in MOVES:
        taken = MOVES[move.id](text, memory, move)
        return taken.answer if taken.memory == memory and not taken.answer.missing else None
    heard = hear(text, memory)
    by_the_way = passes(heard) or (heard.request.topic == "why" and not known(heard.request, memory.asked))
    return reply_to_request(settle_in(heard.request, memory.kitchen)) if by_the_way else None


def ask(memory: Memory) -> Answer:
    """The question so far, answered, or its missing piece asked for."""
    return reply_to_request(settle_in(memory.request or Request(topic="help"), memory.kitchen))


def go_on(text: str, memory: Memory, depth: int | None = None) -> Turn:
    """Take an utterance that is no aside. Danger is heard first, whatever the utterance asks or answers."""
    listened = listen_for_danger(text, memory)
    memory = replace(memory, scene=listened.scene)
    if listened.hazard is None or answers_drill(text, memory):
        return untroubled(text, memory, depth)
    if listened.hazard.beside:
        return warned_first(untroubled(text, memory, depth), listened.hazard)
    return warned(text, memory, listened, depth)


def untroubled(text: str, memory: Memory, depth: int | None = None) -> Turn:
    """Take an utterance without danger in it.

    What is no reply to a drill under way is answered, and the question of the drill put again.
    """
    taken = drilled(text, memory)
    if taken:
        return taken
    turn = converse(text, memory, depth)
    sitting = turn.memory.drill
    if sitting is None or sitting.over or turn.memory.asked:
        return turn
    return replace(turn, answer=followed_by(turn.answer, turn.answer, said(text, drill.put(sitting), memory)))


def drilled(text: str, memory: Memory) -> Turn | None:
    """Begin a drill, or take a reply to its question; None for an utterance that is neither."""
    wanted, last = drill.wanted(text), memory.drill
    if wanted:
        seed = wanted.seed or (last.seed + 1 if last else 1)
        name = wanted.name or (last.name if last else "")
        sitting, put = drill.start(seed, wanted.themes, memory.kitchen.units, name)
    elif last and answers_drill(text, memory):
        sitting, put = drill.reply(last, text)
    else:
        return None
    return Turn(said(text, put, memory), replace(memory, asked=None, drill=sitting))


def converse(text: str, memory: Memory, depth: int | None = None) -> Turn:
    """Take an utterance that has nothing to do with a drill."""
    move = moves.heard(text)
    if move and move.id in MOVES:
        return MOVES[move.id](text, memory, move)
    heard = hear(text, memory)
    if heard.depth and memory.request and passes(heard):
        return answer_again(text, memory, depth=depth or heard.depth)
    heard = in_context(heard, memory.request)
    question = merge(basis(heard, memory), heard)
    if question.topic == "set_kitchen" and memory.kitchen.elevation_m is not None:
        question = replace(question, **{slot: getattr(heard.request, slot) for slot in PLACE_SLOTS})
    if memory.request and memory.request.depth == BRIEFEST and heard.depth is None:
        question = replace(question, depth=BRIEFEST)
    request = settle_in(question, memory.kitchen)
    answer = reply_to_request(replace(request, depth=depth) if depth else request)
    kitchen = memory.kitchen
    if answer.request.topic == "set_kitchen":
        kitchen = learn_kitchen(kitchen, question)
    elif memory.asked == "elevation" and known(heard.request, "elevation"):
        kitchen = learn_kitchen(kitchen, heard.request)
    asked = answer.missing[0] if answer.missing else None
    kept = memory if passes(heard) else after(question, memory)
    return Turn(answer, replace(kept, asked=asked, kitchen=kitchen))


def basis(heard: Hearing, memory: Memory) -> Request | None:
    """The question that an utterance goes on with.

    After a timer it is the question before it; after a why, or after something about the kitchen, too, unless only the
    place or the units are another; and where the cook comes back to a recipe, it is the last question about that.
    """
    last, now = memory.request, heard.request
    if last is None:
        return None
    if memory.recipe and not now.recipe and moves.back_to_recipe(now.text):
        return moved(memory.recipe, last)
    leaves = now.topic != last.topic
    if heard.elliptical and last.topic != "timer":
        leaves = any(getattr(now, slot) for slot in TO_DO)
    question = moved(memory.before, last) if memory.before and leaves else last
    return replace(question, **OF_A_METHOD) if now.method not in (None, question.method) else question


def after(question: Request, memory: Memory) -> Memory:
    """The memory after a question of any consequence."""
    before = None
    if question.topic in BY_THE_WAY:
        before = memory.before if memory.request and memory.request.topic in BY_THE_WAY else memory.request
    recipe = question if question.topic == "convert_recipe" and question.recipe else memory.recipe
    return replace(memory, request=question, before=before, recipe=recipe)


def in_context(heard: Hearing, last: Request | None) -> Hearing:
    """An utterance as the question before makes it plain.

    A dish alone, after timers that are running, asks after its timer; a length of time without a word of timers, and a
    baseline without a kitchen, belong to the question.
    """
    now = heard.request
    if last is None:
        return heard
    running = last.topic == "timer" and timers.action(last.text) != "set"
    if running and heard.elliptical and now.dish and not now.method:
        return replace(heard, request=replace(now, topic="timer"))
    no_timer = now.topic == "timer" and last.topic != "timer" and not timers.spoken_of(now.text)
    no_kitchen = now.topic == "set_kitchen" and now.from_elevation_m is not None and now.elevation_m is None
    if no_timer or no_kitchen:
        return replace(heard, elliptical=True, request=replace(now, topic=last.topic))
    return heard


def timers_asked(turn: Turn) -> Request | None:
    """What an utterance asked to be done about timers, once all that takes is known; said again, how long is left."""
    asked, request = turn.answer.request, turn.memory.request
    if request is None or turn.answer.missing or not asked.topic == request.topic == "timer":
        return None
    return request if asked.text == request.text else replace(request, text=timers.HOW_LONG_LEFT)


def hear(text: str, memory: Memory) -> Hearing:
    """What an utterance says; a reply to what was asked goes on with the question, and is heard in its frame."""
    heard = listen(text, memory.kitchen)
    word = memory.asked
    if word is None or memory.request is None:
        return heard
    bare = heard.elliptical or not any(sign.isalpha() for sign in text)
    if known(heard.request, word) and (bare or heard.request.topic in GIVING):
        return replace(heard, elliptical=True, request=replace(heard.request, topic=memory.request.topic))
    if known(heard.request, word):
        return replace(heard, elliptical=False)
    frame = moves.pieces()[word].frame
    if not frame or not (bare or passes(heard) or word == "recipe"):
        return replace(heard, elliptical=bare)
    framed = listen(frame.format(text.strip(" .?!,;")), memory.kitchen)
    if not known(framed.request, word):
        return replace(heard, elliptical=bare)
    return replace(framed, elliptical=True, request=replace(framed.request, text=heard.request.text))


def passes(heard: Hearing) -> bool:
    """Whether an utterance says nothing for the questions after it."""
    return heard.request.topic in PASSING and not heard.elliptical


def said(text: str, headline: str, memory: Memory) -> Answer:
    """An answer that is one sentence about the conversation."""
    request = Request(text=text, topic="smalltalk", units=memory.kitchen.units)
    return dress(Answer(request=request, headline=headline))


def answer_again(text: str, memory: Memory, depth: int | None = None) -> Turn:
    """Answer the question before once more, at another depth where one is given, as far as there is a deeper one."""
    if memory.request is None:
        return Turn(said(text, line("nothing_yet"), memory), memory)
    if depth is not None:
        depth = min(DEEPEST, max(BRIEFEST, depth))
        memory = replace(memory, request=replace(memory.request, depth=depth))
    answer = ask(memory)
    return Turn(replace(answer, request=replace(answer.request, text=text)), memory)


def _repeat(text: str, memory: Memory, move: Move) -> Turn:
    return answer_again(text, memory)


def _shorter(text: str, memory: Memory, move: Move) -> Turn:
    return answer_again(text, memory, memory.request.depth - 1 if memory.request else None)


def _longer(text: str, memory: Memory, move: Move) -> Turn:
    return answer_again(text, memory, memory.request.depth + 1 if memory.request else None)


def _drop(text: str, memory: Memory, move: Move) -> Turn:
    return Turn(said(text, line("drop"), memory), replace(memory, asked=None))


def _start_over(text: str, memory: Memory, move: Move) -> Turn:
    memory = Memory(kitchen=memory.kitchen)
    return Turn(said(text, line("start_over", place=place_of(memory)), memory), memory)


def _forget_kitchen(text: str, memory: Memory, move: Move) -> Turn:
    memory = replace(without_place(memory), asked=None)
    return Turn(said(text, line("forget_kitchen"), memory), memory)


def _recall_kitchen(text: str, memory: Memory, move: Move) -> Turn:
    owned = [label(id) for id in memory.kitchen.equipment]
    known_place = place_of(memory)
    last_m = settle_in(memory.request or Request(), memory.kitchen).elevation_m
    last = "" if last_m is None else Say(memory.kitchen.units).elevation(last_m)
    reply = line("recall_kitchen", place=known_place, last=last, name=memory.kitchen.name, equipment=owned)
    return Turn(said(text, reply, memory), memory)


def _scale(text: str, memory: Memory, move: Move) -> Turn:
    """More or less of the last question, or of the one before a why; where no amount was said, of a batch."""
    question = moved(memory.before, memory.request) if memory.before and memory.request else memory.request
    amount = question and (question.quantity or question.portions)
    if question is None or not (amount or question.topic in SCALED):
        answer = said(text, line("nothing_to_scale"), memory)
        kept = replace(ask(memory).request, text=text) if memory.request else answer.request
        return Turn(replace(answer, request=kept), memory)
    quantity, portions = question.quantity if amount else Quantity(1, BATCH), question.portions
    scaled = replace(
        question,
        quantity=quantity and Quantity(quantity.value * move.factor, quantity.unit),
        portions=portions and max(1, round(portions * move.factor)),
    )
    return answer_again(text, after(scaled, memory))


MOVES: dict[str, Callable[[str, Memory, Move], Turn]] = {
    "repeat": _repeat,
    "shorter": _shorter,
    "longer": _longer,
    "drop": _drop,
    "start_over": _start_over,
    "forget_kitchen": _forget_kitchen,
    "recall_kitchen": _recall_kitchen,
    "scale": _scale,
}
