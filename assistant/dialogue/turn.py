"""One turn of a conversation: an utterance and what is remembered -> what is said and what is remembered after it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import partial, reduce

from assistant import drill
from assistant.dialogue import (
    allergy_talk,
    history,
    made,
    menu,
    misses,
    moves,
    pictures,
    refusing,
    said_again,
    talk,
    tonight,
    whereabouts,
)
from assistant.dialogue.batch_talk import begun
from assistant.dialogue.deeds import Deed
from assistant.dialogue.dropped import dropped
from assistant.dialogue.gone import taken_away
from assistant.dialogue.heard import Heard, hear
from assistant.dialogue.made import BRIEFEST, Made, answer_again, ask, refused, said
from assistant.dialogue.memory import Memory, learn_kitchen
from assistant.dialogue.memory import moved as moved_to
from assistant.dialogue.place_talk import of_places
from assistant.dialogue.readings import is_barometer_alone, read_off
from assistant.dialogue.recalled import recalled
from assistant.dialogue.recipe_room import beside, of_recipes, with_note
from assistant.dialogue.several import OUTSIDE, several
from assistant.dialogue.thread import after, question_of
from assistant.dialogue.timing import following, timed
from assistant.reading.tokens import norms
from assistant.understanding import kitchen_told, leaning, wanted, wondering
from assistant.understanding.awaited import choice
from assistant.understanding.conversation import merge, settle_in
from assistant.understanding.cue_words import cues
from assistant.understanding.hazards import Hazard, hazard_of
from assistant.understanding.request import Hearing
from assistant.understanding.utterance import listen
from assistant.worked_out import WorkedOut, work_out
from rules.engine import known
from rules.model import PLACE_SLOTS, Answer, Kitchen, Request
from rules.said import Words, elevation, sentences, together

say = sentences("dialogue/turn")

SHORTEST_ASK = 6
OTHER_TRADE = frozenset(cues("other_trade", "words"))
# pieces that are not asked for again behind something else: the next time of day, or symptom, is it
MAY_WAIT = ("service_time", "symptom", "explanation", "choice", "portions")
# what is said of the piece that is awaited
OF_THE_PIECE = ("why_asked", "why_so", "dont_know")
# eggs for a small child, or for somebody who is ill or old, are given hard
GIVEN_HARD = frozenset(("toddler_egg", "at_risk_named", "frail_egg"))
# what shows that an utterance is about the kitchen, though nobody can tell what it asks
KITCHEN_SIGNS = frozenset(
    ("kitchen_word", "dish", "method", "ingredient", "equipment", "temperature", "baking", "candy", "canning", "cooker")
)


@dataclass(frozen=True, slots=True)
class Turn:
    """reply: to the utterance; memory: what is remembered after it

    deed: what is to be done beside, by whoever holds the conversation
    aside: whether the reply leaves the awaited piece awaited, so that it is asked for again after it
    timers: what the utterance asked to be done about timers, where that is more than the question that is remembered
    follow: what is to be done about timers of a plan that it has changed
    """

    reply: WorkedOut
    memory: Memory
    aside: bool = False
    timers: tuple[Request, ...] = ()
    follow: Request | None = None
    deed: Deed | None = None

    @property
    def answer(self) -> Answer:
        """All that is said, in words."""
        if not self.aside:
            return self.reply.answer
        question = ask(self.memory).asked_as(self.reply.request.text).answer
        return followed_by(question, self.reply.answer, question)


def take_turn(text: str, memory: Memory, depth: int | None = None) -> Turn:
    """Answer an utterance in the light of what was said before. Never raises because of what the text says.

    Danger is heard first, whatever the utterance asks or answers. An aside while a piece is awaited is answered, and
    the piece asked for again. Nothing is put into words before somebody reads the turn's answer.
    depth: of the answer, whatever the cook says about it; None leaves it to the cook
    """
    heard = hear(text, memory, depth)
    if (left := refusing.forgotten(heard, memory)) is not memory:
        memory, heard = left, hear(text, left, depth)
    service = tonight.noted(heard, memory.tonight)
    hazard, now = heard.listened.hazard, replace(memory, scene=heard.listened.scene, tonight=service)
    hazard = None if is_barometer_alone(heard) else hazard
    if not heard.answers_drill and refusing.asks_instead(heard):
        turn = told_instead(heard, now)
    elif hazard is None or hazard.beside or heard.answers_drill:
        now = refusing.let_go(heard, now)
        # the way to cook that went with its vessel is heard in nothing any more
        heard = hear(text, replace(memory, request=now.request), depth) if now.request != memory.request else heard
        turn = let_hang(untroubled(heard, now), heard)
        turn = replace(turn, memory=replace(memory, missed=turn.memory.missed)) if turn.aside else placed(turn, heard)
    else:
        turn = placed(warned(heard, replace(now, missed=0), hazard), heard)
    service = tonight.of_plan(turn.memory.tonight, turn.memory.menu, memory.menu)
    left = turn.memory if turn.aside else replace(turn.memory, tonight=service)
    left = history.kept(memory, left, turn.reply.request)
    return replace(turn, memory=left, follow=following(memory.menu, left))


def let_hang(turn: Turn, heard: Heard) -> Turn:
    """The turn without a piece asked for again behind something else, where the talk may well go on without it."""
    of_it = heard.move is not None and heard.move.id in OF_THE_PIECE
    if not turn.aside or turn.memory.asked not in MAY_WAIT or of_it:
        return turn
    return replace(turn, aside=False, memory=replace(turn.memory, asked=None))


def placed(turn: Turn, heard: Heard) -> Turn:
    """The turn with the place that was spoken of kept among those of the conversation."""
    memory = turn.memory
    known = memory.places or whereabouts.of_kitchen(memory.kitchen)
    places = whereabouts.noted(known, memory.request, norms(heard.doc))
    plan, last = memory.menu, memory.request
    if plan and last and heard.hearing.request.elevation_m is not None and last.elevation_m is not None:
        # whoever goes elsewhere takes the plan along
        plan = moved_to(plan, last)
    if places == memory.places and plan == memory.menu:
        return turn
    return replace(turn, memory=replace(memory, places=places, menu=plan))


def warned(heard: Heard, memory: Memory, hazard: Hazard) -> Turn:
    """The answer to an utterance in which danger was heard; the question is remembered, so that it can be put right."""
    hearing, question = put(heard, memory)
    question = refusing.of_its_food(heard, refusing.question_pressed(heard, memory) or question, hazard)
    request = replace(settle_in(question, memory.kitchen), depth=heard.depth or question.depth)
    if hazard.subject:
        request = replace(request, subject=hazard.subject)
    else:
        others = tuple(h.id for h in heard.listened.others if h.subject is None)
        # which reason is meant is not asked under a verdict
        unused = tuple(u for u in request.unused if u.kind != "explanation")
        pressed = heard.listened.pressed
        request = replace(request, danger=hazard.id, dangers_too=others, unused=unused, pressed=pressed)
    kept = memory if hearing.passing and question.dish is None else after(refusing.remembered(question, hazard), memory)
    return with_list(heard, Turn(work_out(request), replace(kept, asked=None)), memory)


def with_list(heard: Heard, turn: Turn, before: Memory) -> Turn:
    """A verdict on an utterance of a menu, with the list after it; each dish in that is cooked as is safe."""
    done = menu.after_verdict(heard, before)
    if done is None:
        return turn
    now = replace(turn.memory, menu=done.plan)
    if done.reply.missing:
        return replace(turn, memory=now)
    return Turn(replace(turn.reply, word=partial(_one_after_the_other, turn.reply, done.reply)), now)


def _one_after_the_other(first: WorkedOut, second: WorkedOut) -> Answer:
    return followed_by(first.answer, first.answer, second.answer)


def told_instead(heard: Heard, memory: Memory) -> Turn:
    """What to do in the place of what was refused, where that is asked."""
    question = refusing.question_pressed(heard, memory) or put(heard, memory)[1]
    taken = heard.listened.pressing
    request = replace(settle_in(question, memory.kitchen), depth=heard.depth or question.depth)
    if taken is None:
        return Turn(work_out(request), memory)
    request = replace(request, danger=taken.refusal.hazard, pressed=taken.how, unused=())
    left = refusing.remembered(question, hazard_of(taken.refusal.hazard))
    return Turn(work_out(request), replace(after(left, memory), asked=None))


def followed_by(answer: Answer, first: Answer, second: Answer) -> Answer:
    """The answer with the words of two, one after the other."""
    return replace(answer, text=f"{first.text}\n\n{second.text}", spoken=f"{first.spoken} {second.spoken}")


def untroubled(heard: Heard, memory: Memory) -> Turn:
    """Take an utterance without danger in it.

    What is no reply to a drill under way is answered, and the question of the drill put again.
    """
    turn = drilled(heard, memory)
    if turn:
        return turn
    turn = (
        of_a_menu(heard, memory)
        or of_a_picture(heard, memory)
        or of_a_recipe(heard, memory)
        or taken(heard, memory, allergy_talk.told, read_off, of_places)
        or talked(heard, memory)
        or taken(heard, memory, taken_away, dropped)
        or chosen(heard, memory)
    )
    if turn:
        return replace(turn, memory=replace(turn.memory, missed=0))
    turn = planned(heard, memory) or with_the_last(heard, memory, beside_a_recipe(heard, memory))
    turn = counted(heard, turn, memory)
    sitting = turn.memory.drill
    if sitting is None or sitting.over or turn.memory.asked:
        return turn
    return replace(turn, reply=replace(turn.reply, word=partial(_then_put, turn.reply, sitting, heard.text, memory)))


def with_the_last(heard: Heard, memory: Memory, turn: Turn) -> Turn:
    """The turn with a plan kept of two dishes, where one was asked about that is to go with the last."""
    plan = menu.beside(heard, memory, turn.reply.request)
    return turn if plan is None else replace(turn, memory=replace(turn.memory, menu=plan))


def of_a_picture(heard: Heard, memory: Memory) -> Turn | None:
    """Take what asks to be shown a picture of what is talked of."""
    done = pictures.shown(heard, memory)
    return Turn(done.reply, done.memory, deed=done.deed) if done else None


def of_a_recipe(heard: Heard, memory: Memory) -> Turn | None:
    """Take what is said of a recipe or of its batches."""
    told = of_recipes(heard, memory)
    return Turn(told.reply, told.memory, deed=told.deed) if told else None


def taken(heard: Heard, memory: Memory, *takers: Callable[[Heard, Memory], Made | None]) -> Turn | None:
    """The turn of the first that takes an utterance, each of which gives its reply and the memory after it."""
    done = next(filter(None, (take(heard, memory) for take in takers)), None)
    return Turn(*done) if done else None


def beside_a_recipe(heard: Heard, memory: Memory) -> Turn:
    """Take what is said of anything else; a baker's formula that is told or put right beside it is kept."""
    memory, note = beside(heard, memory)
    turn = aside(heard, memory) or moved(heard, memory) or answered_apart(heard, memory) or answered(heard, memory)
    return replace(turn, reply=with_note(turn.reply, note)) if note else turn


