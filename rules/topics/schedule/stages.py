"""The stages of the work, each with its range and what to plan for, counted back from service."""

from __future__ import annotations

from dataclasses import dataclass, replace

from rules import engine
from rules.foods import dishes
from rules.heat.heat_settings import setting
from rules.heat.roast_weights import near
from rules.model import Answer, Figure, Request
from rules.physics import conduction
from rules.physics.ambient import ambient
from rules.physics.units import round_time_min
from rules.said import Words, duration, duration_span, sentences
from rules.tables import read_csv

say = sentences("topics/schedule")

LEADS = "tables/schedule_leads_common-practice.csv"
BEFORE, AFTER = ("soak", "rise", "parboil", "heat_up"), ("release", "rest", "slack")
# the method that a dish in the oven is heard as
IN_THE_OVEN = "bake"
# a pot for so many comes to the boil slowly: what its heating is multiplied by, least and most
BIG_FROM, BIG_HEAT_UP, BIG_POTS = 50, (1.5, 2.0), ("boil", "simmer", "braise", "stew", "poach")
# how what comes cooked is heated where nobody says it: in water, in its pouch
IN_WATER, OVEN = "simmer", ("roast", "bake")
DRY = ("roast", "bake", "fry", "grill", "smoke")
# what the surface of a roast is in the mean [degC]
MEAN_C = 60.0
# what a stuffing adds to a bird [min]
STUFFED_MIN = (15.0, 45.0)
# how the time goes by the size of a piece: as its power, from what has to soften anyway to what only has to get hot
SIZE_POWERS, SOFTENED_POWERS = (0.8, 1.8), (0.2, 0.8)
# what comes cooked is heated to this through and through, from cold [degC]; where no label tells a time [min]
HOT_C, COLD_C, HEATED_MIN = 73.9, 5.0, (20.0, 40.0)
HALF_MM, DIFFUSIVITY_M2_S = 25.0, 1.3e-7
# what part of its boil a piece is given before it goes into the oven or the fat
PARBOILED, PARBOILED_FOR = (0.4, 0.6), ("roast", "bake", "fry")

# the figures of an answer that are stages, in the order of the work
STAGES = tuple(f"{stage}_time" for stage in (*BEFORE, "cook", *AFTER))


@dataclass(frozen=True, slots=True)
class Stage:
    """A stretch of the work [min]: the range, what to plan for, and what is done in it.

    likely_min: the middle, where one plans by another end
    """

    id: str
    low_min: float
    plan_min: float
    high_min: float
    step: Words
    sources: tuple[str, ...]
    likely_min: float | None = None

    @property
    def middle_min(self) -> float:
        """The likely time [min]."""
        return self.plan_min if self.likely_min is None else self.likely_min

    @property
    def figure(self) -> Figure:
        """The stage as a figure of the answer."""
        return Figure(f"{self.id}_time", say("label", stage=self.id), self.plan_min, "min", self.low_min, self.high_min)


def waits_hot(request: Request) -> bool:
    """Whether the dish loses nothing by waiting hot, so that one plans by the long end of the range."""
    return "waits_hot" in dishes.traits_of(request.dish, request.dish_class)


def by_the_long_end(request: Request) -> bool:
    """Whether one plans by the long end: what waits hot, where the cook keeps no time in hand of his own."""
    return waits_hot(request) and request.slack_min is None


def lead(stage: str, dish_class: str, method: str, *, waits: bool = False) -> Stage | None:
    """A stage before or after the cooking, by the table; None where this dish has none.

    waits: whether the dish waits hot, and is planned by the long end

    >>> lead("soak", "dried_bean", "simmer").high_min
    720.0
    """
    rows = {(r["stage"], r["dish_class"], r["method"]): r for r in read_csv(LEADS).rows}
    keys = ((stage, dish_class, method), (stage, dish_class, "any"), (stage, "any", method))
    row = next((rows[key] for key in keys if key in rows), None)
    if row is None:
        return None
    low, high = float(row["low_min"]), float(row["high_min"])
    plan = high if waits and stage not in ("soak", "rest") else (low + high) / 2
    return Stage(stage, low, round_time_min(plan), high, row["step"], (row["source"],))


