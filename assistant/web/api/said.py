"""An answer said aloud, as a WAV, for a browser that has no voice of its own."""

from __future__ import annotations

from dataclasses import dataclass
from functools import partial
from typing import Annotated

from pydantic import ConfigDict, Field
from sanic import Blueprint, HTTPResponse, Request
from sanic.response import raw
from sanic_ext import openapi

from assistant.voice import saying
from assistant.web.bodies import body_of
from assistant.web.named import workroom_of

routes = Blueprint("api_said", url_prefix="/api")
LONGEST = 2000


@dataclass(frozen=True, slots=True, kw_only=True)
class ToSay:
    """What is to be said."""

    __pydantic_config__ = ConfigDict(extra="forbid")
    text: Annotated[str, Field(min_length=1, max_length=LONGEST)]


@routes.post("/said")
@openapi.exclude()
async def said(request: Request) -> HTTPResponse:
    """Say it."""
    wav = await workroom_of(request).slow.run(partial(saying.said, body_of(request, ToSay).text))
    return raw(wav, content_type="audio/wav")
