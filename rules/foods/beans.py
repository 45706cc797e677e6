"""Dry beans: the boil that destroys their natural poison, and how long they take when they were not soaked."""

from __future__ import annotations

from functools import cache

from rules.book import Case
from rules.foods.dishes import Span, kin, sea_level_time
from rules.tables import read_csv

UNSOAKED = "tables/unsoaked_beans_common-practice.csv"

SOAK_H = (5, 12)
# the extension answer, and the U.S. handbook on toxins
BOIL_MIN = (10.0, 30.0)


def bare(case: Case) -> str:
    """The beans by name, without a "dried" that is said beside it.

    >>> from rules.model import Request
    >>> bare(Case(Request(dish="dried beans"))), bare(Case(Request(dish="kidney beans")))
    ('beans', 'kidney beans')
    """
    return (case.request.dish or "beans").removeprefix("dried ")


def first_boil(case: Case) -> str:
    """What is done with dry beans before any gentle cooking, by both agencies.

    source: fda-bad-bug-book, usu-ask-extension
    """
    low, high = BOIL_MIN
    return (
        f"Soak them {SOAK_H[0]} to {SOAK_H[1]} h, pour the water away, and boil them hard in fresh water: "
        f"{high:.0f} min by FDA, {low:.0f} min at the very least by extension advice. Take the "
        f"{high:.0f} min{_here(case)}."
    )


def _here(case: Case) -> str:
    """Why the longer of the two counts, where the boil is lower."""
    lower = case.sea.boiling_c - case.here.boiling_c > 3
    return f" at {case.place}, where water boils at {case.say.temp(case.here.boiling_c)}" if lower else ""


@cache
def _unsoaked() -> dict[tuple[str, str], Span]:
    table = read_csv(UNSOAKED)
    return {(r["dish"], r["method"]): Span(float(r["low_min"]), float(r["high_min"]), table.source) for r in table.rows}


def unsoaked_time(dish: str | None, dish_class: str, method: str) -> Span | None:
    """Time at sea level of beans that were not soaked [min]; None for other food and where no table has one.

    A dish of beans whose own time is longer keeps its own.
    source: common-practice

    >>> unsoaked_time("black beans", "dried_bean", "pressure_cook").low_min
    20.0
    """
    if dish_class != "dried_bean":
        return None
    names = (*kin(dish), f"class:{dish_class}")
    found = next((_unsoaked()[name, method] for name in names if (name, method) in _unsoaked()), None)
    soaked = sea_level_time(dish, dish_class, method)
    return None if found and soaked and soaked.high_min >= found.high_min else found
