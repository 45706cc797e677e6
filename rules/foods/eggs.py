"""Eggs in the shell: the time follows the heat on its way to the yolk, not a rate of softening."""

from __future__ import annotations

import math

from rules.book import Case, Part, rule
from rules.foods import dishes
from rules.heat.cook_times import stated_span, time_figures
from rules.model import Caution, Figure
from rules.physics import conduction
from rules.physics.units import round_time_min, to_c
from rules.say import duration, duration_span, number

FRIDGE_C, ROOM_C = 4.0, 21.0
LARGE_G = 56.7
MEDIUM_G, EXTRA_LARGE_G = 49.6, 63.8
YOLK_C = {"soft": 63.0, "medium": 70.0, "hard": 77.0}
PUBLISHED_FT_M = 1524.0


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


def wanted(dish: str | None) -> tuple[str, ...]:
    """How the yolk is wanted, by the name of the dish; soft and hard where it does not say.

    >>> wanted("soft-boiled eggs"), wanted("eggs")
    (('soft',), ('soft', 'hard'))
    """
    names = dishes.kin(dish)
    return tuple(done for done in YOLK_C if any(done in name for name in names)) or ("soft", "hard")


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
    rows = {done: dishes.sea_level_time(f"{done}-boiled eggs", "", "boil") for done in YOLK_C}
    own = dishes.sea_level_time(case.request.dish, case.dish_class, "boil")
    asked = wanted(case.request.dish)
    if own is None:
        return None
    ends_c = [YOLK_C[asked[0]], YOLK_C[asked[-1]]]
    base = [
        t * slowdown(case.there.boiling_c, case.sea.boiling_c, c)
        for t, c in zip((own.low_min, own.high_min), ends_c, strict=True)
    ]
    here = [
        t * slowdown(case.here.boiling_c, case.sea.boiling_c, c)
        for t, c in zip((own.low_min, own.high_min), ends_c, strict=True)
    ]
    by_yolk = []
    for done, row in rows.items():
        if row is None or own.source != row.source or (len(asked) == 1 and done != asked[0]):
            continue
        times = (row.low_min, (row.low_min + row.high_min) / 2, row.high_min)
        low, mid, high = (t * slowdown(case.here.boiling_c, case.sea.boiling_c, YOLK_C[done]) for t in times)
        by_yolk.append(_figure(done, low, mid, high, times[1]))
    told = " or ".join(
        f"{duration_span(f.low or f.value, f.high or f.value)} for a {f.id.split('_')[0]} yolk"
        for f in by_yolk
        if f.id.split("_")[0] in asked
    )
    plain = case.request.dish in (None, "eggs") or (case.request.dish or "").endswith("-boiled eggs")
    return Part(
        figures=(
            *time_figures(case, (base[0], base[1]), (here[0], sum(here) / 2, here[1])),
            *(by_yolk if plain else ()),
        ),
        headline=f"At {case.place} boil eggs from the fridge {told}." if plain and told else "",
        because=_why(case, YOLK_C[asked[-1]], f"a {asked[-1]}"),
        maths=_maths(case, YOLK_C[asked[-1]]),
    )


def _figure(done: str, low: float, mid: float, high: float, sea: float) -> Figure:
    return Figure(
        f"{done}_egg_time",
        f"{done.capitalize()} yolk, from the fridge, smaller to larger eggs",
        round_time_min(mid),
        "min",
        round_time_min(low),
        round_time_min(high),
        round_time_min(sea),
    )


def _scaled(case: Case, stated: tuple[float, float], yolk_c: float) -> Part:
    factor = slowdown(case.here.boiling_c, case.there.boiling_c, yolk_c)
    low, high = (t * factor for t in stated)
    return Part(
        figures=time_figures(case, stated, (low, (low + high) / 2, high)),
        because=_why(case, yolk_c, "the same"),
        maths=_maths(case, yolk_c),
    )


def _why(case: Case, yolk_c: float, done: str) -> str:
    here_c, there_c = case.here.boiling_c, case.there.boiling_c
    times = [conduction.egg_time_min(LARGE_G, FRIDGE_C, c, yolk_c) for c in (here_c, there_c)]
    sizes = [(grams / LARGE_G) ** (2 / 3) - 1 for grams in (MEDIUM_G, EXTRA_LARGE_G)]
    room = conduction.egg_time_min(LARGE_G, ROOM_C, here_c, yolk_c) / times[0] - 1
    percent = number(abs(times[0] / times[1] - 1) * 100, 0)
    pace = (
        f"Water at {case.say.temp(here_c)} drives heat to the yolk {'slower' if here_c < there_c else 'faster'}: "
        f"{percent} % {'more' if here_c < there_c else 'less'} time than at {case.baseline} for {done} yolk."
        if case.moved
        else f"Water boils here as at {case.baseline}, so the time stays."
    )
    return (
        f"The yolk sets at the same temperature everywhere. {pace} The range covers the size of the egg: a medium egg "
        f"takes {number(-sizes[0] * 100, 0)} % less than a large one, an extra large {number(sizes[1] * 100, 0)} % "
        f"more, and eggs at room temperature {number(-room * 100, 0)} % less."
    )


def _maths(case: Case, yolk_c: float) -> str:
    here_c = case.here.boiling_c
    minutes = conduction.egg_time_min(LARGE_G, FRIDGE_C, here_c, yolk_c)
    return (
        f"t = 0.451·{number(LARGE_G, 1)}^(2/3)·ln(0.76·({number(here_c, 1)} − 4)/({number(here_c, 1)} − "
        f"{number(yolk_c, 0)})) = {number(minutes, 1)} min to the edge of the yolk."
    )


@rule("boil.egg_steps", "common-practice")
def steps(case: Case) -> Part | None:
    """How to boil an egg so that the time means something."""
    if case.dish_class != "egg":
        return None
    return Part(
        steps=(
            "Lower the eggs into water at a full boil and start the clock.",
            "Put them in cold water when the time is up, or they go on cooking.",
        )
    )


@rule("boil.egg_published", "csu-high-altitude-food-prep")
def published(case: Case) -> Part | None:
    """The published rule for eggs, which is more generous than the heat needs."""
    if case.dish_class != "egg" or case.here.elevation_m < PUBLISHED_FT_M / 2:
        return None
    factor = slowdown(case.here.boiling_c, case.sea.boiling_c, YOLK_C["soft"])
    return Part(
        because="Extension advice is more generous: a three-minute egg may take five at 5,000 ft. By heat alone the "
        f"three minutes become {duration(3 * factor)} here, so open one egg to be sure."
    )


@rule("egg.sauce_safety", "usda-fsis-safe-temperatures")
def sauce_safety(case: Case) -> Part | None:
    """Sauces of egg that is barely cooked."""
    if "raw_egg" not in case.traits or case.dish_class == "egg":
        return None
    text = f"Use pasteurised eggs, or bring it to {case.say.temp(to_c(160))}: barely cooked egg can carry salmonella."
    return Part(cautions=(Caution("note", text, ("usda-fsis-safe-temperatures",)),))


@rule("boil.egg_safety", "usda-fsis-safe-temperatures")
def safety(case: Case) -> Part | None:
    """The safe egg, at any elevation."""
    if case.dish_class != "egg":
        return None
    return Part(
        cautions=(
            Caution(
                "note",
                "The safe egg has a firm white and a firm yolk, at every elevation; for small children, the old, the "
                "pregnant and the ill serve no runny yolk.",
                ("usda-fsis-safe-temperatures",),
            ),
        )
    )