def _then_put(reply: WorkedOut, sitting: drill.Sitting, text: str, memory: Memory) -> Answer:
    return followed_by(reply.answer, reply.answer, said(text, drill.put(sitting), memory).answer)


def talked(heard: Heard, memory: Memory) -> Turn | None:
    """Take an utterance about the talk itself, or about timers amidst it; None for any other."""
    kind = talk.heckle(heard.text) or talk.acknowledged(heard.text, awaiting=memory.asked is not None)
    if kind and not heard.answers_drill:
        request = Request(text=heard.text, topic="smalltalk", small_talk=kind, units=memory.kitchen.units)
        return Turn(work_out(request), memory)
    done = timed(heard, memory)
    if done:
        return Turn(done.reply, done.memory, timers=done.timers)
    found = recalled(heard, memory)
    if found is None:
        return None
    reply, left = found
    return Turn(reply, left, aside=memory.asked is not None and left == memory)


def counted(heard: Heard, turn: Turn, memory: Memory) -> Turn:
    """The turn with how many in a row were not followed; at the second what can be asked is offered instead."""
    missed = memory.missed + 1 if misses.is_missed(turn.reply.request) and not heard.move else 0
    if missed < misses.MOST_MISSES:
        return replace(turn, memory=replace(turn.memory, missed=missed))
    return replace(turn, reply=misses.offer(turn.reply.request.text, memory), memory=replace(turn.memory, missed=0))


