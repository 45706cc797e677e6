"""Timers: set by name and minutes, or in words; they ring in every open page of their person."""

from __future__ import annotations

from functools import partial

from sanic import Blueprint, HTTPResponse, Request
from sanic.response import json, redirect
from sanic_ext import openapi

from assistant.understanding.request import TIMER
from assistant.web.forms import fields
from assistant.web.problems import Problem
from assistant.web.shown import bench_of, running, shown
from rules.model import Request as Question

routes = Blueprint("timers")
MORE_MIN = 5.0


@routes.get("/timers")
@openapi.exclude()
async def show(request: Request) -> HTTPResponse:
    """The page."""
    return await shown(request, "timers.html.j2", lambda desk, person: {"wrong": ""})


@routes.get("/timers/running")
@openapi.exclude()
async def now(request: Request) -> HTTPResponse:
    """The timers as a script counts them down."""
    desk, person = request.app.ctx.desk, request.ctx.person
    found = await bench_of(request).run(lambda: running(desk.timers(person), desk.kitchen(person)))
    return json([{"id": one.id, "name": one.name, "ends": one.ends, "at": one.at} for one in found])


@routes.post("/timers")
@openapi.exclude()
async def change(request: Request) -> HTTPResponse:
    """Set a timer, lengthen or stop one; the page says so where that cannot be."""
    question = _question(fields(request, "do", "name", "minutes"))
    done = await bench_of(request).run(partial(request.app.ctx.desk.timed, request.ctx.person, question))
    if done.new or done.changed or done.gone:
        return redirect("/timers", status=303)
    return await shown(request, "timers.html.j2", lambda desk, person: {"wrong": done.text, "status": 422})


def _question(given: dict[str, str]) -> Question:
    name = given["name"].casefold()
    match given["do"]:
        case "set":
            return Question(topic=TIMER, timer_action="set", timer_name=name, time_min=_minutes(given["minutes"]))
        case "more":
            return Question(topic=TIMER, timer_action="extend", timer_name=name, time_min=MORE_MIN)
        case "stop":
            return Question(topic=TIMER, timer_action="stop", timer_name=name)
    raise Problem(422, "A timer can be set, lengthened or stopped.")


def _minutes(text: str) -> float:
    from assistant.reading.reader import hear

    bare = text.replace(",", ".")
    try:
        return float(bare)
    except ValueError:
        told = hear(text, ("time",)).only()
        if told is None:
            raise Problem(422, f"{text!r} is no length of time; say 20, or 1 h 30 min.") from None
        return told.low
