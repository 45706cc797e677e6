"""What was said aloud, as a WAV of 16 kHz -> the words that were heard, for the cook to see and put right."""

from __future__ import annotations

from functools import partial
from typing import Any

from sanic import Blueprint, HTTPResponse, Request
from sanic.response import json
from sanic_ext import openapi

from assistant import parts
from assistant.web.bodies import KB
from assistant.web.desk import Desk
from assistant.web.problems import Problem
from assistant.web.shown import bench_of

routes = Blueprint("api_heard", url_prefix="/api")
# half a minute of 16-bit samples, and room for what else a file carries
MOST_BYTES = 30 * 16 * 2 * 1000 + 64 * KB
WAV = "audio/wav"


@routes.post("/heard", ctx_most_bytes=MOST_BYTES, ctx_takes=WAV)
@openapi.exclude()
async def heard(request: Request) -> HTTPResponse:
    """The words."""
    work = partial(_heard, request.app.ctx.desk, request.ctx.person, request.body)
    return json(await bench_of(request, slow=True).run(work))


def _heard(desk: Desk, person: str, wav: bytes) -> dict[str, Any]:
    """What was heard, by the recogniser of the extra, or by another one that is installed in its place."""
    try:
        from assistant.voice.hearing import hear
        from assistant.voice.recognisers import DEFAULT, names

        others = () if parts.is_there("voice") else (name for name in names() if name != DEFAULT)
        return hear(wav, desk.memory(desk.record(person)), next(iter(others), DEFAULT)).as_json()
    except ImportError:
        raise Problem(501, f"Voice is not installed here: {parts.part('voice').get}") from None
