"""Which canner a question is about."""

from __future__ import annotations

from rules.model import Request
from rules.preserving.foods import Food, food

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


def food_of(request: Request) -> Food:
    """The food of a request, as the canning tables know it."""
    return food(request.dish, request.dish_class)


def named(request: Request) -> str | None:
    """The canner that the cook named, by its name or by a gauge; None where nothing tells."""
    if request.subject in BY_SUBJECT:
        return BY_SUBJECT[request.subject]
    return PRESSURE if request.gauge_pa is not None or "pressure" in (request.topic, request.method) else None


def vessel(request: Request) -> str:
    """The canner to answer for: the one that was named, else the one that the food calls for, else the cook's own."""
    food = food_of(request)
    if chosen := named(request):
        return chosen
    if food.kind == "low_acid" or (food.kind == "unknown" and set(CANNERS) & set(request.equipment)):
        return PRESSURE
    return STEAM if "steam_canner" in request.equipment else BOILING_WATER


def gauge(request: Request) -> str | None:
    """The gauge, "dial" or "weighted" where the cook named it or owns only that one; None for either."""
    if request.subject in GAUGES:
        return request.subject.removesuffix("_gauge")
    owned = {word for word in ("dial", "weighted") if f"{word}_gauge_canner" in request.equipment}
    return owned.pop() if len(owned) == 1 else None
