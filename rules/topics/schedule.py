"""When to start, so that the food is ready in time: the stages of the work, counted back from service.

Each stage is a figure [min] in the order of the work; its value is the time to plan for. start_before_service is their
sum. The rules know no clock: each step says how long before service it is, as the value `when` of its sentence, and who
knows the time of day puts that in its place.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from rules import engine
from rules.book import Case, Part, rule
from rules.foods import dishes
from rules.model import Answer, Caution, Figure, Request
from rules.physics.units import round_time_min
from rules.safety.holding_limits import limit_c
from rules.said import Listed, Words, duration, duration_span, listed, sentences, temp, together
from rules.tables import read_csv

say = sentences("topics/schedule")

LEADS = "tables/schedule_leads_common-practice.csv"
BEFORE, AFTER = ("soak", "rise", "heat_up"), ("release", "rest")


# the figures of an answer that are stages, in the order of the work
STAGES = tuple(f"{stage}_time" for stage in (*BEFORE, "cook", *AFTER))


@dataclass(frozen=True, slots=True)
class Stage:
    """A stretch of the work [min]: the range, what to plan for, and what is done in it."""

    id: str
    low_min: float
    plan_min: float
    high_min: float
    step: Words
    sources: tuple[str, ...]

    @property
    def figure(self) -> Figure:
        """The stage as a figure of the answer."""
        return Figure(f"{self.id}_time", say("label", stage=self.id), self.plan_min, "min", self.low_min, self.high_min)


def waits_hot(request: Request) -> bool:
    """Whether the dish loses nothing by waiting hot, so that one plans by the long end of the range."""
    return "waits_hot" in dishes.traits_of(request.dish, request.dish_class)


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
    plan = high if waits_hot(request) else likely
    return cook_stage(low, plan, high, sources or ("common-practice",))


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
    """The method that was said, else the usual one of the dish."""
    return request.method or (dishes.usual_method(request.dish, request.dish_class) if request.dish_class else None)


def stages(request: Request) -> tuple[Stage, ...]:
    """The stages of the work in their order; empty where the cooking time is not known."""
    cook = cooking(request)
    if cook is None:
        return ()
    dish_class, method = request.dish_class or "general", method_of(request) or ""
    waits = waits_hot(request)
    before, after = ([lead(stage, dish_class, method, waits=waits) for stage in of] for of in (BEFORE, AFTER))
    return tuple(stage for stage in (*before, cook, *after) if stage)


@rule("schedule.backward", "common-practice")
def backward(case: Case) -> Part:
    """Count back from service through rest, cooking and heating up to the moment to start."""
    work = stages(case.request)
    low, plan, high = (sum(ends) for ends in zip(*((s.low_min, s.plan_min, s.high_min) for s in work), strict=True))
    starts = [sum(s.plan_min for s in work[i:]) for i in range(len(work))]
    why = say("waits") if waits_hot(case.request) else say("does-not-wait")
    return Part(
        figures=(
            Figure("start_before_service", say("start-before-service"), round_time_min(plan), "min", low, high),
            *(stage.figure for stage in work),
        ),
        steps=tuple(
            say("step", when=say("before-service", time=duration(at)), step=s.step)
            for at, s in zip(starts, work, strict=True)
        ),
        headline=say("headline", food=case.food, time=duration(plan), place=case.place),
        because=together(say("counted-back", stages=backwards(work)), why),
        sources=tuple(dict.fromkeys(source for stage in work for source in stage.sources)),
    )


def backwards(work: tuple[Stage, ...]) -> Listed:
    """The stages from the last to the first, with their ranges."""
    told = (say("stage", stage=s.id, time=duration_span(s.low_min, s.high_min)) for s in reversed(work))
    return listed(told, "commas")


@rule("schedule.waiting", "fda-food-code-2022", "common-practice")
def waiting(case: Case) -> Part | None:
    """How food that is ready early waits."""
    if not waits_hot(case.request):
        return None
    return Part(cautions=(Caution("note", say("ready-early", hot=temp(limit_c("hot_hold"))), ("fda-food-code-2022",)),))


@rule("schedule.cooking_cautions", "common-practice")
def cooking_cautions(case: Case) -> Part:
    """What the cooking itself warns of, and that its time is sea level's where no rule moves it."""
    cooked = cooking_answer(case.request, method_of(case.request))
    note = () if cooked.figure("cook_time") else (Caution("note", say("sea-level-time"), ("common-practice",)),)
    return Part(cautions=(*(c for c in cooked.cautions if c.level != "note"), *note))


def needs(request: Request) -> tuple[str, ...]:
    """Dish, method where the dish does not tell it, time of service, elevation, and a time where none is known."""
    known = request.dish or request.dish_class or any(u.kind == "dish" for u in request.unused)
    if not known:
        return ("dish", "service_time", "elevation")
    method = () if method_of(request) else ("method",)
    must = (*method, "service_time", "elevation")
    placed = request.elevation_m is not None and request.service_time is not None
    return (*must, "time") if not method and placed and cooking(request) is None else must


RULES = (backward, waiting, cooking_cautions)
