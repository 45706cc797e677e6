"""What so many guests take of a dish, told beside how long it takes."""

from __future__ import annotations

from rules.amounts import liquid, portion
from rules.book import Case
from rules.model import Request
from rules.said import Words, bulk, number, sentences, yes
from rules.said import liquid as poured

# liquid that is told beside what it is for; water that is poured away is as the pot has room
POURED_WITH = (liquid.ABSORBED, liquid.COVERS)
say = sentences("amounts/guests")


def for_guests(request: Request) -> Words:
    """What so many people take of the dish, dry or raw, and its liquid here; empty where nobody is counted."""
    if not request.portions or request.quantity or request.dish_class is None:
        return ""
    one = portion.head(request)
    raw_g = one.raw_g * request.portions * portion.over(one.way)
    wet = liquid.needed(Case(request)) if request.elevation_m is not None else None
    poured_too = wet is not None and wet.ratio.way in POURED_WITH
    return say(
        "for-guests",
        guests=number(request.portions, 0),
        raw=bulk(raw_g),
        food=request.dish or request.dish_class,
        state=portion.portion(request.dish, request.dish_class).state,
        wet=yes(poured_too),
        water=poured(wet.here_ml) if wet else "",
        liquid=wet.ratio.liquid if wet else "",
    )
