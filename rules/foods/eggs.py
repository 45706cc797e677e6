"""Eggs in the shell: the time follows the heat on its way to the yolk, not a rate of softening."""

from __future__ import annotations

import math
from functools import cache

from rules.book import Case, Part, rule
from rules.foods import dishes
from rules.heat.cook_times import stated_span, time_figures
from rules.heat.headline import about
from rules.heat.where_water_boils import boils_alike
from rules.model import Caution, Figure
from rules.physics import conduction
from rules.physics.units import round_time_min, to_c
from rules.said import Said, Words, duration, listed, number, sentences, temp, together
from rules.tables import read_csv

FRIDGE_C, ROOM_C = 4.0, 21.0
LARGE_G = 56.7
MEDIUM_G, EXTRA_LARGE_G = 49.6, 63.8
YOLK_C = {"soft": 63.0, "medium": 70.0, "hard": 77.0}
PUBLISHED_M = 1524.0
SAFE_C = to_c(160)
YOLKS = "tables/yolks_common-practice.csv"
# the row of eggs of which nothing more is told
PLAIN = "eggs"
say = sentences("foods/eggs")


def slowdown(water_c: float, reference_c: float, yolk_c: float) -> float:
    """How many times longer a large egg from the fridge takes in water at water_c than at reference_c [degC].

    yolk_c: temperature at which the edge of the yolk is as wanted [degC], 63 soft to 77 hard
    raises: OutOfRange where the water is no hotter than the yolk is to be
    source: williams-egg

    >>> round(slowdown(92.87, 99.97, 63), 2)
    1.2
    """
    here, there = (conduction.egg_time_min(LARGE_G, FRIDGE_C, c, yolk_c) for c in (water_c, reference_c))
    return here / there


def yolk_edge_c(time_min: float, water_c: float) -> float:
    """Temperature at the edge of the yolk of a large egg from the fridge after so long, kept from soft to hard [degC].

    source: williams-egg, solved for the yolk

    >>> round(yolk_edge_c(conduction.egg_time_min(LARGE_G, FRIDGE_C, 95, 70), 95), 6)
    70.0
    """
    scale_min = conduction.egg_time_min(LARGE_G, FRIDGE_C, water_c, YOLK_C["soft"]) / math.log(
        conduction.EGG_YOLK_FACTOR * (water_c - FRIDGE_C) / (water_c - YOLK_C["soft"])
    )
    edge_c = water_c - conduction.EGG_YOLK_FACTOR * (water_c - FRIDGE_C) * math.exp(-time_min / scale_min)
    return min(max(edge_c, YOLK_C["soft"]), YOLK_C["hard"])


@cache
def _wanted() -> dict[str, tuple[str, ...]]:
    return {row["dish"]: tuple(row["yolks"].split()) for row in read_csv(YOLKS).rows}


def wanted(dish: str | None) -> tuple[str, ...]:
    """How the yolk is wanted in a dish; soft and hard where nothing tells.

    >>> wanted("soft-boiled eggs"), wanted("eggs")
    (('soft',), ('soft', 'hard'))
    """
    return next((_wanted()[name] for name in (*dishes.kin(dish), PLAIN) if name in _wanted()), ())


def in_shell(dish: str | None) -> bool:
    """Whether a dish is eggs in the shell, told by their yolk.

    >>> in_shell("soft-boiled eggs"), in_shell("poached eggs")
    (True, False)
    """
    return dish in _wanted()


def of_yolk(yolk: str) -> str:
    """The dish whose yolk is so: soft, medium or hard.

    >>> of_yolk("hard")
    'hard-boiled eggs'
    """
    return next(dish for dish, yolks in _wanted().items() if yolks == (yolk,))


def usual_min(yolk: str) -> float:
    """The middle of the usual time in water at a full boil at sea level [min], for a soft, medium or hard yolk.

    source: common-practice

    >>> usual_min("hard")
    10.5
    """
    row = dishes.sea_level_time(of_yolk(yolk), "egg", "boil")
    return (row.low_min + row.high_min) / 2 if row else 0.0


@rule("boil.egg", "williams-egg", "common-practice")
def time(case: Case) -> Part | None:
    """How long an egg takes here: its time at the baseline, slowed as heat on its way to the yolk is."""
    if case.dish_class != "egg":
        return None
    stated = stated_span(case)
    if stated is None:
        return _by_table(case)
    yolk_c = yolk_edge_c(sum(stated) / 2, case.there.boiling_c)
    return _scaled(case, stated, yolk_c)


