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
from rules.said import Words, elevation, refilled, sentences, together
from rules.topics.schedule import STAGES

say = sentences("planning/schedule")

TOTAL, RULE = "start_before_service", "schedule.backward"
STEP_MIN = 5
SOME_MONDAY = datetime(2001, 1, 1)
DAYS = re.compile(r"\b(?:(?:mon|tues?|wed|thu(?:rs)?|fri)(?:day|nesday)?|saturday|sunday)s?\b", re.IGNORECASE)


def with_clock(answer: Answer) -> Answer:
    """The answer of the rules to a schedule with the time of day in its headline and steps; any other as it is.

    Days are named from the day of service: by their names where the cook names one, else as today, tomorrow, or the
    day before.
    """
    total = answer.figure(TOTAL)
    if total is None or answer.request.service_time is None:
        return answer
    service = service_moment(answer.request.service_time, answer.request.text)
    units, text = answer.request.units, answer.request.text

    def at(minutes_before: float) -> Words:
        moment = down_to_step(service - timedelta(minutes=minutes_before))
        day = day_name(text, (service.date() - moment.date()).days)
        return say("on-the-day", time=clock(moment, units), day=day) if day else clock(moment, units)

    stages = [f for f in answer.figures if f.id in STAGES]
    staged, others = answer.steps[: len(stages)], answer.steps[len(stages) :]
    begun = zip(starts(stages), staged, strict=True)
    clocked = [refilled(step, when=at(before)) for before, step in begun]
    low, high = total.low or total.value, total.high or total.value
    window = say("window", earliest=at(high), latest=at(low))
    headline = say(
        "headline",
        food=answer.request.dish or say("it"),
        start=at(total.value),
        serve=at(0),
        place=elevation(answer.request.elevation_m or 0.0),
    )
    return replace(
        answer,
        headline=headline,
        because=tuple(replace(b, text=together(b.text, window)) if b.rule == RULE else b for b in answer.because),
        steps=(*clocked, say("serve", time=at(0)), *others),
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


def day_name(text: str, days_before: int) -> Words:
    """What to call the day so many days before service; empty for the day of service where no day was named."""
    day = weekday(text)
    if day is not None:
        return say("weekday", day=(day - days_before) % 7)
    if "tomorrow" in text.lower() and days_before < 2:
        return say("today") if days_before else say("tomorrow")
    return say("days-before", days=days_before) if days_before else ""


def down_to_step(moment: datetime) -> datetime:
    """The moment at the five minutes before it, since a cook may start early and never late."""
    return moment - timedelta(minutes=moment.minute % STEP_MIN, seconds=moment.second)
