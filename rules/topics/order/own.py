"""The cook's own amount: whether it does for the guests, for how many it does, and what it gives cooked."""

from __future__ import annotations

from dataclasses import replace

from rules.amounts import packs
from rules.amounts.liquid import ratio
from rules.amounts.portion import COOKED, EACH, PORTION, YIELD, grams, head, millilitres, over, portion, serving
from rules.book import Case, Part, rule
from rules.model import Figure, Request
from rules.physics.units import G_PER_LB, ML_PER_CUP
from rules.said import Measure, Said, bulk, number, sentences, yes
from rules.said import liquid as poured
from rules.topics.order.loads import fills_trays
from rules.topics.order.words import SWELLS, bought, class_of, is_poured, plated, served, sources, tidy, why

say = sentences("topics/order")

# an amount is plenty, enough or just enough from these shares of what is wanted
VERDICTS = (("plenty", 1.15), ("yes", 0.97), ("just", 0.88))
# a yield without an amount is told of ten pounds
EXAMPLE_G = 10 * G_PER_LB


def own_raw_g(request: Request) -> float | None:
    """The amount the cook has, as raw weight [g]; None where none was said, or it is only the size of a portion."""
    if request.quantity_of in (PORTION, YIELD):
        return None
    if request.count:
        return _of_pieces(request)
    if request.quantity_of == EACH and request.portions:
        return None
    size = grams(request.quantity)
    if size is None:
        return _of_volume(request)
    return size / portion(request.dish, class_of(request)).yields if request.quantity_of == COOKED else size


def _of_pieces(request: Request) -> float | None:
    """So many pieces, each of the size that was said, or of the usual one."""
    part, count = packs.piece(request.dish, class_of(request)), request.count or 0
    each = grams(request.quantity) or (part.grams if part else None)
    if each is None and part and part.portions:
        each = part.portions * portion(request.dish, class_of(request)).raw_g
    return count * each if each else None


def _of_volume(request: Request) -> float | None:
    """A volume: of what is dry by its cups, of what is cooked by how it lies in the pot."""
    ml, one, of = millilitres(request.quantity), portion(request.dish, class_of(request)), ratio(request)
    if ml is None:
        return None
    if one.state == "dry" and request.quantity_of != COOKED and of and of.g_per_cup:
        return ml / ML_PER_CUP * of.g_per_cup
    return ml * serving(request.dish, class_of(request)).g_per_ml / one.yields


@rule("order.enough", "common-practice")
def enough(case: Case) -> Part | None:
    """Whether the cook's own amount does for the guests."""
    request, own = case.request, own_raw_g(case.request)
    if own is None or not request.portions:
        return None
    one = head(request)
    in_pot = request.quantity_of == COOKED and millilitres(request.quantity) is not None
    guest_g = one.raw_g * over(one.way)
    wanted, does = guest_g * request.portions, tidy(own / guest_g)
    return Part(
        headline=say(
            "enough",
            verdict=next((word for word, share in VERDICTS if own / wanted >= share), "no"),
            own=own_words(request, own),
            bought=request.dish if in_pot and request.dish else bought(request),
            portions=number(request.portions, 0),
            served=served(one.way),
            wanted=wanted_words(request, wanted),
            does=number(does, 0),
        ),
        figures=(
            Figure("enough_for", say("enough-for-label"), does, "count"),
            Figure("buy", say("wanted-label"), wanted / 1000, "kg"),
        ),
        because=why(request, one),
        sources=sources(request),
    )


@rule("order.yields", "common-practice")
def yields(case: Case) -> Part | None:
    """What becomes of the raw weight, where no amount was said."""
    request = case.request
    if request.quantity_of != YIELD or request.quantity or request.portions:
        return None
    share = portion(request.dish, class_of(request)).yields
    return Part(
        headline=say(
            "yields",
            percent=number(share * 100, 0),
            bought=bought(request),
            raw=bulk(EXAMPLE_G),
            cooked=bulk(EXAMPLE_G * share),
        ),
        figures=(Figure("yield", say("yield-label"), round(share * 100), "percent"),),
        because=why(request, head(request)),
        sources=sources(request),
    )


@rule("order.as_before", "common-practice")
def as_before(case: Case) -> Part | None:
    """The cook's own yield: the same here, since elevation takes nothing off the plate."""
    request, share = case.request, case.request.own_yield
    own = own_raw_g(request)
    if share is None or own is None:
        return None
    usual = portion(request.dish, class_of(request)).yields
    return Part(
        headline=say(
            "as-before",
            own=bulk(own),
            bought=bought(request),
            cooked=bulk(own * share),
            percent=number(share * 100, 0),
            wet=yes(usual > SWELLS),
        ),
        figures=(
            Figure("cooked", say("cooked-label"), own * share / 1000, "kg"),
            Figure("yield", say("yield-label"), round(share * 100), "percent"),
        ),
        sources=sources(request),
    )


@rule("order.feeds", "common-practice")
def feeds(case: Case) -> Part | None:
    """What the cook's own amount gives cooked, and for how many that does."""
    request, own = case.request, own_raw_g(case.request)
    if own is None or request.portions or fills_trays(request):
        return None
    one, first = head(replace(request, quantity_of=None)), portion(request.dish, class_of(request))
    does = tidy(own / (one.raw_g * over(one.way)))
    words, what, way, guests = own_words(request, own), bought(request), served(one.way), number(does, 0)
    return Part(
        headline=say("start-with", raw=bulk(own), bought=what, own=words, does=guests, served=way)
        if request.quantity_of == COOKED
        else say("feeds", own=words, bought=what, cooked=plated(request, own * first.yields), does=guests, served=way),
        figures=(
            Figure("enough_for", say("enough-for-label"), does, "count"),
            *(() if is_poured(request) else weighed(own, first.yields)),
        ),
        because=why(request, one),
        sources=sources(request),
    )


def weighed(raw_g: float, share: float) -> tuple[Figure, ...]:
    """The weight raw and cooked."""
    return (
        Figure("buy", say("raw-label"), raw_g / 1000, "kg"),
        Figure("cooked", say("cooked-label"), raw_g * share / 1000, "kg"),
        Figure("yield", say("yield-label"), round(share * 100), "percent"),
    )


def own_words(request: Request, own_g: float) -> Said | Measure:
    """The cook's own amount, as it was said."""
    part = packs.piece(request.dish, class_of(request))
    if request.count and part:
        size, count = grams(request.quantity) or part.grams, number(request.count, 0)
        piece = say("piece", id=part.id, n=request.count)
        if size is None:
            return say("own-counted", count=count, piece=piece)
        return say("own-pieces", count=count, piece=piece, size=bulk(size))
    if request.quantity_of == COOKED and (asked := grams(request.quantity)):
        return bulk(asked)
    if (ml := millilitres(request.quantity)) is not None:
        return poured(ml)
    return bulk(own_g)


def wanted_words(request: Request, wanted_g: float) -> Measure:
    """What is wanted, measured as the cook measured his."""
    if millilitres(request.quantity) is not None:
        one, held = portion(request.dish, class_of(request)), serving(request.dish, class_of(request))
        return poured(wanted_g * one.yields / held.g_per_ml)
    return bulk(wanted_g)
