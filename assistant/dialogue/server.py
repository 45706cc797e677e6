"""The action server: rasa-sdk's own Sanic app over our executor, with faults of a call said before it is run."""

from __future__ import annotations

import json
import logging
import zlib
from collections.abc import Callable
from http import HTTPStatus
from typing import Any

from rasa_sdk.endpoint import create_app as rasa_sdk_app
from sanic import HTTPResponse, Request, Sanic
from sanic.exceptions import SanicException
from sanic.handlers import ErrorHandler
from sanic.response import json as json_response

from assistant.dialogue.executor import KitchenExecutor, fault_of
from assistant.dialogue.keeper import Keeper
from assistant.json_text import NOT_KEPT, can_be_kept
from assistant.mistakes import where
from assistant.serving.stopping import FINISH_S
from assistant.serving.watched import UNWATCHED, Watch, watch

MOST_BYTES = 20 * 1024 * 1024
log = logging.getLogger("simmerline.actions")


def create_app(keeper: Keeper | None = None, watched: Watch = UNWATCHED) -> Sanic:
    """The app: POST /webhook, GET /health, GET /actions, as Rasa expects them.

    keeper: keeps timers and progress of every conversation; None where nothing is kept
    watched: what whoever runs it wants to see

    A malformed call gets 400, an unknown action 404, a call without domain 449; the body says what is wrong.
    """
    # Rasa calls from no browser, so no page elsewhere may
    app = rasa_sdk_app(KitchenExecutor(keeper), cors_origins=[])
    app.config.REQUEST_MAX_SIZE = MOST_BYTES
    # the extension that the page uses would add documents here that load scripts from elsewhere
    app.config.AUTO_EXTEND = False
    app.config.GRACEFUL_SHUTDOWN_TIMEOUT = FINISH_S
    # rasa-sdk's own writes what was asked into the log, and answers everything with 500
    app.error_handler = ErrorHandler()
    app.exception(Exception)(told)
    app.register_middleware(refuse_malformed, "request")
    watch(app, watched)
    return app


async def refuse_malformed(request: Request) -> HTTPResponse | None:
    """Answer a webhook call that could not be run with what is wrong with it; let others pass."""
    if request.path != "/webhook" or request.method != "POST":
        return None
    _, problem = call_of(request)
    return json_response({"error": problem, "action_name": None}, status=400) if problem else None


async def told(_: Request, fault: Exception) -> HTTPResponse:
    """What is told of a fault. What was asked is never written to the log, nor sent back."""
    status = fault.status_code if isinstance(fault, SanicException) else 500
    if status == 500:
        log.error("%s", where(fault))
    error = {"error": "Something went wrong here." if status == 500 else HTTPStatus(status).phrase, "action_name": None}
    return json_response(error, status=status, headers=getattr(fault, "headers", {}))


def call_of(request: Request) -> tuple[Any, str | None]:
    """The call in the body of a request, and what is wrong with it; None where nothing is."""
    try:
        body = inflated(request.body) if request.headers.get("Content-Encoding") == "deflate" else request.body
        call = json.loads(body)
    except (ValueError, zlib.error, RecursionError):
        return None, "The body is not JSON."
    return call, fault_of(call) if can_be_kept(body, call) else NOT_KEPT


def inflated(body: bytes) -> bytes:
    """A deflated body, unpacked as far as it is taken.

    raises: ValueError where there is more of it; zlib.error where it cannot be unpacked
    """
    unpacking = zlib.decompressobj()
    content = unpacking.decompress(body, MOST_BYTES)
    if unpacking.unconsumed_tail:
        raise ValueError("larger than is taken")
    return content


def serve(host: str, port: int, warn: Callable[[str], None], watched: Watch = UNWATCHED) -> None:
    """Serve until told to stop, by Ctrl-C or SIGTERM; what is under way is finished.

    warn: is told what is wrong with the store, if anything is; watched: what whoever runs it wants to see
    raises: OSError where the port cannot be had
    """
    keeper = Keeper.open(warn)
    app = create_app(keeper, watched)
    try:
        app.run(host=host, port=port, single_process=True, motd=False, access_log=False)
    finally:
        keeper.close()
