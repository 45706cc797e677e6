"""Questions of a lesson put to the rules, and the equation in an answer."""

from __future__ import annotations

from functools import lru_cache
from typing import Any

from assistant.replies.worded import answer
from rules.model import Answer, Because, Request, Units


def answer_at(ask: dict[str, Any], elevation_m: float, units: Units, depth: int = 3) -> Answer:
    """What the rules answer at an elevation [m], in words. ask: slots of the Request"""
    return _answer(tuple(sorted(ask.items())), elevation_m, units, depth)


# the questions of a sheet and its key; there is no end of elevations
@lru_cache(maxsize=256)
def _answer(ask: tuple[tuple[str, Any], ...], elevation_m: float, units: Units, depth: int) -> Answer:
    request = Request(**dict(ask), elevation_m=elevation_m, elevation_from="stated", units=units, depth=depth)
    return answer(request)


def equation(without: Because, with_it: Because) -> str:
    """The equation with its numbers: what a reason has at depth 3 over what it has at depth 2.

    >>> equation(Because("r", "Cooler.", ()), Because("r", "Cooler. T = 90 °C.", ()))
    'T = 90 °C.'
    """
    return str(with_it.text).removeprefix(str(without.text)).strip()
