"""Which food, which canner and which jar a question is about."""

from __future__ import annotations

from rules.model import Quantity, Request
from rules.preserving.foods import UNKNOWN, UNNAMED, Food, food
from rules.said import Said, sentences

BOILING_WATER, STEAM, PRESSURE = "boiling_water", "steam", "pressure"
BY_SUBJECT = {
    "boiling_water_canning": BOILING_WATER,
    "steam_canning": STEAM,
    "pressure_canning": PRESSURE,
    "dial_gauge": PRESSURE,
    "weighted_gauge": PRESSURE,
}
CANNERS = ("dial_gauge_canner", "weighted_gauge_canner", "pressure_canner")
GAUGES = ("dial_gauge", "weighted_gauge")
HALF_GALLON = "half_gallon_jars"
say = sentences("preserving/vessel")


def food_of(request: Request) -> Food:
    """The food of a request as the canning table knows it: unknown if it was named and has no row."""
    known = food(request.dish, request.dish_class)
    return UNKNOWN if known is UNNAMED and strange(request) else known


def strange(request: Request) -> str | None:
    """A food that the cook named and the lexicon does not have, in the cook's words; None where there is none."""
    return next((u.text for u in request.unused if u.kind == "dish"), None)


def called(request: Request) -> str | Said:
    """What to call the food of a request in a sentence about canning it: peaches, not canned peaches."""
    return food_of(request).called or request.dish or strange(request) or say("that-food")


def named(request: Request) -> str | None:
    """The canner that the cook named, by its name or by a gauge; None where nothing tells."""
    if request.subject in BY_SUBJECT:
        return BY_SUBJECT[request.subject]
    return PRESSURE if request.gauge_pa is not None else None


def has_canner(request: Request) -> bool:
    """Whether the cook names or owns a pressure canner."""
    return bool(set(CANNERS) & set(request.equipment))


def vessel(request: Request) -> str:
    """The canner to answer for: the one that was named, else the one that the food calls for, else the cook's own."""
    food = food_of(request)
    if chosen := named(request):
        return chosen
    if food.kind == "low_acid" or (not food.named and has_canner(request)):
        return PRESSURE
    return STEAM if "steam_canner" in request.equipment else BOILING_WATER


def in_cooker(request: Request) -> bool:
    """Whether jars are to go into a pressure cooker, which is no canner."""
    return request.method == "pressure_cook" and request.subject not in BY_SUBJECT and not has_canner(request)


def in_half_gallons(request: Request) -> bool:
    """Whether the jars hold half a gallon."""
    amounts = (request.quantity, *request.jars)
    return request.subject == HALF_GALLON or Quantity(0.5, "gal") in amounts


def gauge(request: Request) -> str | None:
    """The gauge, "dial" or "weighted" where the cook named it or owns only that one; None for either."""
    if request.subject in GAUGES:
        return request.subject.removesuffix("_gauge")
    owned = {word for word in ("dial", "weighted") if f"{word}_gauge_canner" in request.equipment}
    return owned.pop() if len(owned) == 1 else None