def drilled(heard: Heard, memory: Memory) -> Turn | None:
    """Begin a drill, or take a reply to its question; None for an utterance that is neither."""
    wanted, last = heard.drill, memory.drill
    if wanted:
        seed = wanted.seed or (last.seed + 1 if last else 1)
        name = wanted.name or (last.name if last else "")
        sitting, told = drill.start(seed, wanted.themes, memory.kitchen.units, name)
    elif last and heard.answers_drill:
        sitting, told = drill.reply(last, heard.text)
    else:
        return None
    return Turn(said(heard.text, told, memory), replace(memory, asked=None, drill=sitting))


def planned(heard: Heard, memory: Memory) -> Turn | None:
    """Begin a menu, change the plan of the service, or tell it; None for an utterance that does nothing of it."""
    return planned_so(heard, memory, menu.talked_of(heard, memory))


def of_a_menu(heard: Heard, memory: Memory) -> Turn | None:
    """Take a menu that is told as it is written; None for anything else."""
    return planned_so(heard, memory, menu.told(heard, memory))


def planned_so(heard: Heard, memory: Memory, done: menu.Done | None) -> Turn | None:
    """The turn in which something was done about a menu."""
    if done is None:
        return None
    asked = next(iter(done.reply.missing), None)
    question = done.plan if done.is_question and done.plan else done.reply.request
    after_it = replace(after(question, memory), asked=asked, kitchen=learnt(heard.hearing.request, question, memory))
    return Turn(done.reply, replace(after_it, menu=memory.menu if asked and memory.menu else done.plan))


