"""The plan of one service as the memory keeps it, and its dishes as questions that were asked.

A plan is the question of a schedule: of one dish, or with the question of each dish in `menu`.
"""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from spacy.tokens import Doc

from assistant.planning.schedule import service_moment
from assistant.reading.days import TODAY, TOMORROW, WEEK
from assistant.understanding import menu_parts, menu_said
from rules.model import PLACE_SLOTS, Request, Unused

PLAN = "schedule"
ORDER = "order"
TIME = "time"
# what is done about the timers of a plan: set, and moved with it
FIRE, FOLLOW = "fire", "follow"
DAY_MIN, EVENING_MIN = 24 * 60, 18 * 60
MOST_EARLIER = 12


def kept(question: Request, plan: Request | None) -> Request | None:
    """The plan after a question: a new one, where it is one; one line of the plan is no other."""
    if question.topic == ORDER and question.menu and plan is not None:
        return replace(plan, portions=question.portions or plan.portions)
    if question.topic != PLAN or not (question.dish or question.menu):
        return plan
    of_it = plan is not None and bool(plan.menu) and not question.menu and question.service_time == plan.service_time
    return plan if of_it else question


def with_dishes_of(earlier: tuple[Request, ...], plan: Request) -> tuple[Request, ...]:
    """The last questions about each dish, with one of how long each dish of a menu takes."""
    held: dict[str, Any] = {slot: getattr(plan, slot) for slot in (*PLACE_SLOTS, "units", "depth")}
    now = tuple(replace(one, topic=TIME, portions=plan.portions, **held) for one in plan.menu if one.dish)
    names = {one.dish for one in now}
    return (*(one for one in earlier if one.dish not in names), *now)[-MOST_EARLIER:]


def dishes_of(plan: Request) -> tuple[Request, ...]:
    """The dishes of a plan."""
    return plan.menu or (as_dish(plan),)


def as_dish(question: Request) -> Request:
    """A question about a dish as one of a menu."""
    slots = {slot: getattr(question, slot) for slot in (*menu_parts.OF_A_DISH, *menu_parts.STATES)}
    base = Request(
        topic=PLAN,
        text=question.dish or question.timer_name,
        timer_name=question.timer_name,
        dish=question.dish,
        dish_class=question.dish_class,
    )
    return replace(base, **slots)


def with_dishes(plan: Request, every: tuple[Request, ...]) -> Request:
    """The plan with other dishes; of one dish it is a question about that alone."""
    slots = (*menu_parts.OF_A_DISH, *menu_parts.STATES)
    if len(every) == 1:
        own: dict[str, Any] = {slot: getattr(every[0], slot) for slot in slots}
        return replace(plan, menu=(), dishes=(), dish=every[0].dish, dish_class=every[0].dish_class, **own)
    empty: dict[str, Any] = {slot: getattr(Request(), slot) for slot in slots}
    focus = plan if plan.dish in {one.dish for one in every} else every[0]
    names = tuple(one.dish for one in every if one.dish)
    return replace(plan, menu=every, dishes=names, dish=focus.dish, dish_class=focus.dish_class, subject=None, **empty)


def of_place(question: Request) -> tuple[Unused, ...]:
    """What is to be said of the place of a question."""
    return tuple(u for u in question.unused if u.kind in ("elevation", "elevations"))


def minute_of(plan: Request) -> int:
    """The minute of the day of its service."""
    moment = service_moment(plan.service_time or "", "")
    return moment.hour * 60 + moment.minute


def moved_to(plan: Request, minute: int, by: int) -> Request:
    """The plan served at another minute of the day, so much later or earlier [min]; over midnight the day moves too."""
    day = plan.service_day
    days = (minute_of(plan) + by) // DAY_MIN
    if day in WEEK:
        day = WEEK[(WEEK.index(day) + days) % len(WEEK)]
    elif days:
        day = {TODAY: TOMORROW}.get(day or TODAY, day) if days > 0 else day
    return replace(plan, service_time=as_clock(minute), service_day=day)


def as_service(doc: Doc) -> str | None:
    """The time of service that an utterance tells, a bare hour on the half of the day that is nearer to an evening."""
    minute = menu_said.told_at(doc, EVENING_MIN)
    return None if minute is None else as_clock(minute)


def as_clock(minute: float) -> str:
    """A minute of the day as a time of service.

    >>> as_clock(18 * 60 + 15)
    '18:15'
    """
    hours, minutes = divmod(int(minute) % DAY_MIN, 60)
    return f"{hours:02d}:{minutes:02d}"
