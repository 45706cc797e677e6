"""One dish: counted back from service through rest, cooking and heating up to the moment to start.

Each stage is a figure [min] in the order of the work; its value is the time to plan for. start_before_service is their
sum. The rules know no clock: each step says how long before service it is, as the value `when` of its sentence, and who
knows the time of day puts that in its place.
"""

from __future__ import annotations

from rules.book import Case, Part, rule
from rules.model import Caution, Figure
from rules.physics.units import round_time_min
from rules.safety.holding_limits import limit_c
from rules.said import Listed, duration, duration_span, listed, sentences, temp, together
from rules.topics.schedule.loads import loads
from rules.topics.schedule.menu import is_menu
from rules.topics.schedule.on_course import is_read
from rules.topics.schedule.stages import Stage, by_the_long_end, cooking_answer, method_of, stages, waits_hot

say = sentences("topics/schedule")


@rule("schedule.backward", "common-practice")
def backward(case: Case) -> Part | None:
    """Count back from service through rest, cooking and heating up to the moment to start."""
    if is_menu(case.request) or loads(case.request) or is_read(case.request):
        return None
    work = stages(case.request)
    low, plan, high = (sum(ends) for ends in zip(*((s.low_min, s.plan_min, s.high_min) for s in work), strict=True))
    starts = [sum(s.plan_min for s in work[i:]) for i in range(len(work))]
    why = say(
        "planned-by", end="long" if by_the_long_end(case.request) else "slack" if case.request.slack_min else "middle"
    )
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
    if not waits_hot(case.request) or loads(case.request) or is_read(case.request):
        return None
    return Part(cautions=(Caution("note", say("ready-early", hot=temp(limit_c("hot_hold"))), ("fda-food-code-2022",)),))


@rule("schedule.cooking_cautions", "common-practice")
def cooking_cautions(case: Case) -> Part | None:
    """What the cooking itself warns of, and that its time is sea level's where no rule moves it."""
    if is_menu(case.request) or case.request.precooked or is_read(case.request):
        return None
    cooked = cooking_answer(case.request, method_of(case.request))
    note = () if cooked.figure("cook_time") else (Caution("note", say("sea-level-time"), ("common-practice",)),)
    return Part(cautions=(*(c for c in cooked.cautions if c.level != "note"), *note))
