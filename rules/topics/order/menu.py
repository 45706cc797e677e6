"""A menu of several dishes: a line for each."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from rules.amounts.eaters import eaters
from rules.amounts.portion import head, over, portion, serving
from rules.book import Case, Part, rule
from rules.foods.dishes import dishes
from rules.model import Figure, Request
from rules.said import Said, bulk, listed, number, sentences, yes
from rules.topics.order.words import bought, class_of, is_poured, plated, served

say = sentences("topics/order")


def is_menu(request: Request) -> bool:
    """Whether several dishes are asked about, each for all the guests."""
    several = bool(request.menu) or len(request.dishes) > 1
    return several and not needs(request) and request.quantity is None


def needs(request: Request) -> tuple[str, ...]:
    """For how many, unless every dish of the menu tells that itself."""
    told = request.menu and all(one.portions for one in request.menu)
    return () if told or request.portions else ("portions",)


@rule("order.menu", "common-practice")
def menu(case: Case) -> Part | None:
    """Of a menu with several dishes a line for each."""
    request = case.request
    if not is_menu(request):
        return None
    told = tuple(by_dish(request))
    lines = listed([line for line, _ in told], "semicolons")
    return Part(
        headline=say("menu", counted=yes(request.portions), portions=number(request.portions or 0, 0), lines=lines),
        figures=tuple(figure for _, figure in told),
        because="" if request.menu else say("menu-because"),
    )


def of_menu(request: Request) -> Iterator[Request]:
    """The order of each dish, for those who take it."""
    named = (Request(dish=name, dish_class=dishes()[name].dish_class) for name in request.dishes)
    for one in request.menu or named:
        if one.dish:
            yield replace(
                request, dish=one.dish, dish_class=one.dish_class, dishes=(), menu=(), portions=eaters(one, request),
                course=one.course or request.course, quantity=one.quantity, quantity_of=one.quantity_of,
            )  # fmt: skip


def on_course(request: Request) -> Iterator[Request]:
    """The order of each dish as it is served: beside a meat or a fish what can be a side is one."""
    every = tuple(of_menu(request))
    mains = any("side" not in ways_of(one) for one in every)
    for one in every:
        some = one.portions != request.portions
        yield replace(one, course=one.course or ("side" if mains and is_a_side(one, some=some) else None))


def ways_of(one: Request) -> dict[str, float]:
    """The ways in which a dish is served."""
    return serving(one.dish, class_of(one)).shares


def is_a_side(one: Request, some: bool = False) -> bool:
    """Whether a dish of which nothing is said is one beside the mains; what only some of the guests choose is a main.

    some: whether it is taken by some of them
    """
    return "side" in ways_of(one) and not (some and serving(one.dish, class_of(one)).usual == "main")


def by_dish(request: Request) -> Iterator[tuple[Said, Figure]]:
    """The line and the figure of each dish."""
    for one in on_course(request):
        guest, name = head(one), one.dish or ""
        raw_g = guest.raw_g * (one.portions or 1) * over(guest.way)
        cooked_g = raw_g * portion(name, class_of(one)).yields
        amount = plated(one, cooked_g) if is_poured(one) else bulk(raw_g)
        label = say("buy-label", bought=bought(one))
        line = say(
            "menu-line",
            amount=amount,
            bought=bought(one),
            served=served(guest.way),
            some=yes(one.portions != request.portions),
            guests=number(one.portions or 1, 0),
        )
        yield line, Figure(f"buy_{name.replace(' ', '_')}", label, raw_g / 1000, "kg")
