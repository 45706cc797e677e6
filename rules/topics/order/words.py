"""What is said alike of every amount: what is bought, how it is served, what becomes of it."""

from __future__ import annotations

from rules.amounts.portion import Head, portion, serving, way_of
from rules.model import Request
from rules.said import Measure, Said, Words, bulk, number, sentences, together, yes
from rules.said import liquid as poured

say = sentences("topics/order")

POURED = ("soup", "stock", "sauce", "mixed_stew")
# from here on what it comes to is put in times of its dry weight
SWELLS = 1.2
# what is bought in a state that neither bone nor peel leaves
WHOLE = ("plain", "salad", "finished", "in_pot", "dough", "batter")


def class_of(request: Request) -> str:
    """The class of the dish."""
    return request.dish_class or "general"


def bought(request: Request) -> Said:
    """What is bought, in words: raw brisket, dry rice, bone-in pork shoulder for pulled pork."""
    one, food = portion(request.dish, class_of(request)), request.dish or say("it")
    if one.bought_as:
        named = any(word.rstrip("s") in one.bought_as for word in str(food).split())
        return say("bought-as", food=food, bought=one.bought_as, named=yes(named))
    return say("bought", state=one.state, food=food)


def served(way: str) -> Said:
    """How it is served, in words."""
    return say("served", way=way)


def served_so(request: Request) -> Said:
    """How a request's dish is served, in words."""
    return served(way_of(request))


def is_poured(request: Request) -> bool:
    """Whether it is reckoned by the litre."""
    one = portion(request.dish, class_of(request))
    return class_of(request) == "stock" or (class_of(request) in POURED and not one.bought_as)


def plated(request: Request, cooked_g: float) -> Measure:
    """The finished amount as a cook measures it: by volume what is poured, else by weight."""
    if is_poured(request):
        return poured(cooked_g / serving(request.dish, class_of(request)).g_per_ml)
    return bulk(cooked_g)


def why(request: Request, one: Head) -> Words:
    """What becomes of the raw weight, and what was reckoned with."""
    first = portion(request.dish, class_of(request))
    turns: Words = ""
    if first.yields > SWELLS:
        turns = say("swells", times=number(first.yields, 1))
    elif first.state not in WHOLE and class_of(request) != "egg":
        turns = say("shrinks", percent=number(first.yields * 100, 0), state=first.state)
    return together(say("reckoned", way=one.way), turns, say("buffet-over") if one.way == "buffet" else "")


def sources(request: Request) -> tuple[str, ...]:
    """What the portion rests on."""
    return (portion(request.dish, class_of(request)).source,)


def tidy(guests: float) -> int:
    """A number of guests, no finer than it can be known.

    >>> tidy(27.4), tidy(163), tidy(1234)
    (27, 160, 1200)
    """
    step = 1 if guests < 50 else 5 if guests < 150 else 10 if guests < 500 else 50
    return max(1, int(guests // step * step))
