"""A page from its template: the frame that every page has, and what the page itself shows."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from functools import partial
from typing import Any

from jinja2 import Environment
from sanic import HTTPResponse, Request
from sanic.response import html

from assistant import parts
from assistant.dialogue.timer import Timer
from assistant.planning.clock import clock, now_here
from assistant.replies.template_files import environment
from assistant.web import assets, reply_shown, staff
from assistant.web.desk import Desk
from assistant.web.guard import FORM_KEY
from assistant.web.people import form_key
from assistant.web.workroom import Bench
from rules.model import Kitchen

# address, name: in the order in which a cook reaches for them
PAGES = (
    ("/", "Ask"),
    ("/recipe", "Recipe"),
    ("/menu", "Menu"),
    ("/timers", "Timers"),
    ("/card", "Wall card"),
    ("/batches", "Batches"),
    ("/training", "Training"),
    ("/place", "Your place"),
)
Values = dict[str, Any]


@dataclass(frozen=True, slots=True)
class RunningTimer:
    """A timer as a page shows it. ends: the moment, for the script that counts down; at: the time of day"""

    id: int
    name: str
    ends: str
    at: str
    over: bool


async def shown(
    request: Request,
    template: str,
    work: Callable[[Desk, str], Values],
    *,
    slow: bool = False,
) -> HTTPResponse:
    """A page. slow: whether it takes long

    work: gives what it shows, from the desk and the person, and under `status` that of HTTP where it is not well
    """
    written, status = await bench_of(request, slow=slow).run(partial(_written, request, template, work))
    return html(written, status=status)


def bench_of(request: Request, *, slow: bool = False) -> Bench:
    """Where the work for a request is done, as somebody who is known from now on."""
    request.ctx.known_from_now_on = True
    workroom = request.app.ctx.workroom
    found: Bench = workroom.slow if slow else workroom.quick
    return found


def _written(request: Request, template: str, work: Callable[[Desk, str], Values]) -> tuple[str, int]:
    desk: Desk = request.app.ctx.desk
    person: str = request.ctx.person
    # the frame comes after the work, so that it shows what the work has changed
    values = work(desk, person)
    page = templates().get_template(template).render(**values, **frame(request, desk, person))
    return page, int(values.get("status", 200))


def frame(request: Request, desk: Desk, person: str) -> Values:
    """What every page shows beside its own."""
    kitchen = desk.kitchen(person)
    return {
        "pages": PAGES,
        "here": request.path,
        "place": staff.place(kitchen),
        "staff": staff.staff(kitchen.units),
        "units": kitchen.units,
        "timers": running(desk.timers(person), kitchen),
        "fault": desk.fault,
        "form_key": form_key(request),
        "form_key_name": FORM_KEY,
        "draws": parts.is_there("print"),
        "get_draws": parts.part("print").get,
        "secure": request.app.ctx.settings.secure or request.app.ctx.settings.is_local,
    }


def running(timers: tuple[Timer, ...], kitchen: Kitchen) -> list[RunningTimer]:
    """Timers as a page shows them; one that was announced stays until it is stopped."""
    now = now_here()
    return [
        RunningTimer(
            timer.id, timer.name, timer.ends_at.isoformat(timespec="seconds"),
            clock(timer.ends_at.astimezone(now.tzinfo), kitchen.units), timer.ends_at <= now,
        )
        for timer in timers
    ]  # fmt: skip


def templates() -> Environment:
    """The templates of the pages, with what they call."""
    made = environment("assistant.web")
    made.filters |= {"reply": reply_shown.shown, "tied": reply_shown.tied, "labelled": reply_shown.labelled}
    made.globals |= {"asset": assets.url, "stop": reply_shown.STOP}
    return made
