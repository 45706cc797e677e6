"""What comes in with a request: how much is taken, and a JSON body as the dataclass that it has to be."""

from __future__ import annotations

import json
from collections.abc import Callable
from functools import cache
from typing import Any, TypeVar

from sanic import Request
from sanic.models.handler_types import RouteHandler

from assistant.json_text import NOT_KEPT, can_be_kept
from assistant.web.problems import Problem

Body = TypeVar("Body")
KB = 1024
# unless a route says more
MOST_BYTES = 64 * KB
LARGEST_BYTES = 20 * KB * KB


async def limit(request: Request, route: Any, kwargs: dict[str, Any], handler: RouteHandler) -> None:
    """Take no more of a body than its route wants, before any of it is read."""
    if request.stream is not None:
        request.stream.request_max_size = getattr(route.ctx, "most_bytes", MOST_BYTES)


def is_too_large(request: Request) -> bool:
    """Whether there is more of a body than its route takes; none of it was read then."""
    stream = request.stream
    size: int = getattr(stream, "request_bytes", None) or 0
    return stream is not None and size > stream.request_max_size


def body_of(request: Request, kind: Callable[..., Body]) -> Body:
    """The JSON body as what it has to be.

    kind: a dataclass that forbids what it does not name
    raises: Problem that says where the fault stands
    """
    from pydantic import ValidationError

    try:
        found: Body = adapter(kind).validate_python(_object(request))
        return found
    except ValidationError as fault:
        faults = [{"at": ".".join(map(str, one["loc"])), "fault": one["msg"]} for one in fault.errors()]
        told = "; ".join(f"{one['at']}: {one['fault']}" if one["at"] else one["fault"] for one in faults[:3])
        raise Problem(422, f"The body does not fit: {told}.", errors=faults) from None


def _object(request: Request) -> dict[str, Any]:
    try:
        found = json.loads(request.body)
    except (ValueError, RecursionError):
        raise Problem(400, "The body is not JSON.") from None
    if not can_be_kept(request.body, found):
        raise Problem(422, NOT_KEPT)
    if not isinstance(found, dict):
        raise Problem(422, "The body has to be a JSON object.")
    return found


@cache
def adapter(kind: Any) -> Any:
    """What holds values against a dataclass."""
    from pydantic import TypeAdapter

    return TypeAdapter(kind)
