"""How much to buy or make for so many, and how many so much will do for.

A request is about one dish; of a menu with several (`dishes`) each gets its line, worked out by itself. What was asked
in (pans, cases, pieces) is told beside the weight.
"""

from __future__ import annotations

from dataclasses import replace

from rules.amounts.portion import COOKED, PORTION, YIELD, grams, portion
from rules.book import Rule
from rules.model import Request
from rules.topics.order import buy, loads, menu, own, pans
from rules.topics.order.own import own_raw_g

# a weight is that of one helping for so many guests at least, where it is so many times the usual one, and where shared
# out among them it would come to less than such a part of it
FEWEST, HELPINGS, HELPINGS_TO_ALL = 8, (0.2, 4.0), 0.1
OF_A_DISH: tuple[Rule, ...] = (
    menu.menu, loads.fits, loads.trays, own.as_before, own.enough, own.yields, own.feeds,
    buy.buy, buy.pieces, pans.pan_water, buy.elevation,
)  # fmt: skip


def rules_for(request: Request | None) -> tuple[Rule, ...]:
    """The rules for an ingredient of a dish, or for the dish; all of them for None."""
    if request and not request.ingredient:
        return OF_A_DISH
    # formulas are taken to other elevations by the recipes, whose import a question about a dish does not pay for
    from rules.topics.order import ingredient

    of_it: tuple[Rule, ...] = (ingredient.wanted, ingredient.makes)
    return of_it if request else (*of_it, *OF_A_DISH)


def settled(request: Request) -> Request:
    """A yield is the same in both kitchens that are named: neither is left out. What can only be one helping is one.

    Less than one guest is none.
    """
    if request.portions is not None and request.portions < 1:
        # nobody to cook for: for how many is asked
        request = replace(request, portions=None)
    if is_a_helping(request):
        request = replace(request, quantity_of=PORTION)
    if request.own_yield is None:
        return request
    return replace(request, unused=tuple(u for u in request.unused if u.kind != "elevations"))


def is_a_helping(request: Request) -> bool:
    """Whether a weight is that of one helping: 5 oz cooked for 300 feeds nobody, and is what one of them eats."""
    weight = grams(request.quantity)
    if weight is None or not request.portions or request.portions < FEWEST or request.quantity_of not in (None, COOKED):
        return False
    usual = portion(request.dish, request.dish_class or "general")
    each = weight / request.portions
    least, most = HELPINGS
    return each < HELPINGS_TO_ALL * usual.raw_g and least <= weight / usual.cooked_g <= most


def needs(request: Request) -> tuple[str, ...]:
    """The dish; and for how many, unless the cook asks what an amount gives."""
    if request.menu:
        return menu.needs(request)
    if request.ingredient:
        from rules.topics.order import ingredient

        return () if ingredient.made_g(request) or ingredient.own_g(request) else ("portions",)
    if request.dish is None and request.dish_class is None and not any(u.kind == "dish" for u in request.unused):
        return ("dish",) if own_raw_g(replace(request, dish_class="general")) else ("dish", "portions")
    told = own_raw_g(request) is not None or loads.asks_loads(request) or request.quantity_of == YIELD
    return () if told else ("portions",)
