"""The application: what every request passes, the pages, the API, and Rasa's webhook."""

from __future__ import annotations

import importlib
import logging
import sys
from typing import Any

from sanic import HTTPResponse, Request, Sanic
from sanic.exceptions import SanicException
from sanic.signals import Event
from sanic_ext import Extend
from sanic_ext.extensions.http.extension import HTTPExtension
from sanic_ext.extensions.openapi.extension import OpenAPIExtension

from assistant import web
from assistant.mistakes import where
from assistant.serving.stopping import FINISH_S
from assistant.serving.watched import watch
from assistant.web import assets, bodies, entry, guard, people, webhook
from assistant.web.desk import Desk
from assistant.web.problems import Problem, as_response, for_programs, in_a_sentence
from assistant.web.settings import Settings
from assistant.web.shelf import Shelf
from assistant.web.workroom import Workroom
from rules.modules import module_names

NAME = "simmerline"
ROOMS = (f"{web.__name__}.pages", f"{web.__name__}.api")
# reading a request, answering it, and keeping a line open for the next [s]
REQUEST_S, RESPONSE_S, KEEP_ALIVE_S = 20, 90, 30
# faults that are told otherwise than as something that does not do; by name, since some are loaded with their room
STATUSES = {"UnknownKitchen": 404, "KitchenExists": 409, "NothingDraws": 501, "VoiceMissing": 501}
# so soon what works makes way for what takes requests [s]
SWITCH_S = 0.001
log = logging.getLogger("simmerline.web")


def create_app(settings: Settings, name: str = NAME) -> Sanic:
    """The application. name: no two of one process may share it"""
    app = Sanic(name, configure_logging=False)
    app.ctx.settings, app.ctx.shelf = settings, Shelf()
    app.config.update(_config(settings))
    app.signal(Event.HTTP_ROUTING_AFTER)(bodies.limit)
    app.register_middleware(people.meet, "request")
    app.register_middleware(guard.check, "request")
    app.register_middleware(entry.let_in, "request")
    app.on_response(people.remember)
    app.on_response(guard.harden)
    app.exception(Exception)(told)
    app.add_route(assets.serve, "/static/<version:str>/<name:str>", methods=("GET",), name="assets")
    for room in ROOMS:
        for module in module_names(room):
            app.blueprint(importlib.import_module(f"{room}.{module}").routes)
    app.before_server_start(_open)
    webhook.add(app)
    watch(app, settings.watch)
    app.after_server_stop(_close)
    Extend(app, built_in_extensions=False, extensions=[HTTPExtension, ApiDocument])
    return app


def _config(settings: Settings) -> dict[str, Any]:
    return {
        "REQUEST_MAX_SIZE": bodies.LARGEST_BYTES,
        "REQUEST_MAX_HEADER_SIZE": 16 * bodies.KB,
        "REQUEST_TIMEOUT": REQUEST_S,
        "RESPONSE_TIMEOUT": RESPONSE_S,
        "KEEP_ALIVE_TIMEOUT": KEEP_ALIVE_S,
        "GRACEFUL_SHUTDOWN_TIMEOUT": FINISH_S,
        "FALLBACK_ERROR_FORMAT": "text",
        "CORS": bool(settings.origins),
        "CORS_ORIGINS": ",".join(settings.origins),
        "CORS_ALLOW_HEADERS": "content-type,authorization",
        "HTTP_ALL_METHODS": False,
        # the documents that the extension would show load scripts from elsewhere
        "OAS_UI_REDOC": False,
        "OAS_UI_SWAGGER": False,
        "OAS_URL_PREFIX": "/programs",
        "OAS_AUTODOC": False,
        "API_TITLE": NAME,
        "API_VERSION": "1",
        "API_DESCRIPTION": "The answers of simmerline, as its command line gives them in JSON.",
    }


class ApiDocument(OpenAPIExtension):
    """/programs/openapi.json, without the pages that would show it."""

    name = "apidocument"

    def label(self) -> str:
        """Where it is."""
        return "/programs/openapi.json"


async def _open(app: Sanic) -> None:
    sys.setswitchinterval(SWITCH_S)
    app.ctx.workroom = Workroom()
    app.ctx.desk = await app.ctx.workroom.quick.run(Desk.open)
    # whoever is let in shall not wait for the lexicon
    await app.ctx.workroom.quick.run(_load)


def _load() -> None:
    from assistant.answering import reply_to

    reply_to("")


async def _close(app: Sanic) -> None:
    app.ctx.workroom.close()
    app.ctx.desk.keeper.close()


async def told(request: Request, fault: Exception) -> HTTPResponse:
    """What is told of a fault. What was asked is never written to the log, nor shown to anybody else."""
    status, detail, more = said_of(fault)
    if for_programs(request):
        response = as_response(status, detail, **more)
    else:
        from assistant.web.shown import templates

        page = templates().get_template("problem.html.j2").render(status=status, detail=detail)
        response = HTTPResponse(page, status=status, content_type="text/html; charset=utf-8")
    for name, value in getattr(fault, "headers", {}).items():
        response.headers[name] = value
    await guard.harden(request, response)
    return response


def said_of(fault: Exception) -> tuple[int, str, dict[str, Any]]:
    """The status, the words and further members that a fault is told by."""
    from assistant.errors import AssistantError
    from assistant.store import StoreError
    from rules.errors import RulesError

    match fault:
        case Problem():
            return fault.status, fault.detail, fault.more
        case StoreError():
            return 503, str(fault), {}
        case AssistantError() | RulesError():
            return STATUSES.get(type(fault).__name__, 422), in_a_sentence(fault), {}
        case SanicException():
            return fault.status_code, _of_http(fault), {}
    log.error("%s", where(fault))
    return 500, "Something went wrong here; it was noted. Try it in other words.", {}


def _of_http(fault: SanicException) -> str:
    match fault.status_code:
        case 404:
            return "There is nothing at this address."
        case 405:
            return "That cannot be done at this address."
        case 413:
            return "That is more than is taken here."
        case 408 | 503:
            return "That took too long."
    return "The request cannot be read."
