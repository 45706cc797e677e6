"""The gate: whether a process figure may be told at all, and if not, why.

A time or a pressure is told only for a food whose acid and tested process are known, in the canner and the jar that
was asked for. Everything else is refused, with no figure.
"""

from __future__ import annotations

from collections.abc import Callable

from rules.model import Request
from rules.preserving import process_times
from rules.preserving.bands import CEILING_FT, whole_feet
from rules.preserving.catalogue import PRACTICES
from rules.preserving.foods import CANNED
from rules.preserving.printed import too_big
from rules.preserving.times_here import Time, times
from rules.preserving.vessel import (
    BOILING_WATER,
    HALF_GALLON,
    PRESSURE,
    STEAM,
    food_of,
    in_cooker,
    in_half_gallons,
    vessel,
)

STEAM_LIMIT_MIN = 45.0
# subjects that give no process; jars are boiled empty, fruit is dried, jam is cooked in the pan
WITHOUT_PROCESS = (
    "jar_sterilising", "blanching", "drying", "jerky", "gel_point", "over_boiled_jam",
    "acid_needed", "headspace_asked", "clock_start", "small_jars", "less_sugar", "salt_amount", "vinegar_strength",
    "fermenting", "ferment_gas", "gauge_sum", "pressure_fell", "time_or_pressure", "fridge_pickles", "siphoning",
    "sealed_batch", "keeping", "curing", "vinegar_pickles", "keeps_dry", "freezing", "pickled",
)  # fmt: skip


def refusal(request: Request) -> str | None:
    """Why no process figure may be told, an id of data/lexicon/canning_refusals.toml; None where one may.

    >>> refusal(Request(topic="preserve", dish="octopus", dish_class="cephalopod", elevation_m=2133.6))
    'unknown'
    """
    if request.subject in WITHOUT_PROCESS or is_drying(request):
        return _empty_jars(request)
    return next((reason for check in CHECKS if (reason := check(request))), None)


def is_drying(request: Request) -> bool:
    """Whether a question is about drying: it says so, or the food is a dried one.

    >>> is_drying(Request(topic="preserve", dish="beef jerky")), is_drying(Request(topic="preserve", dish="peaches"))
    (True, False)
    """
    return request.subject in ("drying", "jerky") or (request.subject is None and food_of(request).kind == "dried")


def _empty_jars(request: Request) -> str | None:
    food = food_of(request)
    return "jars_of_low_acid" if request.subject == "jar_sterilising" and food.named and not food.acid else None


def _practice(request: Request) -> str | None:
    """A practice that the cook asks about; jars of half a gallon are looked at with the food in them."""
    return request.subject if request.subject in PRACTICES and request.subject != HALF_GALLON else None


def _cooker(request: Request) -> str | None:
    if not in_cooker(request):
        return None
    return "electric_canner" if "electric_pressure_cooker" in request.equipment else "small_cooker"


def _food(request: Request) -> str | None:
    food = food_of(request)
    if not food.named or food.kind in CANNED:
        return None
    return "untested" if food.kind == "dried" else food.kind


def _canner(request: Request) -> str | None:
    """A canner for which the food has no process."""
    food, way = food_of(request), vessel(request)
    if not food.named:
        return None
    if way == PRESSURE:
        return None if food.pressure_min else "no_pressure_process"
    return None if food.water_min else "needs_pressure"


def _jar(request: Request) -> str | None:
    fits = food_of(request).half_gallon_min is not None and vessel(request) == BOILING_WATER
    return HALF_GALLON if in_half_gallons(request) and not fits else None


def _jar_too_big(request: Request) -> str | None:
    """A jar that is bigger than every one that is printed for the food in this canner."""
    return "jar_too_big" if too_big(request, vessel(request)) else None


def _height(request: Request) -> str | None:
    return "too_high" if request.elevation_m is not None and whole_feet(request.elevation_m) > CEILING_FT else None


def _time(request: Request) -> str | None:
    """A time for boiling water or steam that is none; under pressure a time that does not fit is only left out."""
    wrong = vessel(request) != PRESSURE and process_times.given(request) and process_times.base_min(request) is None
    return "time_not_printed" if wrong else None


def _steam(request: Request) -> str | None:
    """A process that outlasts the water in a steam canner, the shortest that is printed for the food if none is given.

    source: nchfp-steam-canners
    """
    if vessel(request) != STEAM or request.elevation_m is None:
        return None
    if process_times.base_min(request) is None and (every := times(request, STEAM)):
        return None if any(time.most_min <= STEAM_LIMIT_MIN for time in every) else "steam_too_long"
    longest = process_times.longest_min(request)
    return "steam_too_long" if longest is not None and longest > STEAM_LIMIT_MIN else None


def printed_here(request: Request) -> tuple[Time, ...]:
    """The printed times of a request in its canner; of open steam those for which its water lasts."""
    canner = vessel(request)
    found = times(request, canner)
    return tuple(time for time in found if canner != STEAM or time.most_min <= STEAM_LIMIT_MIN)


def tells_printed(request: Request) -> bool:
    """Whether the answer is a printed time, and not one that the cook brought."""
    return process_times.base_min(request) is None and bool(printed_here(request))


CHECKS: tuple[Callable[[Request], str | None], ...] = (
    _practice,
    _cooker,
    _food,
    _jar,
    _canner,
    _jar_too_big,
    _height,
    _time,
    _steam,
)
