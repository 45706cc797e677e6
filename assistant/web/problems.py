"""What is told when something cannot be done: problem+json (RFC 9457) to programs, a page to people."""

from __future__ import annotations

import json
from http import HTTPStatus
from typing import Any

from sanic import HTTPResponse, Request

PROBLEM = "application/problem+json"
FOR_PROGRAMS = ("/api", "/webhook", "/actions", "/metrics")


class Problem(Exception):
    """Something that cannot be done as asked. status: of HTTP; detail: what is wrong, and what to do

    more: further members of the object, such as where in the body the fault stands
    """

    def __init__(self, status: int, detail: str, **more: Any) -> None:
        super().__init__(status, detail)
        self.status, self.detail, self.more = status, detail, more


def as_object(status: int, detail: str, **more: Any) -> dict[str, Any]:
    """The members of a problem, as the RFC names them.

    >>> as_object(404, "There is no such page.")["title"]
    'Not Found'
    """
    return {"type": "about:blank", "title": HTTPStatus(status).phrase, "status": status, "detail": detail, **more}


def in_a_sentence(fault: Exception) -> str:
    """What a fault says, as a sentence opens."""
    text = str(fault)
    return f"{text[:1].upper()}{text[1:]}"


def for_programs(request: Request) -> bool:
    """Whether a program asks, rather than a browser for a page."""
    path = request.path
    return any(path == start or path.startswith(f"{start}/") for start in FOR_PROGRAMS)


def as_response(status: int, detail: str, **more: Any) -> HTTPResponse:
    """A problem as a response to a program."""
    body = json.dumps(as_object(status, detail, **more), ensure_ascii=False)
    return HTTPResponse(body, status=status, content_type=PROBLEM)
