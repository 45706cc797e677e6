"""What to buy for so many: by the piece where cooks count it, by the litre where it is poured, else by weight."""

from __future__ import annotations

from collections.abc import Iterator

from rules.amounts import packs
from rules.amounts.liquid import ratio
from rules.amounts.portion import COOKED, EACH, Head, grams, head, over, portion, serving
from rules.book import Case, Part, rule
from rules.model import Figure, Request
from rules.said import Said, Words, bulk, measure, number, sentences, together, yes
from rules.said import liquid as poured
from rules.topics.order.loads import in_loads
from rules.topics.order.menu import is_menu
from rules.topics.order.own import own_raw_g
from rules.topics.order.pans import in_pans
from rules.topics.order.words import WHOLE, bought, class_of, is_poured, plated, served, sources, why

say = sentences("topics/order")

# how far appetites and trim move an amount either way
SPREAD = 0.15
DRAWN = ("coffee", "tea")
DOZEN = 12
# another way of serving is told where it takes so much more or less
WORTH_TELLING = 0.2
# less than this is weighed to the tenth of a gram
SMALL_G = 10.0


def raw_wanted_g(request: Request, one: Head) -> float:
    """What is to be bought for the guests [g]; of what is asked cooked, what that is raw."""
    asked = grams(request.quantity)
    if request.quantity_of == COOKED and asked:
        return asked / portion(request.dish, class_of(request)).yields
    return one.raw_g * (request.portions or 1) * over(one.way)


@rule("order.buy", "common-practice")
def buy(case: Case) -> Part | None:
    """What to buy for the guests, and what that is cooked."""
    request = case.request
    if not request.portions or own_raw_g(request) is not None or is_menu(request):
        return None
    one = head(request)
    raw_g = raw_wanted_g(request, one)
    cooked_g = raw_g * portion(request.dish, class_of(request)).yields
    return Part(
        headline=together(
            buying(request, one, raw_g, cooked_g),
            in_pans(request, cooked_g),
            in_loads(request, raw_g),
            in_packs(request, raw_g),
        ),
        figures=tuple(figures(request, one, raw_g, cooked_g)),
        because=why(request, one),
        sources=sources(request),
    )


def buying(request: Request, one: Head, raw_g: float, cooked_g: float) -> Said:
    """The one sentence that answers."""
    part = packs.piece(request.dish, class_of(request))
    if part and (part.first or "piece" in request.counted_in):
        return by_the_piece(request, part, one, raw_g)
    if is_poured(request):
        return by_the_litre(request, one, raw_g, cooked_g)
    raw, what, guests = bulk(raw_g), bought(request), number(request.portions or 1, 0)
    each = measure(one.raw_g, "g") if one.raw_g < SMALL_G else bulk(one.raw_g)
    if request.portions == 1:
        return say("buy-head", raw=raw, bought=what, served=served(one.way), cooked=bulk(cooked_g))
    if class_of(request) in DRAWN:
        return say("buy-drawn", raw=raw, bought=what, guests=guests, each=each, cooked=poured(cooked_g))
    return say(
        "buy-weight",
        raw=raw,
        bought=what,
        guests=guests,
        served=served(one.way),
        each=each,
        cooked=bulk(cooked_g),
        state=portion(request.dish, class_of(request)).state,
    )


def by_the_piece(request: Request, part: packs.Piece, one: Head, raw_g: float) -> Said:
    """So many birds, eggs or loaves."""
    count, size = pieces_wanted(request, part, raw_g), size_g(request, part)
    shared = bool(part.portions and part.portions > 1)
    return say(
        "buy-pieces",
        told="dozens" if part.id == "egg" else "shared" if shared else "sized" if size else "counted",
        amount=number(count, 0),
        dozens=number(count / DOZEN, 1),
        piece=say("piece", id=part.id, n=count),
        size=bulk(size or 0.0),
        each=number(part.portions or 1, 0),
        food=request.dish or say("it"),
        raw=bulk(raw_g),
        bought=bought(request),
        guests=number(request.portions or 1, 0),
        served=served(one.way),
    )


def by_the_litre(request: Request, one: Head, raw_g: float, cooked_g: float) -> Said:
    """So much soup, and of a stock the bones."""
    return say(
        "buy-poured",
        amount=plated(request, cooked_g),
        food=request.dish or say("it"),
        guests=number(request.portions or 1, 0),
        served=served(one.way),
        each=plated(request, one.cooked_g),
        made=yes(class_of(request) == "stock"),
        raw=bulk(raw_g),
        bought=bought(request),
    )


def figures(request: Request, one: Head, raw_g: float, cooked_g: float) -> Iterator[Figure]:
    """What to buy, cooked and raw; and another way of serving it, where the cook said none."""
    ends = (raw_g * (1 - SPREAD) / 1000, raw_g * (1 + SPREAD) / 1000) if request.portions != 1 else ()
    yield Figure("buy", say("buy-label", bought=bought(request)), raw_g / 1000, "kg", *ends)
    part, state = packs.piece(request.dish, class_of(request)), portion(request.dish, class_of(request)).state
    told = class_of(request) in DRAWN or is_poured(request) or (part and part.first) or state in WHOLE
    if not told:
        yield Figure("cooked", say("cooked-label"), cooked_g / 1000, "kg")
    other = {"side": "main", "main": "buffet"}.get(one.way, "")
    shares = serving(request.dish, class_of(request)).shares
    if request.course is None and request.quantity is None and other in shares:
        amount = head(request, other).raw_g * (request.portions or 1) * over(other)
        if abs(amount / raw_g - 1) >= WORTH_TELLING:
            yield Figure(f"buy_{other}", say("instead-label", way=other), amount / 1000, "kg")


@rule("order.pieces", "common-practice")
def pieces(case: Case) -> Part | None:
    """How many pieces of the usual size that is."""
    request = case.request
    part = packs.piece(request.dish, class_of(request))
    weighed = part is not None and part.grams is not None and not part.first
    if part is None or not weighed or not request.portions or is_menu(request) or own_raw_g(request) is not None:
        return None
    label = say("pieces-label", piece=say("piece", id=part.id, n=2), size=bulk(size_g(request, part) or 0.0))
    count = pieces_wanted(request, part, raw_wanted_g(request, head(request)))
    return Part(figures=(Figure("pieces", label, count, "count"),))


def size_g(request: Request, part: packs.Piece) -> float | None:
    """The size of a piece: as the cook said, else the usual one [g]."""
    return grams(request.quantity) if request.quantity_of == EACH else part.grams


def pieces_wanted(request: Request, part: packs.Piece, raw_g: float) -> int:
    """How many whole pieces serve the guests."""
    if part.portions:
        one = head(request)
        share = one.raw_g / portion(request.dish, class_of(request)).raw_g
        return packs.whole((request.portions or 1) * share * over(one.way) / part.portions)
    return packs.whole(raw_g / (size_g(request, part) or 1.0))


def in_packs(request: Request, raw_g: float) -> Words:
    """How many cases or bags, where it was asked so."""
    sold = packs.pack(request.dish, class_of(request))
    if sold is None or not packs.asked_in(sold[0], request.counted_in):
        return ""
    count = packs.needed(raw_g / sold[1])
    return say("in-packs", count=count, amount=number(count, 0), pack=sold[0], size=bulk(sold[1]))


@rule("order.elevation", "common-practice")
def elevation(case: Case) -> Part | None:
    """What elevation changes of an amount: the liquid and the time, never what is eaten."""
    return Part(because=say("elevation", wet=yes(ratio(case.request)))) if case.moved else None
