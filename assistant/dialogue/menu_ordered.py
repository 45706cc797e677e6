"""What is to be done with the menu that is talked of: ordered by the pack, or worked back from service."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Any

from assistant.dialogue.heard import Heard
from assistant.dialogue.memory import Memory
from assistant.dialogue.menu_written import ORDER, SCHEDULE, wanted
from assistant.dialogue.plans import PLAN, as_dish, dishes_of, of_place, with_dishes
from assistant.dialogue.tonight import covers_said
from assistant.understanding import menu_parts
from assistant.understanding.conversation import settle_in
from assistant.worked_out import WorkedOut, work_out
from rules.foods.dishes import dishes
from rules.model import PLACE_SLOTS, Request

LONGEST = 24


@dataclass(frozen=True, slots=True)
class Wanted:
    """A plan, and whether it is to be ordered or told in its times."""

    plan: Request
    what: str


def asked(heard: Heard, memory: Memory) -> Wanted | None:
    """The plan that is to be ordered or worked back, where that is asked of it and no dish is named; None elsewhere."""
    what = wanted(heard.text)
    if not what or len(heard.doc) > LONGEST or heard.hearing.request.recipe or menu_parts.mentions(heard.doc):
        return None
    plan = talked_of(memory, all_of_it=what == SCHEDULE)
    if plan is None:
        return None
    now = heard.hearing.request
    covers = now.portions or covers_said(heard.doc, plan.portions)
    placed: dict[str, Any] = {slot: getattr(now, slot) for slot in PLACE_SLOTS} if now.elevation_m is not None else {}
    return Wanted(replace(plan, portions=covers or plan.portions, **placed), what)


def talked_of(memory: Memory, *, all_of_it: bool = False) -> Request | None:
    """The menu that is talked of: the plan, the dishes of the last question, or else those that were asked about.

    all_of_it: whether one dish is enough
    """
    last, plan = memory.request, memory.menu
    least = 1 if all_of_it else 2
    if plan is not None and len(dishes_of(plan)) >= least and not _is_newer(last, plan):
        return plan
    if last is None:
        return None
    every = tuple(_named(name) for name in last.dishes) if len(last.dishes) > 1 else ()
    every = every or tuple(map(as_dish, memory.earlier))
    if len(every) < least:
        return None
    held: dict[str, Any] = {slot: getattr(last, slot) for slot in PLACE_SLOTS}
    base = Request(topic=PLAN, text=last.text, units=last.units, unused=of_place(last), **held)
    covers = last.portions or memory.tonight.covers
    return with_dishes(
        replace(
            base,
            portions=covers,
            service_time=memory.tonight.service_time,
            service_day=memory.tonight.service_day,
            equipment=last.equipment,
        ),
        every,
    )


def _is_newer(last: Request | None, plan: Request) -> bool:
    """Whether the last question is about several dishes of its own."""
    return last is not None and len(last.dishes) > 1 and not last.menu and last.dishes != plan.dishes


def _named(name: str) -> Request:
    return Request(topic=PLAN, text=name, dish=name, dish_class=dishes()[name].dish_class)


def ordered(plan: Request, heard: Heard, memory: Memory) -> WorkedOut:
    """The order of a plan; of one dish it is the question about that."""
    request = replace(
        plan,
        topic=ORDER,
        text=heard.text,
        dishes=() if plan.menu else plan.dishes,
        service_time=None,
        service_day=None,
        start_time=None,
        method=None,
        time_min=None,
        depth=heard.depth or heard.hearing.depth or plan.depth,
    )
    return work_out(settle_in(replace(request, dangers_too=heard.warned_beside), memory.kitchen))
