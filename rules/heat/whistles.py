"""Whistles of a cooker with a weight or a spring valve: what time they stand for, and how many it takes here."""

from __future__ import annotations

from dataclasses import replace

from rules.book import Case, Part, rule
from rules.heat.cook_times import LONGEST_MIN
from rules.heat.pressure import gauge_pa, heats, published_percent
from rules.heat.wet import WetTime, wet_time
from rules.model import Figure, Request
from rules.physics.units import round_to
from rules.said import Said, duration, duration_span, number, sentences, temp, yes

# what one stands for at pressure on a medium flame [min]. The first only tells that the pressure is there, and what
# cooks while the pressure falls by itself is worth about one.
WHISTLE_MIN = (3.0, 4.0)
MIDDLE_MIN = sum(WHISTLE_MIN) / 2
# how far apart they really come, by flame, load and weight [min]
WIDE_MIN = (2.0, 6.0)
# more than anybody counts
MOST = int(LONGEST_MIN / WHISTLE_MIN[1])
NO_WHISTLE = ("electric_pressure_cooker", "commercial_pressure_steamer")
say = sentences("heat/whistles")


def count_of(time_min: float) -> int:
    """How many whistles stand for a time at pressure [min], at least one.

    >>> count_of(21), count_of(0.5)
    (6, 1)
    """
    return max(1, int(round_to(time_min / MIDDLE_MIN, 1)))


def in_minutes(case: Case) -> Case:
    """The same question with the minutes that the cook's whistles stand for, added to those told beside them."""
    request = case.request
    if not request.whistles or not whistles_told(request):
        return case
    low, high = request.time_min or 0.0, request.time_high_min or request.time_min or 0.0
    told = (low + request.whistles * WHISTLE_MIN[0], high + request.whistles * WHISTLE_MIN[1])
    return Case(replace(request, whistles=0, time_min=told[0], time_high_min=told[1]))


def whistles_told(request: Request) -> bool:
    """Whether whistles are counted or asked for, of a cooker that has any."""
    whistles = request.whistles
    return whistles is not None and whistles <= MOST and not any(id in NO_WHISTLE for id in request.equipment)


@rule("pressure_cook.whistles", "from-memory", "anderson-1980-altitude")
def whistles(case: Case) -> Part | None:
    """How many whistles it takes here, and what time they stand for."""
    if not whistles_told(case.request):
        return None
    inside = heats(case, gauge_pa(case))
    time = wet_time(in_minutes(case), inside)
    if time is None:
        return None
    base = count_of(time.base_mid_min)
    low, here, high = counts(case, time)
    return Part(
        figures=(
            Figure(
                "whistles", say("label"), here, "count", low, high, sea_level=None if case.there.elevation_m else base
            ),
        ),
        headline=headline(case, time, (low, here, high)),
        because=say(
            "because",
            low=number(WHISTLE_MIN[0]),
            high=number(WHISTLE_MIN[1]),
            place=case.place,
            here=temp(inside.here_c),
            way="cooler" if inside.there_c - inside.here_c > 0.25 else "same",
            there=temp(inside.there_c),
            baseline=case.baseline,
        ),
        steps=steps(case, time, low, here),
    )


def counts(case: Case, time: WetTime) -> tuple[int, int, int]:
    """Whistles here: the fewest, the likely, the most; the fewest by the published rule where it says less."""
    base = time.base_mid_min
    percent = published_percent(case.here.elevation_m) - published_percent(case.there.elevation_m)
    gentle = base * (1 + max(0, percent) / 100)
    ends = [time.low_min / time.base_low_min, time.high_min / time.base_high_min]
    here = count_of(time.likely_min)
    fewest = count_of(min(gentle, base * min(ends))) if time.likely_min >= base else count_of(base * min(ends))
    return min(fewest, here), here, max(here, count_of(base * max(ends)))


def headline(case: Case, time: WetTime, counted: tuple[int, int, int]) -> Said:
    """About so many whistles, or so many minutes at pressure."""
    low, here, high = counted
    base = count_of(time.base_mid_min)
    return say(
        "headline",
        count=here,
        ranged=yes(low != high),
        low=low,
        high=high,
        food=case.food,
        place=case.place,
        minutes=duration(time.likely_min),
        against="nothing" if not case.moved else "same" if here == base else "other",
        base=base,
        baseline=case.baseline,
    )


def steps(case: Case, time: WetTime, low: int, here: int) -> tuple[Said, ...]:
    """Go by the clock; and where the count is wide, try it early."""
    clock = say(
        "by-the-clock",
        minutes=duration_span(time.low_min, time.high_min),
        low=number(WIDE_MIN[0]),
        high=number(WIDE_MIN[1]),
    )
    return (clock, say("try-early", count=low)) if low < here else (clock,)
