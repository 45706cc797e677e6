"""An answer said aloud, as a WAV, for a browser that has no voice of its own."""

from __future__ import annotations

from dataclasses import dataclass
from functools import partial
from importlib import import_module
from typing import Annotated

from pydantic import ConfigDict, Field
from sanic import Blueprint, HTTPResponse, Request
from sanic.response import raw
from sanic_ext import openapi

from assistant import parts
from assistant.web.bodies import body_of
from assistant.web.named import workroom_of
from assistant.web.problems import Problem

routes = Blueprint("api_said", url_prefix="/api")
LONGEST = 2000
# is imported only where it is there
VOICE = "assistant.voice.saying"


@dataclass(frozen=True, slots=True, kw_only=True)
class ToSay:
    """What is to be said."""

    __pydantic_config__ = ConfigDict(extra="forbid")
    text: Annotated[str, Field(min_length=1, max_length=LONGEST)]


@routes.post("/said")
@openapi.exclude()
async def said(request: Request) -> HTTPResponse:
    """Say it."""
    speech = parts.part("speech")
    if parts.lacks(speech):
        raise Problem(501, f"This server has no voice: {speech.get}")
    text = body_of(request, ToSay).text
    return raw(await workroom_of(request).slow.run(partial(_said, text)), content_type="audio/wav")


def _said(text: str) -> bytes:
    wav: bytes = import_module(VOICE).said(text)
    return wav
