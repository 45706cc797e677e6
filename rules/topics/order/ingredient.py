"""How much of one ingredient a dish takes: flour for so many loaves, and what so much of it makes."""

from __future__ import annotations

from dataclasses import replace

from rules.amounts import makings, packs
from rules.amounts.portion import grams, head, millilitres, over, portion
from rules.amounts.stores import Kept, kept
from rules.book import Case, Part, rule
from rules.model import Figure, Request
from rules.recipes import formulas
from rules.recipes.formulas import Making
from rules.said import Said, Value, Words, bulk, number, sentences, together, yes
from rules.said import liquid as poured
from rules.topics.order.words import class_of

say = sentences("topics/order")

# how finely a change for the elevation is told [share]
NOTICED = 0.01
DOZEN = 12
# what is told by the name under which the formula has it: instant yeast, canned tomatoes
AS_BOUGHT = ("yeast", "")


def of_it(request: Request) -> Making | None:
    """The ingredient in the dish, here and there; None where the usual formula of the dish has none of it."""
    item, dish_class = request.ingredient or "", class_of(request)
    there = makings.share_of(item, request.dish, dish_class)
    if there is None:
        return None
    inside = formulas.at(request.dish, dish_class, request.from_elevation_m or 0.0, request.elevation_m or 0.0)
    names = makings.meant(item, request.dish, dish_class)
    alike = [one for one in inside if one.item in names]
    return Making(item, sum(one.here for one in alike) or there, there)


def made_g(request: Request) -> float | None:
    """The dough, batter or finished dish that is asked about [g]; None where nobody said how much."""
    part, each = packs.piece(request.dish, class_of(request)), grams(request.quantity)
    raw_g = portion(request.dish, class_of(request)).raw_g
    if request.count and "pan" in request.counted_in:
        return request.count * pan_g(request)
    if request.count and part:
        size = each or part.grams or (part.portions or 1.0) * raw_g
        return request.count * size
    if request.count and each:
        return request.count * each
    if request.portions:
        one = head(replace(request, quantity=None, quantity_of=None))
        return (each or one.raw_g) * request.portions * over(one.way)
    return None


def pan_g(request: Request) -> float:
    """What a shallow full-size pan takes of it, raw [g]."""
    return packs.pan_holds_raw_g(packs.pans()[0], request.dish, class_of(request))


@rule("order.ingredient", "common-practice")
def wanted(case: Case) -> Part | None:
    """How much of the ingredient goes into so much of the dish."""
    request = case.request
    one, whole_g = of_it(request), made_g(request)
    if one is None or whole_g is None:
        return None
    bought = makings.bought_for(one.item, request.dish, class_of(request))
    item_g, of = whole_g * one.here, kept(bought)
    name = bought if makings.role_of(one.item) in AS_BOUGHT and not of.each_g else one.item
    headline = say(
        "ingredient-for",
        amount=measured(item_g, of),
        counted=yes(of.each_g is not None and of.g_per_ml is None),
        item=name,
        what=asked_for(request),
        percent=number(one.here * 100, 0 if one.here >= 0.02 else 1),
        made=bulk(whole_g),
        state=portion(request.dish, class_of(request)).state,
        food=request.dish or say("it"),
    )
    figure = Figure("buy", say("ingredient-label", item=name), item_g / 1000, "kg")
    return Part(
        headline=together(headline, in_packs(request, one.item, item_g), changed(case, replace(one, item=name))),
        figures=(figure, Figure("made", say("made-label"), whole_g / 1000, "kg")),
        because=say("by-formula"),
    )


@rule("order.makes", "common-practice")
def makes(case: Case) -> Part | None:
    """What the cook's own amount of the ingredient makes."""
    request = case.request
    one, own = of_it(request), own_g(request)
    if one is None or own is None or request.count or request.portions:
        return None
    whole_g, dish_class = own / one.here, class_of(request)
    raw_g, part = portion(request.dish, dish_class).raw_g, packs.piece(request.dish, dish_class)
    in_pans = "pan" in request.counted_in or part is None
    pieces = whole_g / (pan_g(request) if in_pans else piece_g(part, raw_g))
    return Part(
        headline=together(
            say(
                "ingredient-makes",
                own=poured(millilitres(request.quantity) or 0.0) if grams(request.quantity) is None else bulk(own),
                item=one.item,
                made=bulk(whole_g),
                state=portion(request.dish, dish_class).state,
                food=request.dish or say("it"),
                count=int(pieces),
                amount=number(int(pieces), 0),
                pans=yes(in_pans),
                inches=number(packs.pans()[0].inches, 1),
                piece=say("piece", id=part.id if part else "full_pan", n=int(pieces)),
                does=number(int(whole_g / raw_g), 0),
            ),
            changed(case, one),
        ),
        figures=(
            Figure("made", say("made-label"), whole_g / 1000, "kg"),
            Figure("enough_for", say("enough-for-label"), int(whole_g / raw_g), "count"),
        ),
        because=say("by-formula"),
    )


def piece_g(part: packs.Piece | None, raw_g: float) -> float:
    """What one piece takes of dough or batter [g]."""
    return raw_g if part is None else part.grams or (part.portions or 1.0) * raw_g


def own_g(request: Request) -> float | None:
    """The ingredient that the cook has [g]."""
    ml, of = millilitres(request.quantity), kept(request.ingredient or "")
    return grams(request.quantity) if ml is None else ml * (of.g_per_ml or makings.g_per_ml(request.ingredient or ""))


def measured(item_g: float, of: Kept) -> Value:
    """An amount as it is bought: by the litre, by the piece, else by weight."""
    if of.g_per_ml:
        return poured(item_g / of.g_per_ml)
    if of.each_g:
        count = max(1, round(item_g / of.each_g + 0.5))
        return say(
            "by-count", n=count, amount=number(count, 0), dozens=number(count / DOZEN, 1), many=yes(count > DOZEN)
        )
    return bulk(item_g)


def asked_for(request: Request) -> Said:
    """What the ingredient is for: so many loaves, pans or portions."""
    part, count = packs.piece(request.dish, class_of(request)), request.count or request.portions or 1
    told = "portions" if not request.count else "pans" if "pan" in request.counted_in else "pieces"
    named = part is not None and part.id in (request.dish or "")
    piece = say("piece", id=part.id if part else "full_pan", n=count)
    food = request.dish or say("it")
    return say(
        "so-many-of", told=told, named=yes(named), amount=number(count, 0), count=count, piece=piece, food=food,
        inches=number(packs.pans()[0].inches, 1),
    )  # fmt: skip


def in_packs(request: Request, item: str, item_g: float) -> Words:
    """How many cans, cases or bags, where it was asked so."""
    of = kept(makings.bought_for(item, request.dish, class_of(request)))
    if of.grams is None or not packs.asked_in(of.pack, request.counted_in):
        return ""
    count = packs.needed(item_g / of.grams)
    return say("in-packs", count=count, amount=number(count, 0), pack=of.pack, size=bulk(of.grams))


def changed(case: Case, one: Making) -> Words:
    """What the elevation changes of it."""
    if not case.moved or abs(one.change) < NOTICED:
        return ""
    way = "more" if one.change > 0 else "less"
    return say("ingredient-changed", place=case.place, percent=number(abs(one.change) * 100, 0), way=way, item=one.item)