def cooking(request: Request) -> Stage | None:
    """The cooking itself, as the rules of the method work it out for this kitchen; else the time that the cook gave,
    else sea level's; None where no time is known."""
    dish_class = request.dish_class or "general"
    method = method_of(request)
    if request.precooked:
        return warmed(request)
    if method is None:
        return stated(request)
    answer = cooking_answer(request, method)
    found = answer.figure("cook_time")
    span = dishes.sea_level_time(request.dish, dish_class, method)
    if found:
        likely, low, high = found.value, found.low or found.value, found.high or found.value
        sources = tuple(s for b in answer.because if b.rule.endswith(".time") for s in b.sources)
    elif request.time_min is not None:
        return stated(request)
    elif span:
        likely, low, high, sources = (span.low_min + span.high_min) / 2, span.low_min, span.high_min, (span.source,)
    else:
        return None
    low, likely, high = as_it_is_cut(request, (low, likely, high))
    plan = high if by_the_long_end(request) else likely
    return replace(cook_stage(low, plan, high, sources or ("common-practice",)), likely_min=likely)


def as_it_is_cut(request: Request, times: tuple[float, float, float]) -> tuple[float, float, float]:
    """A time [min], least, likely and most, for another oven or size than the usual one, and with a stuffing."""
    printed = near(request, method_of(request) or "")
    # the time of a printed weight takes its oven in
    low, likely, high = (time * (1.0 if printed else by_the_oven(request)) for time in times)
    if request.size:
        softens = not {"collagen_cut", "mixed_stew", "dried_bean"}.isdisjoint((request.dish_class,))
        one, other = sorted(request.size**power for power in (SOFTENED_POWERS if softens else SIZE_POWERS))
        low, likely, high = low * one, likely * (one + other) / 2, high * other
    filled = request.stuffed and not any(band.state == "stuffed" for band in printed)
    least, most = STUFFED_MIN if filled else (0.0, 0.0)
    return low + least, likely + (least + most) / 2, high + most


def by_the_oven(request: Request) -> float:
    """The time of a roast in a cooler or hotter oven than usual, to that in the usual one; 1 within the usual range.

    What goes into it goes by how much hotter the air is than it.
    source: common-practice
    """
    set_c, method = request.temperature_c, method_of(request)
    if set_c is None or method != "roast" or request.time_min is not None:
        return 1.0
    usual = setting(request.dish, request.dish_class or "general", method)
    if usual.low_c <= set_c <= usual.high_c or set_c <= MEAN_C + 10:
        return 1.0
    nearer = usual.low_c if set_c < usual.low_c else usual.high_c
    return (nearer - MEAN_C) / (set_c - MEAN_C)


def heated_by(request: Request) -> str:
    """How what comes cooked is heated: as the cook says, in the oven where it was baked or roasted, else in water."""
    usual = method_of(request)
    return request.method or (usual if usual in OVEN and usual else IN_WATER)


def warmed(request: Request) -> Stage:
    """The heating of what comes cooked: the time of its label, as much longer as the boil is cooler here."""
    low, high = (request.time_min, request.time_high_min or request.time_min) if request.time_min else HEATED_MIN
    here, there = (heat_through_min(metres) for metres in (request.elevation_m or 0.0, request.from_elevation_m or 0.0))
    dry = heated_by(request) in DRY
    longer = 1.0 if dry else here / there
    likely = (low + high) / 2 * longer
    span = (low * min(1.0, longer), high * max(1.0, longer) * 1.1)
    step = say("heat-through", way="dry" if dry else "wet", time=duration_span(*span))
    return Stage("cook", span[0], round_time_min(likely), span[1], step, ("common-practice", "carslaw-jaeger"))


def heat_through_min(elevation_m: float) -> float:
    """The time for the middle of a cold piece 5 cm thick to get hot in water at the boil [min].

    source: carslaw-jaeger
    """
    water_c = ambient(elevation_m).boiling_c
    return conduction.time_to_centre_min("cylinder", HALF_MM, DIFFUSIVITY_M2_S, COLD_C, water_c, HOT_C)


