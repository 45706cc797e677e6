"""Timers amidst the talk: whose they are and how long they run where that is not said, put right, and stopped.

A timer is for the dish that is named or was talked of last; its length is that of the last answer about it.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import cache
from typing import Any

from assistant.dialogue import history, made, talk
from assistant.dialogue.heard import Heard
from assistant.dialogue.memory import Memory, Step
from assistant.dialogue.menu_asked import is_focus
from assistant.dialogue.moves import bare
from assistant.dialogue.moves import words as words_of
from assistant.dialogue.plans import FIRE, FOLLOW, dishes_of
from assistant.dialogue.thread import AFTER, ANOTHER, after
from assistant.reading.tokens import norms
from assistant.replies.sentences import worded
from assistant.understanding import timer_words
from assistant.understanding.conversation import merge, settle_in
from assistant.understanding.cue_words import cues
from assistant.understanding.cue_words import said as said_among
from assistant.understanding.request import TIMER, Hearing
from assistant.understanding.utterance import listen
from assistant.worked_out import WorkedOut, work_out
from rules import tables
from rules.foods.dishes import dishes
from rules.model import PLACE_SLOTS, Answer, Request
from rules.said import sentences
from rules.topics.schedule.menu import firing_order, name_of, of_menu

say = sentences("dialogue/talk")

SET, CHANGE, MOVE, EXTEND, STOP, LEFT = "set", "change", "move", "extend", "stop", "left"
EACH, STOP_ALL = "each", "stop_all"
PUT, UNDO = (SET, EACH, CHANGE, MOVE), "undo"
FEW, LONGEST, MOST_BARE_MIN = 8, 120, 600
# a refusal that holds for the dish itself, however the timer is asked for
KEPT_REFUSED = ("preserve",)
AGO = cues("timers", "ago")
# what a timer takes from no question before it
OWN = ("dish", "dish_class", "method", "time_min", "time_high_min")


@dataclass(frozen=True, slots=True)
class Timed:
    """What comes of an utterance about timers: the reply without a store, the memory after it, and what to do."""

    reply: WorkedOut
    memory: Memory
    timers: tuple[Request, ...] = ()


@dataclass(frozen=True, slots=True)
class Length:
    """How long a timer runs [min]. high_min: the far end of the range whose early end it is; None where it is all"""

    time_min: float
    high_min: float | None = None


def timed(heard: Heard, memory: Memory) -> Timed | None:
    """What is to be done about timers where the talk tells what for, or how long; None for any other utterance."""
    said = bare(words_of(heard.doc.text))
    now = heard.hearing.request
    if now.recipe or now.service_time or now.start_time or len(said) > LONGEST or not said:
        return None
    last = memory.request
    behind = last is not None and last.topic == TIMER
    if memory.asked and not (behind and memory.asked == "time"):
        return None
    if memory.asked:
        return _filled(heard, memory)
    running = behind or any(step.request.topic == TIMER for step in memory.past)
    if running and (done := _of_those_running(heard, memory, said, behind=behind)):
        return done
    if not _says(said, "wanted") or timer_words.action(heard.doc.text) not in (None, SET):
        return None
    of_plan = _says(said, "every") or (_says(said, "of_plan") and not _dish_words(heard))
    if of_plan and not _minutes(heard) and (done := _for_the_plan(heard, memory)):
        return done
    if _says(said, "every") and not _minutes(heard):
        return _for_every(heard, memory)
    return _set(heard, memory)


def _filled(heard: Heard, memory: Memory) -> Timed | None:
    """A bare figure in reply to how long; what is said in minutes is understood without it."""
    last, minutes = memory.request, _minutes(heard)
    if last is None or minutes is None or minutes != heard.hearing.plain or len(norms(heard.doc)) > FEW:
        return None
    step = Step(request=last)
    return _done(heard, memory, last.timer_action or SET, last.timer_name, Length(minutes), step)


def _of_those_running(heard: Heard, memory: Memory, said: str, *, behind: bool) -> Timed | None:
    """A timer that was set and is now asked after, stopped, made longer or put right."""
    last, few = memory.request, len(said.split()) <= FEW
    named = _named(heard, memory)
    if behind and last and last.timer_action in (None, *PUT) and talk.recall(heard.doc.text) == UNDO:
        return _done(heard, memory, STOP, _for_whom(last))
    if _says(said, "stop_all"):
        return _done(heard, memory, STOP_ALL, None)
    if _says(said, "stop") or (behind and last and last.timer_action == STOP and named and few):
        return _done(heard, memory, STOP, named)
    if _says(said, "left") and few:
        return _done(heard, memory, LEFT, named)
    if _says(said, "more") and few and _minutes(heard):
        return _done(heard, memory, EXTEND, named, Length(_minutes(heard) or 0.0))
    if not (behind and few) or last is None or last.timer_action not in (None, *PUT):
        return None
    if last.time_min is None or said_among(norms(heard.doc), (*AFTER, *ANOTHER)):
        return None
    if _minutes(heard) is None and named and _says(said, "other") and not heard.hearing.request.forms:
        return _moved(heard, memory, named)
    same = named is None or named == _for_whom(last)
    if same and _minutes(heard) and _says(said, "shorter") and heard.hearing.request.method is None:
        return _done(heard, memory, CHANGE, _for_whom(last), Length(_minutes(heard) or 0.0), Step(request=last))
    return None


def _moved(heard: Heard, memory: Memory, named: str) -> Timed | None:
    """The timer that was set, for another dish: with that one's time, or with the cook's own."""
    last = memory.request
    if last is None:
        return None
    own = listen(last.text, memory.kitchen).hearing.about(TIMER).request.time_min is not None
    step = _step(heard, memory)
    length = None if own or step is None else length_of(step, memory)
    return _done(heard, memory, MOVE, named, length or Length(last.time_min or 0.0), step)


def _set(heard: Heard, memory: Memory) -> Timed | None:
    """A timer for the dish that is meant, with the time that was answered for it; None where the time is said."""
    minutes, step, gone_min = _minutes(heard), _step(heard, memory), _gone_min(heard)
    if gone_min and step and not step.danger and (whole := length_of(step, memory)):
        return _done(heard, memory, SET, _named(heard, memory), _rest_of(whole, gone_min), step)
    if step and step.danger and step.request.topic not in KEPT_REFUSED and _dish_words(heard):
        # of another thing done with the dish
        step = None
    if minutes is not None and heard.hearing.request.topic == TIMER and heard.hearing.request.time_min:
        return None
    if step and step.danger and minutes is None:
        # what was refused is timed by nobody
        return Timed(history.put_again(step, memory.kitchen).asked_as(heard.text), memory)
    length = Length(minutes) if minutes else length_of(step, memory) if step else None
    return _done(heard, memory, SET, _named(heard, memory), length, step)


def _gone_min(heard: Heard) -> float | None:
    """How long it has been in already [min], where a timer is wanted for what is left; None where nothing tells."""
    ago = said_among(norms(heard.doc), AGO)
    said = next((m for m in heard.doc._.measures if m.kind == "time"), None)
    return said.low if ago and said else None


def _rest_of(whole: Length, gone_min: float) -> Length | None:
    """What is left of a time; None where it is over."""
    left_min = whole.time_min - gone_min
    high_min = whole.high_min - gone_min if whole.high_min else None
    return Length(left_min, high_min) if left_min > 0 else None


def _for_every(heard: Heard, memory: Memory) -> Timed | None:
    """A timer for each dish that was talked of and has a time."""
    steps = history.latest_each(history.of_dishes(memory))
    known = [(step, length) for step in steps if not step.danger and (length := length_of(step, memory))]
    if not known:
        return Timed(made.said(heard.text, say("no-times"), memory), memory)
    done = [_done(heard, memory, EACH, None, length, step) for step, length in known]
    replies = [one.reply for one in done]
    return Timed(
        WorkedOut(replies[-1].request, (), lambda: _in_a_row([reply.answer for reply in replies])),
        done[-1].memory,
        tuple(request for one in done for request in one.timers),
    )


def _for_the_plan(heard: Heard, memory: Memory) -> Timed | None:
    """A timer for the beginning of each dish of the plan; None where none is talked of, or it has no time yet."""
    plan = memory.menu
    if plan is None or plan.service_time is None or not is_focus(memory):
        return None
    about = heard.hearing.about(TIMER).request
    asked = tuple(replace(one, timer_action=FIRE) for one in _beginnings(plan, memory, _for_service(about, plan)))
    if not asked:
        return None
    return Timed(work_out(asked[-1]), after(asked[-1], memory), asked)


def following(before: Request | None, memory: Memory) -> Request | None:
    """What is to be done about the timers of a plan that a turn has changed; None where it has changed none.

    before: the plan before the turn. One of other dishes altogether is another plan, and leaves the timers alone.
    """
    plan = memory.menu
    if before is None or plan is None or plan == before or plan.service_time is None:
        return None
    was, now = _names(before), _names(plan)
    if was.isdisjoint(now):
        return None
    base = _for_service(Request(topic=TIMER), plan)
    off = tuple(replace(base, timer_name=name, left_min=None) for name in sorted(was - now))
    return replace(base, timer_action=FOLLOW, menu=(*_beginnings(plan, memory, base), *off))


def _names(plan: Request) -> frozenset[str]:
    return frozenset(worded(name_of(one), plan.units) for one in dishes_of(plan))


def _for_service(request: Request, plan: Request) -> Request:
    """A request about timers for the service of a plan."""
    placed: dict[str, Any] = {slot: getattr(plan, slot) for slot in PLACE_SLOTS}
    return replace(
        request, **placed, service_time=plan.service_time, service_day=plan.service_day, units=plan.units, method=None,
        subject=None, forms=(), choices=(), unused=(), small_talk=None,
    )  # fmt: skip


def _beginnings(plan: Request, memory: Memory, base: Request) -> tuple[Request, ...]:
    """A request for each beginning of each dish of a plan, the earliest first."""
    settled = settle_in(plan, memory.kitchen)
    names = {one.dish for one in dishes_of(plan)}
    return tuple(
        replace(
            base,
            dish=str(one.food) if one.food in names else None,
            timer_name=worded(one.food, plan.units),
            left_min=one.at_min,
        )
        for one in firing_order(of_menu(settled) if settled.menu else (settled,))
    )


def _in_a_row(answers: Sequence[Answer]) -> Answer:
    lines = list(dict.fromkeys(answer.text for answer in answers))
    figures = tuple(figure for answer in answers for figure in answer.figures)
    return replace(answers[-1], figures=figures, text="\n".join(lines), spoken=" ".join(a.spoken for a in answers))


def _done(
    heard: Heard, memory: Memory, action: str, named: str | None, length: Length | None = None, step: Step | None = None
) -> Timed:
    """What is to be done about a timer. named: what the cook calls it; step: the answer that it is for."""
    dish = step.request.dish if step else heard.hearing.request.dish if named else None
    question = replace(
        heard.hearing.about(TIMER).request,
        dish=dish,
        dish_class=dishes()[dish].dish_class if dish else None,
        method=None,
        subject=None,
        small_talk=None,
        forms=(),
        choices=(),
        unused=(),
        timer_action=action,
        timer_name=named or "",
        time_min=length.time_min if length else None,
        time_high_min=length.high_min if length else None,
    )
    ground = Hearing(question, elliptical=False, units=heard.hearing.units, depth=None)
    own = {slot: getattr(question, slot) for slot in OWN}
    question = replace(merge(memory.request, ground), **own)
    reply = work_out(settle_in(question, memory.kitchen))
    asked = next(iter(reply.missing), None)
    left = replace(after(question, memory), asked=asked)
    return Timed(reply, left, () if asked else (question,))


def length_of(step: Step, memory: Memory) -> Length | None:
    """How long a timer for an answer runs; None where the answer has no time, or is none.

    Where doneness is felt or tasted it is the early end of the range, when the first is tested.
    """
    if step.danger:
        return None
    answer = history.put_again(step, memory.kitchen).answer
    if answer.missing:
        return None
    figures = {figure.id: figure for figure in answer.figures if figure.unit == "min"}
    for id in _lengths("whole"):
        if id in figures and sum(other.endswith("_egg_time") for other in figures) <= 1:
            return Length(figures[id].value)
    for id in _lengths("early"):
        if id in figures:
            low, high = figures[id].low, figures[id].high
            return Length(low, high) if low and high and low < high else Length(figures[id].value)
    return None


def _step(heard: Heard, memory: Memory) -> Step | None:
    """The answer that a timer is for: about the dish that is named, else the last one about a dish."""
    steps = history.of_dishes(memory)
    dish = _dish_words(heard)
    if dish:
        return history.named(dish, heard.hearing.request.dish, steps)
    return steps[-1] if steps and not timer_words.name(heard.doc) else None


def _named(heard: Heard, memory: Memory) -> str | None:
    """What the cook calls the timer, by the words for the dish; None where nothing of the kind is said."""
    name = timer_words.name(heard.doc)
    steps = history.of_dishes(memory)
    known = bool(name) and history.named(name.split(), heard.hearing.request.dish, steps) is not None
    return name if name and (known or _dish_words(heard) or _says(words_of(heard.doc.text), "wanted")) else None


def _dish_words(heard: Heard) -> list[str]:
    """The words that name a dish in an utterance."""
    words = norms(heard.doc)
    return [word for f in heard.doc._.found if f.kind == "dish" for word in words[f.start : f.end]]


def _for_whom(question: Request) -> str | None:
    return question.timer_name or question.dish


def _minutes(heard: Heard) -> float | None:
    """The length that is said [min], a bare figure too: set me 13."""
    said = heard.hearing.about(TIMER).request.time_min
    plain = heard.hearing.plain
    # set one for that: one timer, and no minute
    figure = plain is not None and any(sign.isdigit() for sign in heard.doc.text)
    return said or (plain if plain and figure and plain <= MOST_BARE_MIN else None)


def _says(said: str, what: str) -> bool:
    return any(pattern.search(said) for pattern in _patterns(what))


@cache
def _patterns(what: str) -> tuple[re.Pattern[str], ...]:
    return tuple(map(re.compile, tables.read_toml(timer_words.WORDS)["amidst"][what]))


def _lengths(kind: str) -> Sequence[str]:
    ids: Sequence[str] = tables.read_toml(timer_words.WORDS)["lengths"][kind]
    return ids
