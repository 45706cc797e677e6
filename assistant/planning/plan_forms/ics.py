"""iCalendar: an event a stage with an alarm at its beginning, and the service; by the icalendar package."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from typing import TYPE_CHECKING
from uuid import NAMESPACE_URL, uuid5

from assistant.planning.forms import Form
from assistant.planning.plan import Plan
from assistant.planning.plan_view import place_name, view
from assistant.replies.sentences import worded
from rules.model import Units
from rules.said import Said, sentences, yes

if TYPE_CHECKING:
    from icalendar import Event

PRODUCT = "-//simmerline//schedule//EN"
say = sentences("planning/plan")


def as_ics(plan: Plan, units: Units = "us") -> bytes:
    """The calendar. An event keeps its id as long as dish, stage and day of service stay, so that a service that is
    moved moves the events of a calendar that has them already."""
    from icalendar import Calendar

    book = Calendar()
    book.add("prodid", PRODUCT)
    book.add("version", "2.0")
    book.add("x-wr-calname", view(plan, units).title)
    for n, work in enumerate(sorted(plan.work, key=lambda w: w.course.line.line)):
        if work.from_min == work.to_min:
            continue
        said = say("event", dish=work.course.name, stage=work.stage.id)
        event = _event(plan, said, units, f"{work.course.line.line} {work.course.name} {work.stage.id} {n}")
        event.add("dtstart", plan.at(work.from_min))
        event.add("dtend", plan.at(work.to_min))
        event.add("description", worded(work.stage.step, units))
        if where := ", ".join(place_name(unit, plan) for unit in work.units):
            event.add("location", where)
        _alarm(event)
        book.add_component(event)
    served = _event(plan, say("service-event", named=yes(plan.title), title=plan.title), units, "service")
    served.add("dtstart", plan.service)
    book.add_component(served)
    year = timedelta(days=366)
    book.add_missing_timezones(first_date=(plan.begins - year).date(), last_date=(plan.service + year).date())
    return bytes(book.to_ical())


def _event(plan: Plan, said: Said, units: Units, name: str) -> Event:
    from icalendar import Event

    event = Event()
    uid = uuid5(NAMESPACE_URL, f"simmerline {plan.title} {plan.service.date()} {name}")
    event.add("uid", f"{uid}@simmerline")
    event.add("dtstamp", (plan.made_at if plan.made_at.year > 1 else datetime.now(UTC)).astimezone(UTC))
    event.add("summary", worded(said, units))
    return event


def _alarm(event: Event) -> None:
    from icalendar import Alarm

    alarm = Alarm()
    alarm.add("action", "DISPLAY")
    alarm.add("description", event["summary"])
    alarm.add("trigger", timedelta())
    event.add_component(alarm)


FORM = Form(ending=".ics", write=as_ics)
