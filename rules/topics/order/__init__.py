"""How much to buy or make for so many, and how many so much will do for.

A request is about one dish; of a menu with several (`dishes`) each gets its line, worked out by itself. What was asked
in (pans, cases, pieces) is told beside the weight.
"""

from __future__ import annotations

from dataclasses import replace

from rules.amounts.portion import YIELD
from rules.book import Rule
from rules.model import Request
from rules.topics.order import buy, menu, own, pans
from rules.topics.order.own import own_raw_g

RULES: tuple[Rule, ...] = (
    menu.menu, own.as_before, own.enough, own.yields, own.feeds, buy.buy, buy.pieces, pans.pan_water, buy.elevation,
)  # fmt: skip


def settled(request: Request) -> Request:
    """A yield is the same in both kitchens that are named: neither is left out."""
    if request.own_yield is None:
        return request
    return replace(request, unused=tuple(u for u in request.unused if u.kind != "elevations"))


def needs(request: Request) -> tuple[str, ...]:
    """The dish; and for how many, unless the cook asks what an amount gives."""
    if request.dish is None and request.dish_class is None and not any(u.kind == "dish" for u in request.unused):
        return ("dish",) if own_raw_g(replace(request, dish_class="general")) else ("dish", "portions")
    told = own_raw_g(request) is not None or request.quantity_of == YIELD
    return () if told else ("portions",)
