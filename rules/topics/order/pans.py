"""What an amount is in full-size pans, and the water of each."""

from __future__ import annotations

from rules.amounts import liquid, packs
from rules.amounts.portion import is_served, portion
from rules.book import Case, Part, rule
from rules.model import Figure, Request
from rules.said import Words, listed, number, sentences
from rules.topics.order.menu import is_menu
from rules.topics.order.words import class_of

say = sentences("topics/order")

GRAIN = ("rice", "whole_grain", "porridge", "instant_dried")
FULL_PAN = "full_pan"
# pans as deep as this are told of only where they are named [in]
DEEPEST_ASKED = 6


def in_pans(request: Request, cooked_g: float) -> Words:
    """How many full-size pans, where it was asked so."""
    part = packs.piece(request.dish, class_of(request))
    if (part and part.id == FULL_PAN) or not is_served(request.dish, class_of(request)):
        return ""
    counts = [
        say("so-many-pans", count=n, amount=number(n, 0), inches=number(pan.inches, 1))
        for pan, n in pans_filled(request, cooked_g)
    ]
    return say("in-pans", pans=listed(counts, "or")) if counts else ""


def pans_filled(request: Request, cooked_g: float) -> tuple[tuple[packs.Pan, int], ...]:
    """The pans that were asked about, each with how many are filled; without a depth the shallow ones."""
    asked = {name for name in request.counted_in if name.startswith("pan")}
    wanted = (pan for pan in packs.pans() if pan.id in asked or (asked == {"pan"} and pan.inches < DEEPEST_ASKED))
    held = ((pan, packs.pan_holds_g(pan, request.dish, class_of(request))) for pan in wanted)
    return tuple((pan, packs.whole(cooked_g / holds_g)) for pan, holds_g in held)


@rule("order.pan_water", "common-practice")
def pan_water(case: Case) -> Part | None:
    """The water of a pan, for grain that is cooked in the pans it is served from."""
    request = case.request
    water = liquid.needed(case) if class_of(request) in GRAIN and request.portions and not is_menu(request) else None
    if water is None or water.ratio.way != liquid.ABSORBED:
        return None
    filled = pans_filled(request, water.of_g * portion(request.dish, class_of(request)).yields)
    if not filled:
        return None
    name, litres = water.ratio.liquid, water.here_ml / 1000
    each = (
        Figure(f"liquid_{pan.id}", say("water-a-pan", liquid=name, inches=number(pan.inches, 1)), litres / count, "l")
        for pan, count in filled
    )
    label = say("water-label", liquid=name, place=case.place)
    return Part(
        figures=(Figure("liquid", label, litres, "l"), *each),
        steps=(say("shallow"),),
        sources=(water.ratio.source,),
    )
