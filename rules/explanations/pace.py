"""How much longer what softens in hot water takes here: each food by its own softening rate."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from rules.book import Case
from rules.explanations.named import FigureOf, Figures, ValueOf, Values, always
from rules.heat.cook_times import moved_span
from rules.model import Figure
from rules.physics import kinetics
from rules.physics.units import round_to
from rules.said import Said, Value, duration, duration_span, fixed, number, sentences, temp, temp_drop, yes

FOODS = {
    "pasta": "pasta",
    "rice": "rice",
    "potatoes": "starchy_root",
    "roots": "root_vegetable",
    "tender_vegetables": "tender_vegetable",
    "beans": "dried_bean",
    "tough_cuts": "collagen_cut",
    "stock": "stock",
}
# foods whose paces stand beside one another
BESIDE_OTHERS = ("pasta", "potatoes", "beans")
BOX_MIN = 10.0
BRAISE_MIN = (150.0, 180.0)
TIMES_FROM = 1.9

say = sentences("why/shared")


@dataclass(frozen=True, slots=True)
class Pace:
    """How many times as long a food takes at the boil here as at sea level: least, likely, most."""

    soft: kinetics.Softening
    low: float
    likely: float
    high: float


def pace(case: Case, food: str) -> Pace:
    """The pace of a food at the boil here, by the softening rate of its class."""
    soft = kinetics.softening(FOODS[food])
    low, likely, high = (
        kinetics.rate_factor(case.here.boiling_c, case.sea.boiling_c, z)
        for z in (soft.z_high_k, soft.z_k, soft.z_low_k)
    )
    return Pace(soft, min(low, high), likely, max(low, high))


def told(of: Pace) -> Said:
    """What stands after "takes": "10 to 30 % longer", "2.4 to 2.8 times as long", "3 to 8 % less time"."""
    if of.high >= TIMES_FROM:
        return say("pace", span=span(of.low, of.high, 0.1), way="times")
    near, far = sorted((abs(of.low - 1) * 100, abs(of.high - 1) * 100))
    return say("pace", span=span(near, far, 1 if far < 10 else 5), way="less" if of.likely < 1 else "longer")


def span(low: float, high: float, step: float) -> Said:
    """Two numbers as a range, each rounded to the step and at least one step; about one where they agree."""
    near, far = (number(max(step, round_to(end, step))) for end in (low, high))
    return say("span", low=near, high=far, ends="one" if near == far else "two")


def rate(case: Case, of: Pace) -> Said:
    """The softening rate with its numbers."""
    return say(
        "rate",
        sea=fixed(case.sea.boiling_c),
        here=fixed(case.here.boiling_c),
        z=number(of.soft.z_k),
        z_low=number(of.soft.z_low_k),
        z_high=number(of.soft.z_high_k),
        likely=fixed(of.likely),
        low=fixed(of.low),
        high=fixed(of.high),
    )


def factor(figure_id: str, food: str) -> FigureOf:
    """The factor on the time of a food, with its range."""

    def figure(case: Case) -> Figure:
        of = pace(case, food)
        ends = round(of.low, 2), round(of.high, 2)
        return Figure(figure_id, "", round(of.likely, 2), "factor", *ends, sea_level=1.0)

    return figure


def of_each(make: Callable[[str], ValueOf], prefix: str) -> Values:
    """A value for every food, by the prefix and the name of the food."""
    return {f"{prefix}_{food}": make(food) for food in FOODS}


def threshold_c(food: str) -> float:
    """Under what temperature a food hardly softens at all [degC]; 0 where none is known."""
    return kinetics.softening(FOODS[food]).threshold_c or 0.0


def stretched(case: Case, food: str, low_min: float, high_min: float) -> Value:
    """What a time of sea level [min] becomes here."""
    of = pace(case, food)
    low, _, high = moved_span((low_min, high_min), (of.low, of.likely, of.high))
    return duration_span(low, high)


VALUES: Values = {
    **of_each(lambda food: lambda case: told(pace(case, food)), "pace_of"),
    **of_each(lambda food: lambda case: rate(case, pace(case, food)), "rate_of"),
    "beans_need": lambda case: temp(threshold_c("beans")),
    "beans_soften": lambda case: yes(case.here.boiling_c >= threshold_c("beans")),
    "beans_tenfold": lambda case: temp_drop(kinetics.softening(FOODS["beans"]).z_k),
    "box_time": always(duration(BOX_MIN)),
    "box_time_here": lambda case: stretched(case, "pasta", BOX_MIN, BOX_MIN),
    "braise_time": lambda case: stretched(case, "tough_cuts", *BRAISE_MIN),
    "braise_time_at_sea": always(duration_span(*BRAISE_MIN)),
}
FIGURES: Figures = {
    **{f"{food}_beside_others": factor(f"{food}_time_factor", food) for food in BESIDE_OTHERS},
    "root_time_factor": factor("root_time_factor", "roots"),
    "tender_time_factor": factor("tender_time_factor", "tender_vegetables"),
    **{f"time_factor_of_{food}": factor("time_factor", food) for food in FOODS if food != "roots"},
}
