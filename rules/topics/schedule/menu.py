"""Several dishes that land together: when each is fired, the earliest first."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from typing import Any

from rules.amounts.eaters import eaters
from rules.amounts.oven_room import SHELVES, filled
from rules.book import Case, Part, rule
from rules.foods.dishes import dishes
from rules.model import PLACE_SLOTS, Caution, Figure, Request
from rules.said import Words, duration, duration_span, listed, number, sentences, yes
from rules.topics.schedule.clashes import SHARED as SHARES
from rules.topics.schedule.clashes import Use, clashes
from rules.topics.schedule.stages import Stage, cooking_answer, heated_by, method_of, stages

say = sentences("topics/schedule")

BRIEF, OVEN = 1, "oven"
# stages that go on by themselves long before the fire
COLD = ("soak", "rise")
# what the dishes of a menu have in common
SHARED = (*PLACE_SLOTS, "service_time", "service_day", "start_time", "units", "equipment", "lacking", "ovens")


@dataclass(frozen=True, slots=True)
class Firing:
    """A dish to be begun: at_min before service; step: what to do with it"""

    food: Words
    at_min: float
    step: Words


def is_menu(request: Request) -> bool:
    """Whether several dishes are to land together."""
    return len(request.menu) > 1 or len(request.dishes) > 1


@rule("schedule.menu", "common-practice")
def menu(case: Case) -> Part | None:
    """A line for each dish, the earliest first: when it is fired, and before that soaked or mixed."""
    if not is_menu(case.request):
        return None
    every = of_menu(case.request)
    order = firing_order(every)
    return Part(
        headline=say(
            "menu",
            lines=listed((say("menu-line", food=f.food, time=duration(f.at_min)) for f in order), "semicolons"),
            place=case.place,
        ),
        figures=tuple(Figure(f"at_{n}", f.food, f.at_min, "min") for n, f in enumerate(order, 1)),
        steps=tuple(say("step", when=say("before-service", time=duration(f.at_min)), step=f.step) for f in order),
        because=say("menu-because"),
        cautions=(
            *untimed(every),
            *(Caution("warn", told) for told in clashes(uses(every), case.request.ovens or 1)),
            *(Caution("warn", told) for told in by_loads(case.request)),
        ),
    )


@rule("schedule.menu_cautions", "common-practice")
def menu_cautions(case: Case) -> Part | None:
    """What the cooking of each dish warns of, by its name; in a list told anew only of the dish that is changed."""
    if not is_menu(case.request):
        return None
    short = case.request.depth == BRIEF and bool(case.request.menu)
    return Part(
        cautions=tuple(
            replace(caution, text=say("of-caution", food=name_of(one), caution=caution.text))
            for one in of_menu(case.request)
            if not one.precooked and (one.dish == case.request.dish or not short)
            for caution in cooking_answer(one, method_of(one)).cautions
            if caution.level != "note"
        )
    )


def of_menu(request: Request) -> tuple[Request, ...]:
    """The question of each dish, in the place and for the service and the covers of the menu."""
    if not request.menu:
        return tuple(of_dish(request, name) for name in request.dishes)
    shared: dict[str, Any] = {slot: getattr(request, slot) for slot in SHARED}
    return tuple(
        replace(one, topic="schedule", subject=None, portions=eaters(one, request), **shared) for one in request.menu
    )


def of_dish(request: Request, name: str) -> Request:
    """The request for one dish of the menu; a method that was said holds for the dishes that are cooked so."""
    one = dishes()[name]
    method = request.method if request.method in one.methods else None
    return replace(request, dish=name, dish_class=one.dish_class, method=method, dishes=(), time_min=None)


def name_of(request: Request) -> Words:
    """What to call a dish; what comes cooked is told by that."""
    name = request.dish or request.timer_name or say("a-dish")
    return say("precooked", food=name) if request.precooked else name


def firing_order(every: tuple[Request, ...]) -> tuple[Firing, ...]:
    """Every beginning of every dish, the earliest first."""
    found = (firing for one in every for firing in firings(one))
    return tuple(sorted(found, key=lambda firing: -firing.at_min))


def starts_of(work: tuple[Stage, ...]) -> list[float]:
    """How long before service each stage begins [min]."""
    return [sum(stage.plan_min for stage in work[i:]) for i in range(len(work))]


def firings(request: Request) -> Iterator[Firing]:
    """When a dish is soaked or mixed, and when it is fired."""
    work, food = stages(request), name_of(request)
    before = starts_of(work)
    cold = [(stage, at) for stage, at in zip(work, before, strict=True) if stage.id in COLD]
    hot = [(stage, at) for stage, at in zip(work, before, strict=True) if stage.id not in COLD]
    for stage, at in cold:
        yield Firing(food, at, say("of-dish", food=food, step=stage.step))
    if hot:
        yield Firing(food, hot[0][1], fire(food, hot[0][0], work))


def fire(food: Words, first: Stage, work: tuple[Stage, ...]) -> Words:
    """What is done first with a dish, how long it cooks, and how long it is kept hot after that."""
    cook = next((stage for stage in work if stage.id == "cook"), first)
    ranges = cook.low_min < cook.high_min
    kept = next((stage.plan_min for stage in work if stage.id == "slack"), 0.0)
    return say(
        "fire",
        food=food,
        step="" if first is cook else first.step,
        time=duration(cook.middle_min),
        ranges=yes(ranges),
        span=duration_span(cook.low_min, cook.high_min),
        kept=yes(kept),
        hold=duration(kept),
    )


def by_loads(request: Request) -> Iterator[Words]:
    """What is said of each dish that the ovens do not take at once."""
    from rules.topics.order.menu import on_course
    from rules.topics.order.taken import raw_g

    planned = {one.dish: one for one in of_menu(request)}
    ovens = request.ovens or 1
    for one in on_course(request) if request.portions else ():
        asked = planned.get(one.dish)
        if asked is None or SHARES.get(method_of(asked) or "", ("", None))[0] != OVEN or asked.precooked:
            continue
        room = filled(raw_g(one), one.dish, one.dish_class or "general", SHELVES * ovens)
        cook = next((stage.plan_min for stage in stages(asked) if stage.id == "cook"), None)
        if room.loads > 1 and cook:
            yield say(
                "oven-loads",
                food=name_of(asked),
                shelves=number(room.shelves, 0),
                room=number(SHELVES, 0),
                ovens=ovens,
                loads=number(room.loads, 0),
                sooner=duration(cook * (room.loads - 1)),
            )


def untimed(every: tuple[Request, ...]) -> Iterator[Caution]:
    """The dishes whose time nobody knows."""
    for one in every:
        if not stages(one):
            yield Caution("warn", say("no-time", food=name_of(one)))


def uses(every: tuple[Request, ...]) -> Iterator[Use]:
    """What each dish needs of the equipment, and from when to when before service [min]."""
    for one in every:
        work = stages(one)
        for stage, at in zip(work, starts_of(work), strict=True):
            if stage.id == "cook":
                method = heated_by(one) if one.precooked else method_of(one)
                yield Use(name_of(one), one, method or "", at, at - stage.plan_min)
