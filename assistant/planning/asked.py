"""What is asked of a menu, told in figures: how many guests, what margin, what the kitchen has; and its plan."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Sequence
from datetime import datetime
from typing import Any

from assistant.errors import AssistantError
from assistant.planning.fitting_solved import NothingSolves
from assistant.planning.menu import MOST_COVERS, Menu, MenuLine
from assistant.planning.plan import Has, Plan, plan
from rules.amounts.oven_room import SHELVES

MOST_OF_A_THING, MOST_MARGIN = 100, 1.0
MARGIN = "5%"
_MARGIN = re.compile(r"\s*(\d+(?:\.\d+)?)\s*(%?)\s*")


class BadFigure(AssistantError, ValueError):
    """A figure that no kitchen has. name: what it is; value: as it was told; why: what is wrong, and what would do"""

    def __init__(self, name: str, value: object, why: str) -> None:
        super().__init__(name, value, why)
        self.name, self.value, self.why = name, value, why

    def __str__(self) -> str:
        return f"{self.name} {self.value} {self.why}"


def check_covers(covers: int | None) -> None:
    """Nothing, for a number of guests that somebody may cook for, or none.

    raises: BadFigure
    """
    if covers is not None and not 1 <= covers <= MOST_COVERS:
        raise BadFigure("covers", covers, f"is nobody to cook for; give a number from 1 to {MOST_COVERS:,}")


def margin_told(text: str) -> float:
    """A margin as a share: 5%, 5, 0.05 are the same.

    raises: BadFigure

    >>> margin_told("5%"), margin_told("0.05")
    (0.05, 0.05)
    """
    found = _MARGIN.fullmatch(text)
    figure = float(found[1]) if found else -1.0
    share = figure if found and not found[2] and 0 < figure < 1 else figure / 100
    if not 0 <= share <= MOST_MARGIN:
        raise BadFigure("margin", text, "is no margin; give a percentage from 0 to 100, such as 5%")
    return share


def has_told(ovens: int, burners: int, cooks: int, shelves: int = SHELVES) -> Has:
    """What a kitchen has.

    raises: BadFigure
    """
    told = (("ovens", ovens, 0), ("burners", burners, 0), ("cooks", cooks, 1), ("shelves", shelves, 1))
    for name, count, least in told:
        if not least <= count <= MOST_OF_A_THING:
            raise BadFigure(name, count, f"is no kitchen; give a number from {least} to {MOST_OF_A_THING}")
    return Has(ovens, burners, cooks, shelves)


def planned(
    menu: Menu,
    service: datetime,
    now: datetime,
    *,
    elevation_m: float,
    covers: int | None,
    has: Has,
    watched: Callable[[Sequence[MenuLine]], Iterable[MenuLine]] = iter,
) -> tuple[Plan, str]:
    """The plan of a menu, and what is to be said of how it was made: "" unless scipy is not installed."""
    asked: dict[str, Any] = {
        "elevation_m": elevation_m, "covers": covers, "has": has, "made_at": now, "watched": watched,
    }  # fmt: skip
    try:
        return plan(menu, service, **asked), ""
    except NothingSolves as fault:
        return plan(menu, service, solve=False, **asked), f"{fault}; dishes were placed one after the other instead"
