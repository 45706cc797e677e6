"""A question, and what was said before it; nothing is kept."""

from __future__ import annotations

from dataclasses import dataclass
from functools import partial
from typing import Annotated, Any, Literal

from pydantic import ConfigDict, Field
from sanic import Blueprint, HTTPResponse, Request
from sanic.response import json

from assistant.answering import LONGEST_CONTEXT, reply_to
from assistant.replies.contract import as_json
from assistant.web.bodies import KB, body_of
from assistant.web.desk import Desk
from assistant.web.documented import documented
from assistant.web.named import kitchen_of, workroom_of

routes = Blueprint("api_ask", url_prefix="/api")
LONGEST = 200_000
MOST_BYTES = 1024 * KB
Text = Annotated[str, Field(max_length=LONGEST)]


@dataclass(frozen=True, slots=True, kw_only=True)
class Question:
    """A question."""

    __pydantic_config__ = ConfigDict(extra="forbid")
    text: Annotated[str, Field(min_length=1, max_length=LONGEST, description="the question, in any words")]
    context: Annotated[
        list[Text], Field(max_length=LONGEST_CONTEXT, description="what was said before, oldest first")
    ] = Field(default_factory=list)
    at: Annotated[str, Field(max_length=200, description="the elevation, where the question has none: 7000ft")] = ""
    kitchen: Annotated[str, Field(max_length=80, description="a kitchen by name, in place of `at`")] = ""
    units: Annotated[Literal["us", "metric"] | None, Field(description="which units stand first")] = None
    depth: Annotated[int | None, Field(ge=1, le=3, description="1 one line, 2 a paragraph, 3 the equations")] = None


@routes.post("/ask", ctx_most_bytes=MOST_BYTES)
@documented("ask", Question)
async def ask(request: Request) -> HTTPResponse:
    """Answer."""
    asked = body_of(request, Question)
    work = partial(_answer, request.app.ctx.desk, request.ctx.person, asked)
    return json(await workroom_of(request).quick.run(work))


def _answer(desk: Desk, person: str, asked: Question) -> dict[str, Any]:
    kitchen = kitchen_of(desk, person, asked.kitchen, asked.at, asked.units)
    return as_json(reply_to(asked.text, asked.context, kitchen, asked.depth))
