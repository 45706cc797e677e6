"""Several dishes for one service, over several turns: a menu is begun, gathered, asked for, changed.

Every change replaces one thing of the plan, and the list is told anew. A time of service, a day, a place and the covers
change only where they are said.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Any

from assistant.dialogue import menu_asked, menu_changed, menu_ordered, menu_written
from assistant.dialogue.heard import ALLERGY, Heard
from assistant.dialogue.memory import Memory
from assistant.dialogue.menu_changed import ASKING
from assistant.dialogue.plans import (
    PLAN,
    TIME,
    as_clock,
    as_dish,
    as_service,
    dishes_of,
    minute_of,
    of_place,
    with_dishes,
)
from assistant.reading.tokens import norms
from assistant.understanding import amounts, menu_parts, menu_said, serving
from assistant.understanding.conversation import settle_in
from assistant.understanding.cue_words import cues, said
from assistant.understanding.request import COMPARING, TIMER, asks_which_first
from assistant.worked_out import WorkedOut, work_out
from rules.model import PLACE_SLOTS, Request, Unused
from rules.said import Words, listed, number, sentences, together
from rules.topics.schedule.menu import name_of, of_menu

say = sentences("dialogue/menu")

BRIEF, LONGEST, EVENING_MIN = 1, 28, 18 * 60
GATHERS, WITH_THEM = cues("menu_turns", "gathers"), cues("menu_turns", "with_them")
# what is asked of several dishes that are to be served at a time, and is not when each goes on
OTHER_FORMS = frozenset((*ASKING, *COMPARING))
HOW_MANY = {"both": 2, "two": 2, "three": 3, "four": 4}


@dataclass(frozen=True, slots=True)
class Done:
    """What comes of an utterance about a plan. plan: as it is from now on; is_question: whether that is told"""

    reply: WorkedOut
    plan: Request | None
    is_question: bool = True


def talked_of(heard: Heard, memory: Memory) -> Done | None:
    """What comes of an utterance that begins a menu, changes the plan, or asks for it; None for any other."""
    request = heard.hearing.request
    if request.recipe or heard.answers_drill or heard.drill:
        return None
    wanted = menu_ordered.asked(heard, memory)
    if wanted:
        return done_with(wanted, heard, memory)
    if menu_ordered.lacks_menu(heard, memory):
        empty = Request(topic=PLAN, units=memory.kitchen.units)
        return Done(menu_asked.told_only(heard, memory, empty, say("no-menu")), memory.menu, is_question=False)
    begun = opened(heard, memory) or gathered(heard, memory)
    if begun:
        return Done(shown(begun, heard, memory, brief=False), begun)
    waits = memory.asked == "service_time" and memory.request is not None and memory.request.topic == PLAN
    plan = memory.request if waits else memory.menu
    if plan is None or (memory.asked and not waits) or len(heard.doc) > LONGEST or request.topic == TIMER:
        return None
    if not waits and _is_left(plan, memory.request):
        return None
    if waits and (at := timed(heard, memory, plan)):
        return at
    asked = menu_asked.answer(heard, memory, plan)
    if asked is not None:
        shared = menu_changed.one_oven(asked.plan) if asked.plan.ovens == 1 and not asked.notes else ()
        reply = asked.reply or shown(asked.plan, heard, memory, *asked.notes, *shared)
        return Done(reply, asked.plan, is_question=asked.reply is None)
    change = menu_changed.change(heard, memory, plan)
    if change is None:
        return None
    new, notes = change
    ordered = menu_asked.is_ordered(memory) and new.service_time == plan.service_time
    if ordered:
        return Done(menu_ordered.ordered(new, heard, memory), new, is_question=False)
    return Done(shown(new, heard, memory, *notes), new)


def told(heard: Heard, memory: Memory) -> Done | None:
    """What comes of a menu that is told as it is written: ordered or worked back, or what was read of it."""
    found = menu_written.written(heard, memory)
    if found is None:
        return None
    if found.wanted == menu_written.ORDER:
        return _ordered(found.plan, heard, memory)
    kept = replace(found.plan, unused=of_place(found.plan))
    if found.wanted or found.plan.service_time:
        return Done(shown(found.plan, heard, memory, brief=False), kept)
    return Done(_read(found.plan, heard, memory), kept)


def done_with(wanted: menu_ordered.Wanted, heard: Heard, memory: Memory) -> Done:
    """A menu that is talked of, ordered; or in its times, for the service that is told with it."""
    if wanted.what == menu_written.ORDER:
        return _ordered(wanted.plan, heard, memory)
    told = as_service(heard.doc)
    if told:
        day = heard.hearing.request.service_day or wanted.plan.service_day
        plan = replace(wanted.plan, service_time=told, service_day=day)
        return Done(shown(plan, heard, memory, brief=False), plan)
    moved, notes = menu_changed.service_changed(heard, replace(memory, request=wanted.plan), wanted.plan)
    return Done(shown(moved, heard, memory, *notes, brief=False), moved)


def _ordered(plan: Request, heard: Heard, memory: Memory) -> Done:
    return Done(menu_ordered.ordered(plan, heard, memory), replace(plan, unused=of_place(plan)), is_question=False)


def _read(plan: Request, heard: Heard, memory: Memory) -> WorkedOut:
    """What was read of a menu, and what can be done with it."""
    settled = settle_in(plan, memory.kitchen)
    lines = listed(
        (
            say(
                "read-line",
                food=name_of(one),
                told="count" if one.portions else "share" if one.share else "no",
                count=number(one.portions or (one.share or 0.0) * 100, 0),
            )
            for one in of_menu(settled)
        ),
        "semicolons",
    )
    notes = (unused.reason for unused in plan.unused)
    return menu_asked.told_only(heard, memory, plan, together(say("read", lines=lines), *notes))


def _is_left(plan: Request, last: Request | None) -> bool:
    """Whether another dish than the one that was planned is talked of since."""
    other = last is not None and last.dish not in (None, plan.dish) and last.topic != PLAN
    return other and not plan.menu


def timed(heard: Heard, memory: Memory, plan: Request) -> Done | None:
    """The plan for the time that was asked for; None where the reply gives none."""
    before_min = minute_of(memory.menu) if memory.menu and memory.menu.service_time else EVENING_MIN
    minute = menu_said.service_moved(heard.doc, before_min, in_focus=True)
    if minute is None or heard.move is not None:
        return None
    day = heard.hearing.request.service_day or plan.service_day
    new = replace(plan, service_time=as_clock(minute), service_day=day)
    return Done(shown(new, heard, memory, brief=False), new)


def after_verdict(heard: Heard, memory: Memory) -> Done | None:
    """What follows a verdict: the list of a menu that is begun, or how a roast that was read gets on."""
    plan = opened(heard, memory)
    if plan:
        return Done(shown(plan, heard, memory), plan)
    read = menu_asked.reading(heard, memory, memory.menu) if memory.menu and memory.menu.service_time else None
    return Done(read.reply, read.plan, is_question=False) if read and read.reply else None


def shown(plan: Request, heard: Heard, memory: Memory, *notes: Words, brief: bool = True) -> WorkedOut:
    """A plan worked out; a menu that is told anew is told in short. notes: what was changed"""
    depth = BRIEF if brief and plan.menu else plan.depth
    unused = (*plan.unused, *(Unused("menu", "", note) for note in notes))
    request = replace(plan, text=heard.text, unused=unused, depth=heard.depth or heard.hearing.depth or depth)
    beside = heard.warned_beside or ((ALLERGY,) if memory.scene.allergens else ())
    return work_out(settle_in(replace(request, dangers_too=beside), memory.kitchen))


def opened(heard: Heard, memory: Memory) -> Request | None:
    """The plan of an utterance that names several dishes for one service."""
    request, doc = heard.hearing.request, heard.doc
    if len(amounts.joined_dishes(doc)) < 2 or asks_which_first(doc, TIME) or (memory.menu and not doc._.clock):
        return None
    if request.topic != PLAN and (request.service_time is None or not OTHER_FORMS.isdisjoint(request.forms)):
        return None
    every = menu_parts.menu_of(doc, memory.kitchen, request.units)
    if len(every) < 2:
        return None
    count = menu_said.covers(doc, None, in_focus=False)
    where = request if placed(request) or memory.request is None else memory.request
    held: dict[str, Any] = {slot: getattr(where, slot) for slot in PLACE_SLOTS}
    plan = replace(
        Request(topic=PLAN, text=request.text, units=request.units, depth=request.depth),
        service_time=request.service_time or as_service(doc),
        service_day=request.service_day,
        start_time=request.start_time,
        portions=count.all or request.portions,
        meatless=count.meatless,
        ovens=request.ovens,
        equipment=request.equipment,
        lacking=request.lacking,
        unused=of_place(where),
        sets_kitchen=request.sets_kitchen,
        **held,
    )
    return with_dishes(plan, every)


def placed(request: Request) -> bool:
    """Whether a place was said."""
    return request.elevation_m is not None or request.pressure_pa is not None or bool(of_place(request))


def gathered(heard: Heard, memory: Memory) -> Request | None:
    """The plan of the dishes that were asked about before: put both on one timeline for 6:30."""
    words, request, last = norms(heard.doc), heard.hearing.request, memory.request
    if not said(words, GATHERS) or last is None or len(heard.doc) > LONGEST or request.topic == TIMER:
        return None
    every = before(memory, words)
    if len(every) < 2 or menu_parts.mentions(heard.doc):
        return None
    plan, where = memory.menu, request if placed(request) else last
    plain = serving.plain_service(heard.doc)
    hour = int(plain.low) if plain else menu_said.service_moved(heard.doc, EVENING_MIN, in_focus=True)
    service = as_clock(hour) if hour is not None else plan.service_time if plan else None
    held: dict[str, Any] = {slot: getattr(where, slot) for slot in PLACE_SLOTS}
    base = Request(topic=PLAN, text=heard.text, units=last.units, depth=last.depth)
    of_plan = plan or last
    return with_dishes(
        replace(
            base,
            service_time=request.service_time or service,
            service_day=request.service_day or of_plan.service_day,
            portions=of_plan.portions,
            meatless=of_plan.meatless,
            equipment=last.equipment,
            unused=of_place(where),
            **held,
        ),
        every,
    )


def beside(heard: Heard, memory: Memory, request: Request) -> Request | None:
    """The plan of a dish that is to go with the one before it: and mashed potatoes with that; None for any other.

    request: what was answered; its time of service is yet to be told
    """
    last = memory.request
    if last is None or memory.menu is not None or request.topic == PLAN:
        return None
    if last.dish is None or request.dish in (None, last.dish):
        return None
    if not said(norms(heard.doc), WITH_THEM):
        return None
    held: dict[str, Any] = {slot: getattr(request, slot) for slot in PLACE_SLOTS}
    plan = Request(topic=PLAN, text=heard.text, units=request.units, depth=request.depth, portions=last.portions)
    plan = replace(plan, equipment=last.equipment, unused=of_place(request), **held)
    return with_dishes(plan, (as_dish(last), as_dish(request)))


def before(memory: Memory, words: Sequence[str]) -> tuple[Request, ...]:
    """The dishes of the plan, and those that were asked about; of the latter as many as the words tell."""
    planned = dishes_of(memory.menu) if memory.menu else ()
    names = {one.dish for one in planned}
    others = tuple(as_dish(one) for one in memory.earlier if one.dish not in names)
    count = next((many for word, many in HOW_MANY.items() if word in words), len(planned) + len(others))
    return (*planned, *others)[-count:]