def _by_table(case: Case) -> Part | None:
    own = dishes.sea_level_time(case.request.dish, case.dish_class, "boil")
    if own is None:
        return None
    asked = wanted(case.request.dish)
    ends = tuple(zip((own.low_min, own.high_min), (YOLK_C[asked[0]], YOLK_C[asked[-1]]), strict=True))
    base_low, base_high = (t * slowdown(case.there.boiling_c, case.sea.boiling_c, c) for t, c in ends)
    here = [t * slowdown(case.here.boiling_c, case.sea.boiling_c, c) for t, c in ends]
    plain = (case.request.dish or PLAIN) in _wanted()
    by_yolk = _by_yolk(case, own.source, asked if len(asked) == 1 else tuple(YOLK_C)) if plain else {}
    told = [say("for-a-yolk", time=about(f), yolk=done) for done, f in by_yolk.items() if done in asked]
    return Part(
        figures=(*time_figures(case, (base_low, base_high), (here[0], sum(here) / 2, here[1])), *by_yolk.values()),
        headline=say("headline", place=case.place, times=listed(told, "or")) if told else "",
        because=_why(case, YOLK_C[asked[-1]], asked[-1]),
        maths=_maths(case, YOLK_C[asked[-1]]),
    )


def _by_yolk(case: Case, source: str, asked: tuple[str, ...]) -> dict[str, Figure]:
    """The time here for each yolk that is asked for, where one source gives them all."""
    dish_of = {yolks[0]: dish for dish, yolks in _wanted().items() if len(yolks) == 1}
    rows = {done: dishes.sea_level_time(dish_of[done], "", "boil") for done in asked}
    return {done: _figure(case, done, row) for done, row in rows.items() if row and row.source == source}


def _figure(case: Case, done: str, at_sea: dishes.Span) -> Figure:
    slower = slowdown(case.here.boiling_c, case.sea.boiling_c, YOLK_C[done])
    mid = (at_sea.low_min + at_sea.high_min) / 2
    here, low, high = (round_time_min(t * slower) for t in (mid, at_sea.low_min, at_sea.high_min))
    return Figure(f"{done}_egg_time", say("yolk-label", yolk=done), here, "min", low, high, round_time_min(mid))


def _scaled(case: Case, stated: tuple[float, float], yolk_c: float) -> Part:
    factor = slowdown(case.here.boiling_c, case.there.boiling_c, yolk_c)
    low, high = (t * factor for t in stated)
    return Part(
        figures=time_figures(case, stated, (low, (low + high) / 2, high)),
        because=_why(case, yolk_c, "same"),
        maths=_maths(case, yolk_c),
    )


def _why(case: Case, yolk_c: float, done: str) -> Words:
    """Why it takes so long. done: the yolk that is spoken of, or `same` where it is the cook's own."""
    here_c, there_c = case.here.boiling_c, case.there.boiling_c
    here, there, room = (
        conduction.egg_time_min(LARGE_G, start_c, water_c, yolk_c)
        for start_c, water_c in ((FRIDGE_C, here_c), (FRIDGE_C, there_c), (ROOM_C, here_c))
    )
    medium, extra_large = ((grams / LARGE_G) ** (2 / 3) - 1 for grams in (MEDIUM_G, EXTRA_LARGE_G))
    pace = say(
        "pace",
        water=temp(here_c),
        way="slower" if here_c < there_c else "faster",
        percent=number(abs(here / there - 1) * 100, 0),
        baseline=case.baseline,
        yolk=done,
    )
    sizes = say(
        "sizes",
        medium=number(-medium * 100, 0),
        extra_large=number(extra_large * 100, 0),
        room=number((1 - room / here) * 100, 0),
    )
    return together(say("sets"), pace if case.moved else boils_alike(case), sizes)


def _maths(case: Case, yolk_c: float) -> Said:
    here_c = case.here.boiling_c
    minutes = conduction.egg_time_min(LARGE_G, FRIDGE_C, here_c, yolk_c)
    return say(
        "maths", grams=number(LARGE_G, 1), water=number(here_c, 1), yolk=number(yolk_c, 0), minutes=number(minutes, 1)
    )


@rule("boil.egg_steps", "common-practice")
def steps(case: Case) -> Part | None:
    """How to boil an egg so that the time means something."""
    return Part(steps=(say("full-boil"), say("cold-water"))) if case.dish_class == "egg" else None


@rule("boil.egg_published", "csu-high-altitude-food-prep")
def published(case: Case) -> Part | None:
    """The published rule for eggs, which is more generous than the heat needs."""
    if case.dish_class != "egg" or case.here.elevation_m < PUBLISHED_M / 2:
        return None
    factor = slowdown(case.here.boiling_c, case.sea.boiling_c, YOLK_C["soft"])
    return Part(because=say("published", time=duration(3 * factor)))


@rule("egg.sauce_safety", "usda-fsis-safe-temperatures")
def sauce_safety(case: Case) -> Part | None:
    """Sauces of egg that is barely cooked."""
    if "raw_egg" not in case.traits or case.dish_class == "egg":
        return None
    return Part(cautions=(Caution("note", say("sauce-safety", safe=temp(SAFE_C)), ("usda-fsis-safe-temperatures",)),))


@rule("boil.egg_safety", "usda-fsis-safe-temperatures")
def safety(case: Case) -> Part | None:
    """The safe egg, at any elevation."""
    if case.dish_class != "egg":
        return None
    return Part(cautions=(Caution("note", say("safety"), ("usda-fsis-safe-temperatures",)),))
