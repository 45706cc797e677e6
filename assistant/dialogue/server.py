"""The action server: rasa-sdk's own Sanic app over our executor, with faults of a call said before it is run."""

from __future__ import annotations

import json
import zlib
from collections.abc import Callable
from typing import Any

from rasa_sdk.endpoint import create_app as rasa_sdk_app
from sanic import HTTPResponse, Request, Sanic
from sanic.response import json as json_response

from assistant.dialogue.executor import KitchenExecutor, fault_of
from assistant.dialogue.keeper import Keeper
from assistant.json_text import NOT_KEPT, can_be_kept

MOST_BYTES = 20 * 1024 * 1024


def create_app(keeper: Keeper | None = None) -> Sanic:
    """The app: POST /webhook, GET /health, GET /actions, as Rasa expects them.

    keeper: keeps timers and progress of every conversation; None where nothing is kept

    A malformed call gets 400, an unknown action 404, a call without domain 449; the body says what is wrong.
    """
    app = rasa_sdk_app(KitchenExecutor(keeper))
    app.config.REQUEST_MAX_SIZE = MOST_BYTES
    # the extension that the page uses would add documents here that load scripts from elsewhere
    app.config.AUTO_EXTEND = False
    app.register_middleware(refuse_malformed, "request")
    return app


async def refuse_malformed(request: Request) -> HTTPResponse | None:
    """Answer a webhook call that could not be run with what is wrong with it; let others pass."""
    if request.path != "/webhook" or request.method != "POST":
        return None
    _, problem = call_of(request)
    return json_response({"error": problem, "action_name": None}, status=400) if problem else None


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


def serve(host: str, port: int, warn: Callable[[str], None]) -> None:
    """Serve until interrupted.

    warn: is told what is wrong with the store, if anything is
    raises: OSError where the port cannot be had
    """
    keeper = Keeper.open(warn)
    app = create_app(keeper)
    try:
        app.run(host=host, port=port, single_process=True, motd=False, access_log=False)
    finally:
        keeper.close()