def moved(heard: Heard, memory: Memory) -> Turn | None:
    """Make a move; one that leaves all as it is, where a piece is awaited, is an aside."""
    done = made.make(heard.move, heard.text, memory) if heard.move else None
    if done is None:
        return None
    reply, left = done
    by_the_way = is_awaiting(heard, memory) and left == memory and not reply.missing
    return Turn(reply, left, aside=by_the_way)


def aside(heard: Heard, memory: Memory) -> Turn | None:
    """The reply to what is said by the way while a piece is awaited: why it is needed, thanks, a why of the cook's."""
    if not is_awaiting(heard, memory) or memory.asked is None:
        return None
    piece, hearing = moves.pieces()[memory.asked], heard.hearing
    if heard.move and heard.move.id in OF_THE_PIECE:
        why_asked = heard.move.id != "dont_know"
        told = (piece.why, "why") if why_asked else (piece.find_out, "help")
        return Turn(said(heard.text, told[0], memory, told[1]), memory, aside=True)
    why = hearing.request.topic == "why" and memory.asked != "choice" and not known(hearing.request, memory.asked)
    if heard.move or not (hearing.passing or why):
        return None
    question = hearing.request
    if question.elevation_m is None and memory.request:
        question = replace(question, **{slot: getattr(memory.request, slot) for slot in PLACE_SLOTS})
    return Turn(work_out(settle_in(question, memory.kitchen)), memory, aside=True)


def is_awaiting(heard: Heard, memory: Memory) -> bool:
    """Whether a piece is awaited, and the utterance may be about something else without letting go of it."""
    return memory.asked is not None and memory.request is not None and not heard.is_refused


