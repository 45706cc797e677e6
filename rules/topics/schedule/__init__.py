"""When to start, so that the food is ready in time: one dish, several that land together, or loads in turn."""

from __future__ import annotations

from rules.model import Request
from rules.topics.schedule.loads import in_loads
from rules.topics.schedule.menu import is_menu, menu, menu_cautions
from rules.topics.schedule.on_course import on_course
from rules.topics.schedule.one import backward, cooking_cautions, waiting
from rules.topics.schedule.stages import cooking, method_of


def needs(request: Request) -> tuple[str, ...]:
    """Dish, method where the dish does not tell it, time of service, elevation, and a time where none is known.

    A time of the cook's own does without the dish.
    """
    if is_menu(request):
        return ("service_time", "elevation")
    known = request.dish or request.dish_class or any(u.kind == "dish" for u in request.unused)
    if not known and (request.time_min is None or request.method is None):
        return ("dish", "service_time", "elevation")
    method = () if method_of(request) or request.time_min is not None else ("method",)
    must = (*method, "service_time", "elevation")
    placed = request.elevation_m is not None and request.service_time is not None
    return (*must, "time") if not method and placed and cooking(request) is None else must


RULES = (on_course, menu, in_loads, backward, waiting, cooking_cautions, menu_cautions)
