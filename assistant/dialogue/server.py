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

MOST_BYTES = 20 * 1024 * 1024


def create_app(keeper: Keeper | None = None) -> Sanic:
    """The app: POST /webhook, GET /health, GET /actions, as Rasa expects them.

    keeper: keeps timers and progress of every conversation; None where nothing is kept

    A malformed call gets 400, an unknown action 404, a call without domain 449; the body says what is wrong.
    """
    # Rasa calls from no browser, so no page elsewhere may
    app = rasa_sdk_app(KitchenExecutor(keeper), cors_origins=[])
    app.config.REQUEST_MAX_SIZE = MOST_BYTES
    # the extension that the page uses would add documents here that load scripts from elsewhere
    app.config.AUTO_EXTEND = False
    app.register_middleware(refuse_malformed, "request")
    return app


async def refuse_malformed(request: Request) -> HTTPResponse | None:
    """Answer a webhook call that could not be run with what is wrong with it; let others pass."""
    if request.path != "/webhook" or request.method != "POST":
        return None
    try:
        problem = fault_of(payload(request))
    except (ValueError, zlib.error, RecursionError):
        problem = "The body is not JSON."
    return json_response({"error": problem, "action_name": None}, status=400) if problem else None


def payload(request: Request) -> Any:
    """The body of a webhook call.

    raises: ValueError or zlib.error where it cannot be read, or would be larger than is taken once it is unpacked
    """
    deflated = request.headers.get("Content-Encoding") == "deflate"
    return json.loads(inflated(request.body) if deflated else request.body)


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