def put(heard: Heard, memory: Memory) -> tuple[Hearing, Request]:
    """What an utterance says in its context, and the question that it puts."""
    hearing = heard.in_context(memory)
    return hearing, question_of(hearing, memory, back_to_recipe=heard.back_to_recipe)


def chosen(heard: Heard, memory: Memory) -> Turn | None:
    """Answer what was meant, where a reply tells which of two."""
    asked = memory.request
    topic = choice(heard.doc, asked.choices) if asked and memory.asked == "choice" else None
    if asked is None or topic is None:
        return None
    subject = listen(asked.text, memory.kitchen).hearing.subject_for(topic)
    meant = replace(asked, topic=topic, choices=(), subject=subject)
    question = merge(meant, replace(heard.hearing, elliptical=True))
    reply = work_out(settle_in(replace(question, text=asked.text), memory.kitchen))
    return Turn(reply, replace(after(question, memory), asked=next(iter(reply.missing), None)))


def answered_apart(heard: Heard, memory: Memory) -> Turn | None:
    """Answer each of the questions of an utterance that asks several."""
    found = several(heard, memory)
    if found is None:
        return None
    earlier = reduce(lambda left, question: after(question, left), found.others, memory).earlier
    return Turn(found.reply, replace(after(found.question, replace(memory, earlier=earlier)), asked=found.missing))


def answered(heard: Heard, memory: Memory) -> Turn:
    """Answer the question that an utterance puts, or ask for what is missing."""
    if heard.hearing.depth and memory.request and heard.hearing.passing:
        return Turn(*answer_again(heard.text, memory, depth=heard.depth or heard.hearing.depth))
    if lost_thread(heard, memory):
        return Turn(which_of_it(heard, memory), replace(memory, asked=None))
    if unfollowed(heard, memory):
        return Turn(said(heard.text, say("which-of-what"), memory), memory)
    hearing, question = put(heard, memory)
    recounted = tonight.recounted(heard, memory)
    if recounted:
        hearing, question = hearing.about(recounted.topic, choices=(), small_talk=None), recounted
    refused_before = refusing.goes_on(heard, question, memory)
    if not refused_before and said_again.adds_nothing(heard, question, memory):
        return Turn(said_again.asked_back(heard, memory), memory)
    if refused_before:
        elsewhere = refusing.of_the_place(hearing, question)
        if elsewhere is None:
            return warned(heard, memory, refused_before)
        hearing, question = replace(hearing, elliptical=False), elsewhere
    if question.topic == "set_kitchen" and memory.kitchen.elevation_m is not None:
        question = replace(question, **{slot: getattr(hearing.request, slot) for slot in PLACE_SLOTS})
    if memory.request and memory.request.depth == BRIEFEST and hearing.depth is None:
        question = replace(question, depth=BRIEFEST)
    question = wanted.given_hard(question, memory.request) if GIVEN_HARD.intersection(heard.warned_beside) else question
    request = replace(settle_in(question, memory.kitchen), dangers_too=heard.warned_beside)
    if memory.scene.danger and leaning.is_only_units(hearing):
        # what was refused stays refused in any units
        request = replace(request, **refused(memory.scene.danger))
    request, told = of_details(request, heard)
    reply = work_out(replace(request, depth=heard.depth) if heard.depth else request)
    reply = with_note(reply, told) if told else reply
    reply, question = tonight.filled(reply, question, memory)
    freed = without_the_awaited(heard, reply, memory)
    if freed:
        return answered(hear(heard.text, freed, heard.depth), freed)
    reply = said_again.noting_the_same(reply, question, memory)
    kept = memory if hearing.passing else after(question, memory)
    asked = reply.missing[0] if reply.missing else None
    kitchen = learnt(hearing.request, question, memory)
    run = (None if asked else begun(question, memory)) or memory.run
    return Turn(reply, replace(kept, asked=asked, kitchen=kitchen, run=run))


