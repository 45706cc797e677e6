"""What was said aloud, as a WAV of 16 kHz -> the words that were heard, for the cook to see and put right."""

from __future__ import annotations

from functools import partial
from importlib import import_module
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
# is imported only where the extra is installed
VOICE = "assistant.voice.hearing"


@routes.post("/heard", ctx_most_bytes=MOST_BYTES, ctx_takes=WAV)
@openapi.exclude()
async def heard(request: Request) -> HTTPResponse:
    """The words."""
    voice = parts.part("voice")
    if parts.lacks(voice):
        raise Problem(501, f"Voice is not installed here: {voice.get}")
    work = partial(_heard, request.app.ctx.desk, request.ctx.person, request.body)
    return json(await bench_of(request, slow=True).run(work))


def _heard(desk: Desk, person: str, wav: bytes) -> dict[str, Any]:
    found: dict[str, Any] = import_module(VOICE).hear(wav, desk.memory(desk.record(person))).as_json()
    return found
