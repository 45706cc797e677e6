"""Put times of day to a schedule: the rules count minutes before service, a cook reads the clock."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from datetime import datetime, timedelta

from dateutil import parser
from dateutil.relativedelta import relativedelta

from assistant.planning.clock import clock
from rules.model import Answer, Figure
from rules.say import Say
from rules.topics.schedule import STAGES

TOTAL, RULE = "start_before_service", "schedule.backward"
STEP_MIN = 5
SOME_MONDAY = datetime(2001, 1, 1)
DAYS = re.compile(r"\b(?:(?:mon|tues?|wed|thu(?:rs)?|fri)(?:day|nesday)?|saturday|sunday)s?\b", re.IGNORECASE)


def with_clock(answer: Answer) -> Answer:
    """The answer to a schedule with the time of day in its headline and steps; any other answer as it is.

    Days are named from the day of service: by their names where the cook names one, else as today, tomorrow, or the
    day before.
    """
    total = answer.figure(TOTAL)
    if total is None or answer.request.service_time is None:
        return answer
    service = service_moment(answer.request.service_time, answer.request.text)
    units, text = answer.request.units, answer.request.text

    def at(minutes_before: float) -> str:
        moment = down_to_step(service - timedelta(minutes=minutes_before))
        day = day_name(text, (service.date() - moment.date()).days)
        return f"{clock(moment, units)}{day and f' {day}'}"

    stages = [f for f in answer.figures if f.id in STAGES]
    staged, others = answer.steps[: len(stages)], answer.steps[len(stages) :]
    begun = zip(starts(stages), staged, strict=True)
    clocked = [f"{at(before)}: {step.partition(': ')[2]}" for before, step in begun]
    food = answer.request.dish or "it"
    low, high = total.low or total.value, total.high or total.value
    window = f"By the range, the start lies between {at(high)} and {at(low)}."
    place = Say(units).elevation(answer.request.elevation_m or 0.0)
    return replace(
        answer,
        headline=f"Start {food} by {at(total.value)} to serve at {at(0)} at {place}.",
        because=tuple(replace(b, text=f"{b.text} {window}") if b.rule == RULE else b for b in answer.because),
        steps=(*clocked, f"{at(0)}: Serve.", *others),
    )


def starts(stages: Sequence[Figure]) -> list[float]:
    """How long before service each stage begins [min]."""
    return [sum(stage.value for stage in stages[i:]) for i in range(len(stages))]


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
    named = DAYS.search(text)
    return parser.parserinfo().weekday(named[0].lower()[:3]) if named else None


def day_name(text: str, days_before: int) -> str:
    """What to call the day so many days before service.

    >>> day_name("Saturday at 7", 1), day_name("tomorrow at 7", 1), day_name("at 7", 1), day_name("at 7", 0)
    ('on Friday', 'today', 'the day before', '')
    """
    day = weekday(text)
    if day is not None:
        return f"on {SOME_MONDAY + relativedelta(days=(day - days_before) % 7):%A}"
    if "tomorrow" in text.lower() and days_before < 2:
        return ("tomorrow", "today")[days_before]
    return ("", "the day before")[days_before] if days_before < 2 else f"{days_before} days before"


def down_to_step(moment: datetime) -> datetime:
    """The moment at the five minutes before it, since a cook may start early and never late."""
    return moment - timedelta(minutes=moment.minute % STEP_MIN, seconds=moment.second)
