"""An amount on sheets and pans in the oven: how many fit at a time, how many loads they make, what a bag fills."""

from __future__ import annotations

from dataclasses import replace

from rules.amounts import makings
from rules.amounts.oven_room import SHELVES, Holder, filled, holder
from rules.amounts.portion import grams, head, portion
from rules.book import Case, Part, rule
from rules.model import Figure, Request
from rules.said import Said, Words, bulk, number, sentences
from rules.topics.order.words import class_of, tidy

say = sentences("topics/order")

# what is asked in: loads of an oven, pans or trays of any kind
LOAD, PAN, SHEET = "load", "pan", "sheet"
# what is mixed and poured or laid on a sheet, and is sold dry as a mix
MIXED, FLOUR = ("batter", "dough"), "flour"


def asks_loads(request: Request) -> bool:
    """Whether it is asked what an oven takes."""
    return LOAD in request.counted_in


def in_loads(request: Request, raw_g: float) -> Words:
    """How many loads of an oven, where it was asked so."""
    if not asks_loads(request):
        one = filled(raw_g, request.dish, class_of(request))
        return say("in-sheets", holders=_holders(one.holder.id, one.count)) if SHEET in request.counted_in else ""
    ovens = request.ovens or 1
    found = filled(raw_g, request.dish, class_of(request), SHELVES * ovens)
    return say(
        "in-loads", holders=_holders(found.holder.id, found.count), shelves=number(found.shelves, 0), ovens=ovens,
        room=number(SHELVES, 0), loads=found.loads, count=number(found.loads, 0),
    )  # fmt: skip


def _holders(kind: str, count: int) -> Said:
    return say("holders", kind=kind, count=count, amount=number(count, 0))


@rule("order.fits", "common-practice")
def fits(case: Case) -> Part | None:
    """What an oven takes of a dish at a time, where nobody says for how many."""
    request = case.request
    if not asks_loads(request) or request.portions or grams(request.quantity) or request.count:
        return None
    one, ovens = holder(request.dish, class_of(request)), request.ovens or 1
    count = SHELVES * ovens * one.to_shelf
    guest_g = head(replace(request, quantity=None, quantity_of=None)).raw_g
    does = tidy(count * one.grams / guest_g)
    return Part(
        headline=say(
            "fits",
            ovens=ovens,
            room=number(SHELVES, 0),
            holders=_holders(one.id, count),
            food=request.dish or say("it"),
            raw=bulk(count * one.grams),
            does=number(does, 0),
            each=number(tidy(one.grams / guest_g), 0),
        ),
        figures=(Figure("enough_for", say("enough-for-label"), does, "count"),),
        because=say("oven-room"),
    )


def fills_trays(request: Request) -> bool:
    """Whether it is asked how many trays so much of a batter, a dough or its mix fills."""
    of_dough = portion(request.dish, class_of(request)).state in MIXED
    own = grams(request.quantity) is not None and not request.portions and not request.count
    return (
        of_dough
        and own
        and any(name.startswith((PAN, SHEET)) for name in request.counted_in)
        and not request.ingredient
    )


@rule("order.trays", "common-practice")
def trays(case: Case) -> Part | None:
    """How many trays a weight fills as it goes in, and as a bag of the dry mix or of its meal."""
    request = case.request
    if not fills_trays(request):
        return None
    own_g, dish_class = grams(request.quantity) or 0.0, class_of(request)
    dry = [(share, item) for item, share in makings.makings(request.dish, dish_class) if makings.is_dry(item)]
    if not dry:
        return None
    mix = sum(share for share, _ in dry)
    most, item = max((one for one in dry if makings.role_of(one[1]) == FLOUR), default=max(dry))
    one, state = holder(request.dish, dish_class), portion(request.dish, dish_class).state
    each = tidy(one.grams / portion(request.dish, dish_class).raw_g)
    return Part(
        headline=say(
            "trays",
            own=bulk(own_g),
            food=request.dish or say("it"),
            mixed=_holders(one.id, _whole(one, own_g / mix)),
            item=item,
            most=number(_whole(one, own_g / most), 0),
            plain=number(_whole(one, own_g), 0),
            state=state,
            holds=bulk(one.grams),
            each=number(each, 0),
        ),
        figures=(Figure("trays", say("trays-label"), int(own_g / mix / one.grams), "count"),),
        because=say("by-formula"),
    )


def _whole(one: Holder, raw_g: float) -> int:
    """Trays that are filled whole."""
    return max(1, int(raw_g / one.grams))
