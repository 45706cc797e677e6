"""Limits for holding, reheating and chilling: temperatures of the food, which do not move with elevation."""

from __future__ import annotations

from functools import cache

from rules.book import Case, Part, rule
from rules.model import Request
from rules.physics.units import to_c
from rules.said import sentences, temp, together
from rules.tables import read_csv

LIMITS = "tables/food_code_times_fda-food-code-2022.csv"
say = sentences("safety/holding_limits")


@cache
def _rows() -> dict[str, dict[str, str]]:
    return {row["limit"]: row for row in read_csv(LIMITS).rows}


def limit_c(limit: str) -> float:
    """A temperature limit of the Food Code [degC].

    source: fda-food-code-2022

    >>> round(limit_c("hot_hold"), 1)
    57.2
    """
    return to_c(float(_rows()[limit]["temp_f"]))


def limit_min(limit: str) -> float:
    """A time limit of the Food Code [min].

    source: fda-food-code-2022

    >>> limit_min("cool_last")
    360.0
    """
    return 60 * float(_rows()[limit]["hours"])


def placed(request: Request) -> bool:
    """Whether anybody has said where the kitchen is; holding and doneness can be answered without."""
    return request.elevation_m is not None or request.pressure_pa is not None


@rule("safety.same_everywhere", "fda-food-code-2022", "iapws-r7-97")
def same_everywhere(case: Case) -> Part:
    """Why safe temperatures do not move with elevation."""
    cooler = placed(case.request) and case.here.boiling_c < case.sea.boiling_c - 0.1
    here = say("still-above", boil=temp(case.here.boiling_c), place=case.place) if cooler else None
    return Part(because=together(say("same-everywhere"), here))
