"""A server watched by whoever runs it: every request counted, and told in a line of the log, by its route alone."""

from __future__ import annotations

import logging
import time
from dataclasses import dataclass

from sanic import HTTPResponse, Request, Sanic
from sanic.constants import HTTP_METHODS
from sanic.response import BaseHTTPResponse, raw
from sanic.signals import Event
from sanic_ext import openapi

from assistant import listeners

ADDRESS = "/metrics"
NO_ROUTE = OTHER_METHOD = "none"
LINE = "%(asctime)s %(name)s %(message)s"
log = logging.getLogger("simmerline.requests")


@dataclass(frozen=True, slots=True)
class Watch:
    """What whoever runs a server wants to see of it. metrics: counters at /metrics; lines: a line for each request"""

    metrics: bool = False
    lines: bool = False


UNWATCHED = Watch()


def watch(app: Sanic, wanted: Watch) -> None:
    """Let a server be watched, as far as that is wanted."""
    if not wanted.metrics and not wanted.lines:
        return
    if wanted.lines:
        _write_lines()
    if wanted.metrics:
        app.add_route(_metrics, ADDRESS, methods=("GET",), name="metrics")
        app.after_server_start(_listen)
    app.signal(Event.HTTP_LIFECYCLE_REQUEST)(_begun)
    app.signal(Event.HTTP_LIFECYCLE_RESPONSE)(_over)
    app.ctx.watch = wanted


def _write_lines() -> None:
    """On standard error, from INFO on, whatever other loggers do."""
    if not log.handlers:
        handler = logging.StreamHandler()
        handler.setFormatter(logging.Formatter(LINE))
        log.addHandler(handler)
        log.propagate = False
    log.setLevel(logging.INFO)


async def _listen(_: Sanic) -> None:
    from assistant.serving.counters import count_answer

    if count_answer not in listeners.LISTENERS:
        listeners.LISTENERS.append(count_answer)


async def _begun(request: Request) -> None:
    request.ctx.begun = time.perf_counter()


async def _over(request: Request, response: BaseHTTPResponse) -> None:
    """Count a request and tell of it. What was asked for may hold somebody's words, so the route is told instead."""
    wanted: Watch = request.app.ctx.watch
    route = f"/{request.route.path}" if request.route else NO_ROUTE
    method = request.method if request.method in HTTP_METHODS else OTHER_METHOD
    seconds = time.perf_counter() - getattr(request.ctx, "begun", time.perf_counter())
    if wanted.lines:
        log.info("%s %s %s %.3f s", method, route, response.status, seconds)
    if wanted.metrics and route != ADDRESS:
        from assistant.serving.counters import count_request

        count_request(route, method, response.status, seconds)


@openapi.exclude()
async def _metrics(_: Request) -> HTTPResponse:
    """The counters."""
    from assistant.serving.counters import CONTENT_TYPE, exposition

    return raw(exposition(), content_type=CONTENT_TYPE)
