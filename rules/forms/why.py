"""Why a time that the cook has always gone by fails here: what those minutes become, behind the reason."""

from __future__ import annotations

from functools import cache

from rules import tables
from rules.book import Part, rule
from rules.foods.dishes import usual_method
from rules.forms import Asked
from rules.model import Request
from rules.said import duration, sentences, together

say = sentences("forms/why")

# less than this share, and nobody would change the clock
NOTICED = 0.03
HELD, HOLD_MIN = ("custard", "sauce", "starch_pudding"), 3.0


@cache
def for_a_class() -> frozenset[str]:
    """The explanations that a class or a child is told by, which nobody cooks by."""
    held = tables.read_toml("lexicon/explanations.toml")["explanation"]
    return frozenset(row["id"] for row in held if row.get("for_a_class"))


def own_min(request: Request) -> float | None:
    """The minutes that the cook goes by: those of the recipe, else those that were planned or that the pot has had."""
    return request.time_min or request.planned_min or request.elapsed_min


@rule("why.become", "common-practice", "computed")
def become(asked: Asked) -> Part | None:
    """The minutes of the recipe, and what they are here."""
    request = asked.request
    method = request.method or usual_method(request.dish, request.dish_class or "general")
    if request.elevation_m is None or method is None or request.subject in for_a_class():
        return None
    # a minute at the boil is a hold and no cooking time: the reason itself says how long
    if "starch_thickened" in asked.case.traits or (request.dish_class in HELD and (own_min(request) or 0) <= HOLD_MIN):
        return None
    timed = asked.otherwise(
        topic="time", subject=None, method=method, time_min=own_min(request), nearest=(), belief=None
    )
    if timed.time is None:
        return None
    here, base = timed.time
    if abs(here.value / base.value - 1) < NOTICED:
        return None
    become = say("become", minutes=duration(base.value), here=duration(here.value), place=asked.case.place)
    return Part(headline=together(asked.answer.headline, become), figures=(here,))


RULES = (become,)
