"""A menu of several dishes: a line for each."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from rules.amounts.portion import head, over, portion, serving
from rules.book import Case, Part, rule
from rules.foods.dishes import dishes
from rules.model import Figure, Request
from rules.said import Said, bulk, listed, number, sentences
from rules.topics.order.words import bought, class_of, is_poured, plated, served

say = sentences("topics/order")


def is_menu(request: Request) -> bool:
    """Whether several dishes are asked about, each for all the guests."""
    return len(request.dishes) > 1 and request.portions is not None and request.quantity is None


@rule("order.menu", "common-practice")
def menu(case: Case) -> Part | None:
    """Of a menu with several dishes a line for each."""
    request = case.request
    if not is_menu(request):
        return None
    told = tuple(by_dish(request))
    lines = listed([line for line, _ in told], "semicolons")
    return Part(
        headline=say("menu", portions=number(request.portions or 0, 0), lines=lines),
        figures=tuple(figure for _, figure in told),
        because=say("menu-because"),
    )


def by_dish(request: Request) -> Iterator[tuple[Said, Figure]]:
    """The line and the figure of each dish; beside a meat or a fish what can be a side is one."""
    shares = {name: serving(name, dishes()[name].dish_class).shares for name in request.dishes}
    mains = any("side" not in ways for ways in shares.values())
    for name in request.dishes:
        course = request.course or ("side" if mains and "side" in shares[name] else None)
        one = replace(request, dish=name, dish_class=dishes()[name].dish_class, dishes=(), course=course)
        guest = head(one)
        raw_g = guest.raw_g * (request.portions or 1) * over(guest.way)
        cooked_g = raw_g * portion(name, class_of(one)).yields
        amount = plated(one, cooked_g) if is_poured(one) else bulk(raw_g)
        label = say("buy-label", bought=bought(one))
        line = say("menu-line", amount=amount, bought=bought(one), served=served(guest.way))
        yield line, Figure(f"buy_{name.replace(' ', '_')}", label, raw_g / 1000, "kg")
