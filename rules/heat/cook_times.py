"""A time as a request states it and as an answer tells it."""

from __future__ import annotations

import math

from rules.book import Case, Part
from rules.errors import within
from rules.foods import dishes
from rules.model import Figure
from rules.physics.units import round_time_min, round_to
from rules.said import Said, Words, sentences, together

# what takes half as long again from frozen, beside meat; and where food never goes in frozen
FROZEN_FACTOR, FROZEN_TOO = 1.5, ("fish", "dumpling", "casserole")
THAWED_ONLY = ("slow_cook", "smoke", "fry", "sous_vide", "preserve")
SHORTEST_MIN, LONGEST_MIN = 1 / 60, 20_160.0
say = sentences("heat/cook_times")


def stated_span(case: Case) -> tuple[float, float] | None:
    """The time the cook gave [min], low and high, or None.

    raises: OutOfRange for a time under a second, over two weeks, or not a number
    """
    request = case.request
    if request.time_min is None:
        return None
    hint = "Give the time it takes where the recipe is right."
    ends = [
        within("cooking time", t, SHORTEST_MIN, LONGEST_MIN, "min", hint)
        for t in (request.time_min, request.time_min if request.time_high_min is None else request.time_high_min)
    ]
    return min(ends), max(ends)


def moved_span(base: tuple[float, float], pace: tuple[float, float, float]) -> tuple[float, float, float]:
    """A range of times at the baseline, moved by a pace that is itself uncertain: least, likely, most [min].

    base: low and high [min]; pace: time here over time at the baseline, least, likely, most
    The two have nothing to do with each other, so their ratios are added as squares: the toughest piece in the
    slowest pot is not what a cook plans by.
    source: jcgm-100-2008

    >>> [round(minutes) for minutes in moved_span((60.0, 90.0), (1.5, 2.0, 2.5))]
    [104, 150, 200]
    """
    (low, high), (least, likely, most) = base, pace
    middle = (low + high) / 2
    down = math.hypot(math.log(middle / low), math.log(likely / least))
    up = math.hypot(math.log(high / middle), math.log(most / likely))
    return middle * likely * math.exp(-down), middle * likely, middle * likely * math.exp(up)


def time_figures(case: Case, base: tuple[float, float], here: tuple[float, float, float]) -> tuple[Figure, Figure]:
    """The two figures every time is told by. base: low, high; here: low, likely, high [min]."""
    mid = sum(base) / 2
    low, likely, high = (round_time_min(t) for t in here)
    at_sea = round_time_min(mid) if not case.there.elevation_m else None
    label = say("time-at-the-baseline", baseline=case.baseline)
    return (
        Figure("cook_time", say("time-here"), likely, "min", low, high, sea_level=at_sea),
        Figure("baseline_time", label, round_time_min(mid), "min", *map(round_time_min, base)),
    )


def factor_figure(case: Case, likely: float, low: float, high: float) -> Figure:
    """The figure of a time that nothing tells: how many times as long as at the baseline, with its range."""
    mid, *ends = (round_to(factor, 0.01) for factor in (likely, low, high))
    return Figure("time_factor", say("against-the-baseline", baseline=case.baseline), mid, "factor", *ends)


def no_time(case: Case, factor: tuple[float, float, float], why: Words, *sources: str) -> Part:
    """By how much to lengthen a time that the cook knows, least, likely and most, where no table has one."""
    low, likely, high = factor
    figure = factor_figure(case, likely, low, high)
    return Part(figures=(figure,), because=together(say("no-time"), why), sources=sources)


def frozen_factor(case: Case, method: str) -> float:
    """How many times as long as a table's time for thawed food; 1 where it is not frozen, or must not go in so.

    source: fsis-big-thaw: meat from frozen takes about half as long again

    """
    raw = not {"meat", "poultry", "ground", "shellfish"}.isdisjoint(case.traits) or case.dish_class in FROZEN_TOO
    return FROZEN_FACTOR if case.request.frozen and raw and method not in THAWED_ONLY else 1.0


def from_frozen(case: Case, method: str) -> Words:
    """That the time reckons with frozen food, where it does."""
    return say("from-frozen") if frozen_factor(case, method) > 1 and stated_span(case) is None else ""


def check_step(case: Case) -> Said:
    """When to begin to check, and what shows that the dish is done."""
    return say("check", signs=dishes.check_of(case.request.dish, case.dish_class, case.request.method))
