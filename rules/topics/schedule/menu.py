"""Several dishes that land together: when each is fired, the earliest first."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass, replace
from typing import Any

from rules.book import Case, Part, rule
from rules.foods.dishes import dishes, traits_of
from rules.model import PLACE_SLOTS, Caution, Figure, Request
from rules.said import Words, duration, duration_span, listed, sentences, yes
from rules.topics.schedule.clashes import Use, clashes
from rules.topics.schedule.stages import Stage, cooking_answer, heated_by, method_of, stages

say = sentences("topics/schedule")

BRIEF = 1
# stages that go on by themselves long before the fire
COLD = ("soak", "rise")
# as near to a whole guest as a share can be told
HAIR = 1e-9
# traits of food that those who eat no meat do not eat
OF_MEAT = frozenset(("meat", "poultry", "fish", "shellfish"))
STEWS, PLANTS = (
    ("mixed_stew",),
    frozenset(("vegetable", "vegetables", "mushroom", "lentil", "bean", "beans", "chickpea")),
)
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
        cautions=(*untimed(every), *(Caution("warn", told) for told in clashes(uses(every), case.request.ovens or 1))),
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


def eaters(one: Request, menu: Request) -> int | None:
    """How many of the covers eat a dish: as many as are said to take it, else all of them.

    Those who eat no meat do not eat what is made of it.

    >>> ninety = Request(portions=90)
    >>> [eaters(one, ninety) for one in (Request(portions=35), Request(share=0.25), Request())]
    [35, 23, 90]
    """
    if one.portions is not None or menu.portions is None:
        return one.portions
    if one.share is not None:
        return math.ceil(menu.portions * one.share - HAIR)
    if menu.meatless is None or not is_of_meat(one):
        return menu.portions
    return max(1, menu.portions - menu.meatless)


def is_of_meat(one: Request) -> bool:
    """Whether a dish is of meat, poultry or fish; a stew is, unless its name says what else it is of."""
    if one.dish_class in STEWS:
        return PLANTS.isdisjoint((one.dish or "").split())
    return not OF_MEAT.isdisjoint(traits_of(one.dish, one.dish_class))


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
