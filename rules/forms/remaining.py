"""How long is still to go, where it has been cooking for some time: what it takes in all, less what it has had."""

from __future__ import annotations

from rules.book import Part, rule
from rules.foods.dishes import traits_of, usual_method
from rules.forms import WRONG, Asked
from rules.forms.changes import out_of_reach
from rules.heat.headline import about, doing, middle
from rules.heat.pressure import STOVE_TOP_GAUGE_PA
from rules.model import Figure, Request
from rules.physics.units import round_time_min
from rules.said import Words, duration, duration_span, gauge, number, sentences, together

say = sentences("forms/remaining")

# from when a time counts, by method
COUNTED_FROM = {
    **dict.fromkeys(("boil", "simmer", "stew", "braise", "reduce", "poach"), "boil"), "steam": "steam",
    "pressure_cook": "pressure", **dict.fromkeys(("bake", "roast"), "oven"), "slow_cook": "crock",
}  # fmt: skip
# what went wrong is told by its cause, unless it is asked how long it still wants; and faults of food that is not done
HOW_LONG = frozenset(("how_long", "more"))
NOT_DONE = (
    "tough", "hard", "raw", "beans_hard", "grain_hard", "roots_hard_inside", "strands_hard", "meat_tough",
    "greens_underdone",
)  # fmt: skip
# why a food is not done when its time is over, by what it is; the first that holds
REASONS = ("dried_bean", "lentil"), ("starchy_root", "root_vegetable", "tender_vegetable"), ("rice", "whole_grain")
STUBBORN, ROOT, GRAIN = REASONS
DRY = ("roast", "bake", "grill", "smoke")


@rule("remaining.to_go", "common-practice")
def to_go(asked: Asked) -> Part | None:
    """How much longer, or that it should be done, and what holds it up."""
    had_min = asked.request.elapsed_min
    if had_min is None or not had_min > 0:
        return None
    cooked = cooking(asked)
    if cooked is None or (by_cause(asked.request) and not _is_over(cooked, asked.request)):
        return None
    if out_of_reach(cooked):
        return Part(headline=together(cooked.answer.headline, _under_pressure(cooked)))
    if cooked.time is None:
        return _by_factor(cooked, had_min)
    here, _ = cooked.time
    low, high = here.low or here.value, here.high or here.value
    if had_min >= high:
        return Part(headline=_over(cooked, here, had_min))
    left = Figure(
        "time_left", say("label"), round_time_min(max(0.0, here.value - had_min)), "min",
        round_time_min(max(0.0, low - had_min)), round_time_min(high - had_min),
    )  # fmt: skip
    return Part(figures=(left,), headline=_left(cooked, here, left, had_min))


def by_cause(request: Request) -> bool:
    """Whether it is told what went wrong, and not asked how long it still wants."""
    return request.topic == WRONG and HOW_LONG.isdisjoint(request.forms)


def _is_over(cooked: Asked, request: Request) -> bool:
    """Whether a food that is not done has had all its time: then waiting is no answer, whatever the cause."""
    had_min = request.elapsed_min or 0.0
    return (
        request.subject in NOT_DONE
        and cooked.time is not None
        and not out_of_reach(cooked)
        and had_min >= (cooked.time[0].high or cooked.time[0].value)
    )


def cooking(asked: Asked) -> Asked | None:
    """The question as that of the cooking time, where it was put as one of what went wrong or how hot."""
    request = asked.request
    if request.topic == "time":
        return asked
    method = request.method or usual_method(request.dish, request.dish_class or "general")
    if request.dish_class is None or method is None:
        return None
    base = None if request.time_min == request.elapsed_min else request.time_min
    other = asked.otherwise(topic="time", subject=None, method=method, time_min=base)
    return None if other.answer.missing else other


def _left(asked: Asked, here: Figure, left: Figure, had_min: float) -> Words:
    case, method = asked.case, asked.request.method or ""
    return say(
        "to-go",
        stage="soon" if left.value <= 0 else "later" if left.low else "now",
        left=duration(left.value),
        most=duration(left.high or 0.0),
        taste=duration(left.low or 0.0),
        doing=doing(case, method) if method else case.food,
        all=about(here),
        place=case.place,
        counted=COUNTED_FROM.get(method, "heat"),
    )


def _over(asked: Asked, here: Figure, had_min: float) -> Words:
    case, method = asked.case, asked.request.method or ""
    past = say(
        "past",
        had=duration(had_min),
        doing=doing(case, method) if method else case.food,
        all=duration_span(here.low or here.value, here.high or here.value),
        place=case.place,
        counted=COUNTED_FROM.get(method, "heat"),
    )
    return together(past, say("reason", food=_kind(asked)))


def _kind(asked: Asked) -> str:
    """What kind of food it is, as a sentence chooses by it."""
    case = asked.case
    if case.dish_class in STUBBORN:
        return "bean"
    if case.dish_class in ROOT:
        return "root"
    if case.dish_class in GRAIN:
        return "grain"
    if {"meat", "poultry"} & set(traits_of(case.request.dish, case.dish_class)):
        return "roast" if case.request.method in DRY else "meat"
    return "other"


def _under_pressure(asked: Asked) -> Words:
    """The time under pressure, where the open pot does not get there."""
    quick = asked.answer.figure("pressure_time")
    if quick is None:
        return ""
    return say("under-pressure", time=middle(quick), gauge=gauge(STOVE_TOP_GAUGE_PA))


def _by_factor(asked: Asked, had_min: float) -> Part | None:
    factor = asked.answer.figure("time_factor")
    if factor is None:
        return None
    return Part(
        headline=say(
            "by-factor",
            factor=number(factor.value, 1),
            baseline=asked.case.baseline,
            had=duration(had_min),
            doing=doing(asked.case, asked.request.method) if asked.request.method else asked.case.food,
            place=asked.case.place,
        )
    )


RULES = (to_go,)