def without_the_awaited(heard: Heard, reply: WorkedOut, memory: Memory) -> Memory | None:
    """The memory as it was before a piece was asked for, where a question about another place is put in its stead.

    The piece is not asked for twice: the talk goes on with the last question that lacked nothing.
    """
    now, awaited = heard.hearing.request, memory.asked
    still = awaited is not None and awaited in reply.missing
    if not still or awaited == "elevation" or now.elevation_m is None or not kitchen_told.asks(heard.doc):
        return None
    before = next((step for step in reversed(memory.past[:-1]) if step.danger is None), None)
    return replace(memory, asked=None, request=before.request, before=None) if before else None


def of_details(request: Request, heard: Heard) -> tuple[Request, Words]:
    """A question without the details that an utterance tells and nothing else, and what is said of them first."""
    details = [unused for unused in request.unused if unused.kind == "detail"]
    now = heard.hearing.request
    else_said = any(
        getattr(now, slot) not in (None, ()) for slot in (*leaning.PLACES, "dish", "method", "temperature_c")
    )
    if not details or not heard.hearing.elliptical or else_said:
        return request, ""
    others = tuple(unused for unused in request.unused if unused not in details)
    return replace(request, unused=others), together(*(unused.reason for unused in details))


def lost_thread(heard: Heard, memory: Memory) -> bool:
    """Whether something of the kitchen is said that nobody can tell what it asks, amidst the talk about a dish."""
    now, last = heard.hearing.request, memory.request
    if last is None or not last.dish or heard.hearing.elliptical or now.small_talk or memory.asked:
        return False
    followed = now.topic not in (OUTSIDE, "smalltalk") or now.subject is not None
    of_kitchen = not KITCHEN_SIGNS.isdisjoint(heard.doc._.signs)
    goes_on = leaning.opens_on(norms(heard.doc))
    return not followed and (of_kitchen or goes_on or (now.topic == "smalltalk" and len(heard.doc) <= SHORTEST_ASK))


def unfollowed(heard: Heard, memory: Memory) -> bool:
    """Whether a first turn names a dish and an elevation, and nobody can tell what it asks: it is no other trade's."""
    first = memory.request is None and memory.asked is None and not heard.hearing.elliptical
    of_cooking = wondering.is_of_a_dish(heard.doc) and wondering.is_of_height(heard.doc)
    of_trade = not OTHER_TRADE.isdisjoint(norms(heard.doc))
    return first and heard.hearing.request.topic == OUTSIDE and of_cooking and not of_trade


def which_of_it(heard: Heard, memory: Memory) -> WorkedOut:
    """The question what is meant of the dish that is talked of."""
    last = settle_in(memory.request or Request(), memory.kitchen)
    memory = replace(memory, kitchen=replace(memory.kitchen, units=last.units))
    dish = last.dish or ""
    if last.elevation_m is None:
        return said(heard.text, say("which-of-it", dish=dish), memory)
    return said(heard.text, say("which-of-it-there", dish=dish, place=elevation(last.elevation_m)), memory)


def learnt(now: Request, question: Request, memory: Memory) -> Kitchen:
    """The kitchen after what was told of it, or given where its elevation was asked for; a question changes nothing."""
    if not now.sets_kitchen:
        return memory.kitchen
    if question.topic == "set_kitchen":
        return learn_kitchen(memory.kitchen, question)
    if memory.asked == "elevation" and known(now, "elevation"):
        return learn_kitchen(memory.kitchen, now)
    return memory.kitchen


def timers_asked(turn: Turn) -> tuple[Request, ...]:
    """What an utterance asked to be done about timers, once all that takes is known; said again, how long is left."""
    asked, request = turn.reply.request, turn.memory.request
    if turn.timers:
        return turn.timers
    if request is None or turn.reply.missing or not asked.topic == request.topic == "timer":
        return ()
    return (request if asked.text == request.text else replace(request, timer_action="left", timer_name=""),)
