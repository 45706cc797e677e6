"""What is to be done with the menu that is talked of: ordered by the pack, or worked back from service."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Any

from assistant.dialogue.heard import Heard
from assistant.dialogue.memory import Memory
from assistant.dialogue.menu_written import ORDER, chat, wanted
from assistant.dialogue.moves import words as words_of
from assistant.dialogue.plans import PLAN, as_dish, of_place, with_dishes
from assistant.dialogue.tonight import covers_said
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
    if not what or len(heard.doc) > LONGEST or heard.hearing.request.recipe or _names_a_dish(heard):
        return None
    plan = talked_of(memory, last_alone=_is_of_one(heard.text))
    if plan is None:
        return None
    now = heard.hearing.request
    covers = now.portions or covers_said(heard.doc, plan.portions)
    placed: dict[str, Any] = {slot: getattr(now, slot) for slot in PLACE_SLOTS} if now.elevation_m is not None else {}
    units = heard.hearing.units or plan.units
    return Wanted(replace(plan, portions=covers or plan.portions, units=units, **placed), what)


def _names_a_dish(heard: Heard) -> bool:
    """Whether a dish is named, be it one of a menu or a stock."""
    return any(found.kind == "dish" for found in heard.doc._.found)


def lacks_menu(heard: Heard, memory: Memory) -> bool:
    """Whether a menu is to be ordered or worked back, and no dish was named yet."""
    asks = bool(wanted(heard.text)) and len(heard.doc) <= LONGEST and not _names_a_dish(heard)
    return asks and memory.request is None and memory.menu is None and not heard.hearing.request.recipe


def _is_of_one(text: str) -> bool:
    """Whether it is spoken of as one thing, and not of all that was named: order that, not order it all."""
    said = frozenset(words_of(text).split())
    return not said.isdisjoint(chat("one")) and said.isdisjoint(chat("many"))


def talked_of(memory: Memory, *, last_alone: bool = False) -> Request | None:
    """The menu that is talked of: the plan, the dishes of the last question, or else those that were asked about.

    last_alone: whether of the latter only the last one is meant
    """
    last, plan = memory.request, memory.menu
    if plan is not None and not _is_newer(last, plan):
        return plan
    if last is None:
        return None
    every = tuple(_named(name) for name in last.dishes) if len(last.dishes) > 1 else ()
    every = every or tuple(map(as_dish, memory.earlier))[-1 if last_alone else 0 :]
    if not every:
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