def parboiled(request: Request, method: str) -> Stage | None:
    """The boil before the oven, where the cook parboils."""
    if not request.ahead or method not in PARBOILED_FOR:
        return None
    boiled = cooking_answer(
        replace(request, time_min=None, time_high_min=None, temperature_c=None, ahead=False), "boil"
    )
    found = boiled.figure("cook_time")
    if found is None:
        return None
    low, high = (part * found.value for part in PARBOILED)
    step = say("parboil", time=duration_span(low, high))
    return Stage("parboil", low, round_time_min((low + high) / 2), high, step, ("common-practice",))


def stated(request: Request) -> Stage | None:
    """The cooking by the time the cook gave, as it is: no rule moves it."""
    if request.time_min is None:
        return None
    low, high = request.time_min, request.time_high_min or request.time_min
    return cook_stage(low, (low + high) / 2, high, ("common-practice",))


def cook_stage(low_min: float, plan_min: float, high_min: float, sources: tuple[str, ...]) -> Stage:
    """The stage of the cooking, with its range [min]."""
    step = say("start-cooking", time=duration_span(low_min, high_min))
    return Stage("cook", low_min, round_time_min(plan_min), high_min, step, sources)


def cooking_answer(request: Request, method: str | None) -> Answer:
    """What the rules say to the same dish, asked how long it takes."""
    return engine.answer(replace(request, topic="time", subject=None, method=method))


def method_of(request: Request) -> str | None:
    """The method that was said, else the usual one of the dish; `in the oven` of what is braised is no baking."""
    usual = dishes.usual_method(request.dish, request.dish_class) if request.dish_class else None
    known = dishes.dishes().get(request.dish or "")
    if request.method == IN_THE_OVEN and known and IN_THE_OVEN not in known.methods:
        return usual
    return request.method or usual


def stages(request: Request) -> tuple[Stage, ...]:
    """The stages of the work in their order; empty where the cooking time is not known."""
    cook = cooking(request)
    if cook is None:
        return ()
    dish_class = request.dish_class or "general"
    method = heated_by(request) if request.precooked else method_of(request) or ""
    waits = by_the_long_end(request)
    before, after = ([lead(stage, dish_class, method, waits=waits) for stage in of] for of in (BEFORE, AFTER))
    boiled = [parboiled(request, method) if stage == "parboil" else None for stage in BEFORE]
    begun = [in_bulk(stage or other, request, method) for stage, other in zip(before, boiled, strict=True)]
    work = (*begun, cook, *after, spare(request))
    return tuple(rested(stage, request) for stage in work if stage and not is_done_already(stage, request))


def is_done_already(stage: Stage, request: Request) -> bool:
    """Whether a stage falls away: of beans that were soaked, and of what comes cooked."""
    if stage.id == "soak":
        return request.soaked is True or request.precooked
    return request.precooked and stage.id in ("rise", "parboil", "rest")


def in_bulk(stage: Stage | None, request: Request, method: str) -> Stage | None:
    """A stage for so many guests: a big pot takes longer to come to the boil."""
    if stage is None or stage.id != "heat_up" or method not in BIG_POTS or (request.portions or 0) < BIG_FROM:
        return stage
    least, most = BIG_HEAT_UP
    plan = round_time_min(stage.plan_min * most)
    return replace(stage, low_min=stage.low_min * least, plan_min=plan, high_min=stage.high_min * most)


def rested(stage: Stage, request: Request) -> Stage:
    """The rest as long as the cook wants it."""
    wanted = request.rest_min
    if stage.id != "rest" or wanted is None:
        return stage
    return replace(stage, low_min=wanted, plan_min=wanted, high_min=wanted)


def spare(request: Request) -> Stage | None:
    """The time that the cook wants in hand before service."""
    wanted = request.slack_min
    if wanted is None:
        return None
    return Stage("slack", wanted, wanted, wanted, say("ready-and-hold", time=duration(wanted)), ("common-practice",))
