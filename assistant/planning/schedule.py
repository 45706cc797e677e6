"""Put times of day to a schedule: the rules count minutes before service, a cook reads the clock."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import datetime, timedelta

from dateutil import parser
from dateutil.relativedelta import relativedelta

from assistant.planning.clock import clock
from assistant.reading.days import TOMORROW, WEEK, named
from rules.model import Answer, Figure, Request
from rules.said import Words, elevation, listed, number, refilled, sentences, together, yes
from rules.topics.schedule.menu import is_menu, of_menu
from rules.topics.schedule.stages import STAGES

say = sentences("planning/schedule")

TOTAL, RULE, COOKING = "start_before_service", "schedule.backward", "cook_time"
# figures of when a step begins; the first one of a plan by loads
BEGINS, FIRST_LOAD = "at_", "at_0"
# what softens slowly, and sooner under pressure
SOFTENED = ("collagen_cut", "mixed_stew", "dried_bean", "lentil", "whole_grain", "stock")
MINUTES_A_DAY = 24 * 60
STEP_MIN = 5
SOME_MONDAY = datetime(2001, 1, 1)


def with_clock(answer: Answer) -> Answer:
    """The answer of the rules to a schedule with the time of day in its headline and steps; any other as it is.

    Days are named from the day of service: by their names where the cook names one, else as today, tomorrow, or the
    day before.
    """
    if answer.request.service_time is None:
        return answer
    if answer.figure(TOTAL):
        return one_dish(answer)
    if answer.figure(FIRST_LOAD):
        return loads(answer)
    return several(answer) if timed(answer) else answer


def at(answer: Answer, minutes_before: float) -> Words:
    """The time of day so many minutes before service, with the day where it is another one."""
    text = day_told(answer.request)
    service = service_moment(answer.request.service_time or "", text)
    moment = down_to_step(service - timedelta(minutes=minutes_before))
    day = day_name(text, (service.date() - moment.date()).days)
    time = clock(moment, answer.request.units)
    return say("on-the-day", time=time, day=day) if day else time


def on_its_day(answer: Answer, minutes_before: float) -> Words:
    """The time of day so many minutes before service, in a list that names the day of service at its head."""
    service = service_moment(answer.request.service_time or "", day_told(answer.request))
    moment = down_to_step(service - timedelta(minutes=minutes_before))
    same = service.date() == moment.date()
    return clock(moment, answer.request.units) if same else at(answer, minutes_before)


def timed(answer: Answer) -> tuple[Figure, ...]:
    """The figures that say when a step begins, before service [min]; the steps begin in their order."""
    return tuple(f for f in answer.figures if f.id.startswith(BEGINS))


def clocked(answer: Answer, begun: Sequence[float]) -> tuple[Words, ...]:
    """The steps with their times of day, the serving after those that are timed. begun: before service [min]"""
    staged, others = answer.steps[: len(begun)], answer.steps[len(begun) :]
    when = on_its_day if is_menu(answer.request) else at
    steps = (refilled(step, when=when(answer, before)) for before, step in zip(begun, staged, strict=True))
    return (*steps, say("serve", time=when(answer, 0)), *others)


def one_dish(answer: Answer) -> Answer:
    """One dish, stage by stage."""
    request = answer.request
    stages = [f for f in answer.figures if f.id in STAGES]
    total = next(f for f in answer.figures if f.id == TOTAL)
    begun = starts(stages)
    low, high = total.low or total.value, total.high or total.value
    window = say("window", earliest=at(answer, high), latest=at(answer, low))
    cooking = next((before for f, before in zip(stages, begun, strict=True) if f.id == COOKING), total.value)
    headline = say(
        "headline",
        food=request.dish or say("it"),
        start=at(answer, total.value),
        cooked="later" if cooking < begun[0] else "at-once",
        cooking=at(answer, cooking),
        serve=at(answer, 0),
        place=elevation(request.elevation_m or 0.0),
    )
    if is_late(answer, low):
        return too_late(answer, low, total.value, begun)
    return replace(
        answer,
        headline=together(verdict(answer, low, total.value), headline),
        because=tuple(replace(b, text=together(b.text, window)) if b.rule == RULE else b for b in answer.because),
        steps=clocked(answer, begun),
    )


def left_min(request: Request) -> float | None:
    """How long it is to service from the time it is now, or the start that the cook named [min]; None without one."""
    if request.start_time is None:
        return None
    service = service_moment(request.service_time or "", day_told(request))
    start = service_moment(request.start_time, day_told(request))
    return (service - start).total_seconds() / 60 % MINUTES_A_DAY


def is_late(answer: Answer, least_min: float) -> bool:
    """Whether the dish cannot be ready by service, even by the short end."""
    has = left_min(answer.request)
    return has is not None and has < least_min


def too_late(answer: Answer, least_min: float, plan_min: float, begun: Sequence[float]) -> Answer:
    """A dish that cannot be ready by service: when it is, begun at once, and the ways out; no start that is past."""
    request = answer.request
    has = left_min(request) or 0.0
    ready = service_moment(request.service_time or "", day_told(request)) + timedelta(minutes=plan_min - has)
    # counted from the service that can be kept
    kept = replace(answer, request=replace(request, service_time=f"{ready:%H:%M}"))
    headline = say(
        "ways-out", food=request.dish or say("it"), ready=clock(ready, request.units), quicker=quicker(request)
    )
    steps = replace(answer, steps=clocked(kept, begun))
    return replace(steps, headline=together(verdict(answer, least_min, plan_min), headline))


def quicker(request: Request) -> str:
    """Whether a pressure cooker would be quicker than the way it is cooked."""
    return "no" if request.method == "pressure_cook" or request.dish_class not in SOFTENED else "yes"


def verdict(answer: Answer, least_min: float, plan_min: float) -> Words:
    """Whether the start that the cook named is early enough; empty where none was."""
    request = answer.request
    if request.start_time is None:
        return ""
    service = service_moment(request.service_time or "", day_told(request))
    start = service_moment(request.start_time, day_told(request))
    has_min = (service - start).total_seconds() / 60 % MINUTES_A_DAY
    word = "yes" if has_min >= plan_min else "tight" if has_min >= least_min else "no"
    return say("verdict", verdict=word, start=clock(start, request.units), latest=at(answer, least_min))


def several(answer: Answer) -> Answer:
    """Several dishes, each by its time, the earliest first."""
    fired = timed(answer)
    last = {str(f.label): f for f in fired}
    now = left_min(answer.request)
    lines = (
        say("menu-line", food=f.label, time=on_its_day(answer, f.value if now is None else min(f.value, now)))
        for f in fired
        if last[str(f.label)] is f
    )
    place = elevation(answer.request.elevation_m or 0.0)
    headline = say(
        "menu",
        lines=listed(lines, "semicolons"),
        serve=at(answer, 0),
        place=place,
        counted=yes(answer.request.portions),
        covers=number(answer.request.portions or 0, 0),
    )
    has = left_min(answer.request)
    late = [f for f in last.values() if has is not None and f.value > has]
    told = (late_line(answer, f, has or 0.0) for f in late)
    at_once = [f.value if has is None else min(f.value, has) for f in fired]
    return replace(
        answer,
        headline=together(headline, *told),
        figures=tuple(f for f in answer.figures if f not in fired),
        steps=clocked(answer, at_once),
    )


def late_line(answer: Answer, fired: Figure, has_min: float) -> Words:
    """A dish of a menu that should be on already: when it is ready if it goes on now, and the ways out."""
    service = service_moment(answer.request.service_time or "", day_told(answer.request))
    one = next((one for one in of_menu(answer.request) if one.dish == fired.label), answer.request)
    ready = clock(service + timedelta(minutes=fired.value - has_min), answer.request.units)
    return say("late", food=fired.label, ready=ready, quicker=quicker(one))


def loads(answer: Answer) -> Answer:
    """Loads of an oven, one after the other."""
    fired = timed(answer)
    count = next(f.value for f in answer.figures if f.id == "loads")
    headline = say(
        "loads",
        food=answer.request.dish or say("it"),
        start=at(answer, fired[0].value),
        first=at(answer, fired[1].value),
        last=at(answer, fired[-1].value),
        count=number(count, 0),
        serve=at(answer, 0),
        place=elevation(answer.request.elevation_m or 0.0),
    )
    return replace(
        answer,
        headline=headline,
        figures=tuple(f for f in answer.figures if f not in fired),
        steps=clocked(answer, [f.value for f in fired]),
    )


def starts(stages: Sequence[Figure]) -> list[float]:
    """How long before service each stage begins [min]."""
    return [sum(stage.value for stage in stages[i:]) for i in range(len(stages))]


def day_told(request: Request) -> str:
    """The words that name the day of service: those it was named by, or else those of the question."""
    return request.service_day or request.text


def service_moment(service_time: str, text: str = "") -> datetime:
    """The moment of service from ISO 8601 or a time of day; the date only tells the day of the week.

    raises: ValueError where it is no time

    >>> service_moment("18:30", "short ribs for Saturday at 6:30").strftime("%A %H:%M")
    'Saturday 18:30'
    """
    return parser.parse(service_time, default=SOME_MONDAY, ignoretz=True) + relativedelta(weekday=weekday(text))


def weekday(text: str) -> int | None:
    """The day of the week that a text names, Monday 0.

    >>> weekday("for Saturday at 7"), weekday("tonight at 7")
    (5, None)
    """
    day = named(text)
    return WEEK.index(day) if day in WEEK else None


def day_name(text: str, days_before: int) -> Words:
    """What to call the day so many days before service; empty for the day of service where no day was named."""
    day = weekday(text)
    if day is not None:
        return say("weekday", day=(day - days_before) % 7)
    if TOMORROW in text.lower() and days_before < 2:
        return say("today") if days_before else say("tomorrow")
    return say("days-before", days=days_before) if days_before else ""


def down_to_step(moment: datetime) -> datetime:
    """The moment at the five minutes before it, since a cook may start early and never late."""
    return moment - timedelta(minutes=moment.minute % STEP_MIN, seconds=moment.second)
