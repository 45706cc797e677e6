"""Time in dry heat and hot fat: what fry, roast, bake, grill and smoke have in common.

The air or fat is as hot as it is set, anywhere. But food is mostly water, and while its surface is wet it stays at or
under the boil, so the middle is driven by a lower temperature the higher one climbs. How much that tells depends on
the food; a pace gives the time here over the time at sea level, least, likely and most.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass
from functools import cache

from rules import safety
from rules.book import Case, Part, celsius, rule
from rules.errors import within
from rules.foods import dishes
from rules.foods.methods import methods
from rules.heat.cook_times import (
    check_step,
    from_frozen,
    frozen_factor,
    moved_span,
    no_time,
    stated_span,
    time_figures,
)
from rules.heat.equipment import AIR_FRYER
from rules.heat.headline import takes
from rules.heat.heat_settings import Setting, setting
from rules.heat.roast_weights import by_weight, printed_oven_c
from rules.model import Figure, Sentence
from rules.physics import conduction, kinetics
from rules.physics.ambient import Ambient, ambient
from rules.physics.units import FT_PER_M, round_to
from rules.said import Measure, Said, Words, number, sentences, together
from rules.tables import read_csv

say = sentences("heat/dry")

DONE = "tables/done_centres_common-practice.csv"
COLDEST_C, HOTTEST_C = 20.0, 350.0
FRIDGE_C, HALF_MM, DIFFUSIVITY_M2_S = 5.0, 25.0, 1.3e-7
FAN_OVEN, FAN_PART = "convection_oven", 0.8
# whose fan is part of it, and what is heated by a fire within
OTHER_CHAMBERS = (AIR_FRYER, "wood_fired_oven")
HEATED_THROUGH_Z_K = 100.0
HOT_THROUGH_C = 73.9
DRY_AIR_FT = 2500.0
# an oven that is hardly hotter than the joint is to be, in which it is held and not roasted [K]
LEAST_OVER_DONE_K = 25.0


@dataclass(frozen=True, slots=True)
class Pace:
    """Time in one air over the time at sea level: least, likely, most; all 1 at sea level."""

    low: float
    likely: float
    high: float


@dataclass(frozen=True, slots=True)
class DryTime:
    """A time in dry heat [min], at the baseline and here, each with its range."""

    base_low_min: float
    base_high_min: float
    low_min: float
    likely_min: float
    high_min: float
    source: str

    @property
    def factor(self) -> float:
        """Likely time here over the middle of the baseline range."""
        return self.likely_min / ((self.base_low_min + self.base_high_min) / 2)


PaceOf = Callable[[Ambient], Pace]


def heated_through(dish_class: str, dish: str | None = None) -> bool:
    """Whether a food is done when heat has reached its centre, and does not have to soften.

    >>> heated_through("poultry_pieces"), heated_through("collagen_cut")
    (True, False)
    """
    hot_is_done = "done_when_hot" in dishes.traits_of(dish, dish_class)
    return hot_is_done or kinetics.softening(dish_class).z_k >= HEATED_THROUGH_Z_K


def core_c(dish: str | None, dish_class: str) -> float:
    """The temperature of the centre that such a food is cooked to [degC]: the safe one where there is one."""
    safe = safety.safe_temperature(dish, dish_class) if dish_class not in _done_c() else None
    return safe.temp_c if safe else _done_c().get(dish_class, HOT_THROUGH_C)


@cache
def _done_c() -> dict[str, float]:
    return {row["dish_class"]: float(row["temp_c"]) for row in read_csv(DONE).rows}


def centre_minutes(air: Ambient, target_c: float) -> float:
    """Time for the centre of a piece 5 cm thick from the fridge to get hot behind a wet surface at the boil [min].

    source: carslaw-jaeger
    """
    return conduction.time_to_centre_min("slab", HALF_MM, DIFFUSIVITY_M2_S, FRIDGE_C, air.boiling_c, target_c)


def wet_surface_pace(case: Case) -> PaceOf:
    """The pace of food whose wet surface holds it at or under the boil while the middle gets hot, or soft.

    Least: the surface dries at once, and nothing changes. Most: it stays wet to the end.
    """
    soft, dish_class = kinetics.softening(case.dish_class), case.dish_class
    target_c = core_c(case.request.dish, dish_class)

    def pace(air: Ambient) -> Pace:
        sea = ambient(0.0)
        if "toasted" in case.traits:
            return Pace(1.0, 1.0, 1.0)
        if heated_through(dish_class, case.request.dish):
            full = centre_minutes(air, target_c) / centre_minutes(sea, target_c)
        else:
            full = kinetics.rate_factor(air.boiling_c, sea.boiling_c, soft.z_k)
        low, likely, high = sorted((1.0, full**0.5, full))
        return Pace(low, likely, high)

    return pace


def up_to_a_quarter(of: PaceOf) -> PaceOf:
    """A pace whose top takes in the published quarter more, reached at 5,000 ft (taken in proportion under it)."""

    def pace(air: Ambient) -> Pace:
        mine = of(air)
        quarter = 1 + 0.25 * min(1.0, max(0.0, air.elevation_m * FT_PER_M / 5000))
        return Pace(mine.low, mine.likely, max(mine.high, quarter))

    return pace


def dry_time(case: Case, method: str, pace: PaceOf) -> DryTime | None:
    """The time here; None where neither the cook nor the table gives one.

    raises: OutOfRange for a time that no kitchen has
    """
    stated = stated_span(case)
    weighed = by_weight(case.request, method)
    cut = dishes.cut_times(case.request.dish, method).get(case.request.cut or "")
    row = weighed or cut or dishes.sea_level_time(case.request.dish, case.dish_class, method)
    here, there = pace(case.here), pace(case.there)
    if stated:
        (low, high), source = stated, "common-practice"
    elif row:
        state = frozen_factor(case, method) * fan_factor(case) * other_oven_factor(case, method)
        low, high, source = row.low_min * there.likely * state, row.high_min * there.likely * state, row.source
    else:
        return None
    least, likely, most = sorted((here.low / there.low, here.likely / there.likely, here.high / there.high))
    return DryTime(low, high, *moved_span((low, high), (least, likely, most)), source)


def fan_factor(case: Case) -> float:
    """What part of a still oven's time a fan takes at the same setting; 1 where no fan runs, or its setting is unsaid.

    source: common-practice

    """
    if stated_span(case) is not None:
        return 1.0
    set_for_it = FAN_OVEN in case.request.equipment and case.request.temperature_c is not None
    return FAN_PART if set_for_it or AIR_FRYER in case.request.equipment else 1.0


def other_oven_factor(case: Case, method: str) -> float:
    """How many times as long a piece takes in an oven that is set otherwise than the one its time is known for.

    A time by weight follows the oven both ways; that of a joint without a weight in a cooler one only.
    source: carslaw-jaeger
    """
    heat, told = set_to(case, method)
    printed_c = printed_oven_c(case.request, method)
    if not told or (printed_c is None and (method != "roast" or "whole_cut" not in case.traits)):
        return 1.0
    usual_c = printed_c or setting(case.request.dish, case.dish_class, method).middle_c
    done_c = core_c(case.request.dish, case.dish_class)
    if heat.middle_c <= done_c + LEAST_OVER_DONE_K or (printed_c is None and heat.middle_c >= usual_c):
        return 1.0
    return to_the_middle(heat.middle_c, done_c) / to_the_middle(usual_c, done_c)


def to_the_middle(oven_c: float, done_c: float) -> float:
    """How long an oven takes to bring a thick piece from the fridge to done, to be held against another oven's.

    The middle follows the oven as ln((oven - raw) / (oven - done)), the slow end of heating a thick piece.
    source: carslaw-jaeger

    >>> to_the_middle(150.0, 60.0) > to_the_middle(200.0, 60.0)
    True
    """
    return math.log((oven_c - FRIDGE_C) / (oven_c - done_c))


def time_part(case: Case, method: str, pace: PaceOf, why: Words, *sources: str) -> Part:
    """The time with its figures and a headline; a factor where no time is known."""
    time = dry_time(case, method, pace)
    if time is None:
        here, there = pace(case.here), pace(case.there)
        ends = sorted(round_to(a / b, 0.01) for a, b in zip(_all(here), _all(there), strict=True))
        return no_time(case, (ends[0], ends[1], ends[2]), why, *sources)
    figures = time_figures(
        case, (time.base_low_min, time.base_high_min), (time.low_min, time.likely_min, time.high_min)
    )
    return Part(
        figures=figures,
        headline=takes(case, method, figures) if case.request.topic == "time" else "",
        because=together(why, from_frozen(case, method), say("by-fan") if fan_factor(case) < 1 else ""),
        sources=tuple(dict.fromkeys((time.source, *sources))),
    )


def nothing_differs(case: Case) -> Said:
    """Why the time stays where nothing is different here."""
    return say("nothing-differs", baseline=case.baseline)


def by_colour() -> Said:
    """How to tell when what browns and dries in the oven is done."""
    return say("by-colour")


def _all(pace: Pace) -> tuple[float, float, float]:
    return pace.low, pace.likely, pace.high


def set_to(case: Case, method: str) -> tuple[Setting, bool]:
    """The setting to work with, and whether the cook gave it. A temperature too low for the method is the core's.

    raises: OutOfRange for a temperature at which nothing is cooked
    """
    request = case.request
    usual, asked_c = setting(request.dish, case.dish_class, method, request.equipment), request.temperature_c
    if asked_c is None or COLDEST_C < asked_c < methods()[method].core_below_c:
        printed_c = printed_oven_c(request, method)
        return (usual if printed_c is None else Setting(printed_c, printed_c, usual.way)), False
    hint = "Give the setting of the oven, the grate or the fat."
    stated = within("temperature", asked_c, COLDEST_C, HOTTEST_C, "degC", hint)
    return Setting(stated, stated, usual.way), True


def setting_figure(figure_id: str, label: Sentence, of: Setting, sea: Setting | None = None) -> Figure:
    """The figure of a setting, with its range and what it is at sea level."""
    low, middle, high = (round(t, 2) for t in (of.low_c, of.middle_c, of.high_c))
    return Figure(figure_id, label, middle, "degC", low, high, round((sea or of).middle_c, 2))


def chamber_of(case: Case) -> str:
    """What stands for the oven, where it is set otherwise than one: an air fryer, a fire; else the oven."""
    return next((id for id in case.request.equipment if id in OTHER_CHAMBERS), "oven")


def oven_stays(case: Case, heat: Setting, baseline: str | Measure, because: Words) -> Part:
    """The oven setting where it is the same as at the baseline."""
    asked = case.request.topic == "temperature"
    return Part(
        figures=(setting_figure("oven", say("oven"), heat),),
        headline=say("oven-headline", setting=heat.span, food=case.food, place=case.place, baseline=baseline)
        if asked
        else "",
        steps=(say("oven-step", setting=heat.span, chamber=chamber_of(case)),),
        because=because,
    )


@rule("dry.core", "usda-fsis-safe-temperatures")
def core(case: Case) -> Part | None:
    """The safe temperature of the centre, which the clock never replaces."""
    safe = safety.safe_temperature(case.request.dish, case.dish_class)
    if (
        safe is None
        or not {"jerky", "by_eye"}.isdisjoint(case.traits)
        or not (safe.always_said or case.dish_class == "fish" or {"meat", "poultry"} & set(case.traits))
    ):
        return None
    return Part(figures=safe_figures("core_temperature", safe), cautions=(safety.caution(case, safe),))


def safe_figures(figure_id: str, safe: safety.SafeTemperature) -> tuple[Figure, ...]:
    """The safe temperature of the centre, and the rest that belongs to it."""
    rest = (Figure("rest_time", say("rest"), safe.rest_min, "min"),) if safe.rest_min else ()
    return (celsius(figure_id, say("safe"), safe.temp_c, safe.temp_c), *rest)


@rule("dry.check", "common-practice")
def check(case: Case) -> Part:
    """What shows that it is done."""
    return Part(steps=(check_step(case),))


def dries(case: Case) -> Words:
    """A sentence on drying, where the air is thin enough to tell; empty elsewhere."""
    if case.here.elevation_m * FT_PER_M < DRY_AIR_FT:
        return ""
    from rules.physics.evaporation import drying_ratio

    return say("dries", percent=number(round_to((drying_ratio(case.here.elevation_m) - 1) * 100, 5)))
