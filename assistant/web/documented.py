"""The calls of the API as they are documented: rows of data/web/calls.toml, held against the handlers they are for."""

from __future__ import annotations

import json
from collections.abc import Callable
from dataclasses import dataclass
from functools import cache
from typing import Any, TypeVar

from sanic_ext.extensions.openapi.builders import OperationStore

from assistant.web.bodies import adapter
from assistant.web.problems import PROBLEM
from rules import tables

CALLS = "web/calls.toml"
JSON = "application/json"
A_PROBLEM = {
    "type": "object",
    "required": ["type", "title", "status", "detail"],
    "properties": {
        "type": {"type": "string"}, "title": {"type": "string"}, "status": {"type": "integer"},
        "detail": {"type": "string"},
    },
}  # fmt: skip
FAULTS = {
    400: "The body is not JSON.",
    415: "It is not sent as JSON.",
    422: "Something in it does not do; detail says what.",
}
Handler = TypeVar("Handler", bound=Callable[..., Any])


@dataclass(frozen=True, slots=True, kw_only=True)
class Call:
    """A call. send: the example, a JSON body or what follows the ? of the address; gives: members that come back"""

    id: str
    method: str
    path: str
    summary: str
    says: str
    send: str
    gives: list[str]


@cache
def calls() -> tuple[Call, ...]:
    """All calls, in the order in which they are documented."""
    return tuple(Call(**row) for row in tables.read_toml(CALLS)["call"])


def in_openapi(schema: Any) -> Any:
    """A JSON schema as OpenAPI 3.0 writes it, which has no type for nothing, and marks a bound that is left out.

    >>> in_openapi({"anyOf": [{"type": "integer"}, {"type": "null"}], "default": None})
    {'type': 'integer', 'nullable': True, 'default': None}
    >>> in_openapi({"type": "number", "exclusiveMinimum": 0})
    {'type': 'number', 'exclusiveMinimum': True, 'minimum': 0}
    """
    if isinstance(schema, list):
        return [in_openapi(part) for part in schema]
    if not isinstance(schema, dict):
        return schema
    schema = {name: in_openapi(part) for name, part in schema.items()}
    for bound in ("Minimum", "Maximum"):
        if f"exclusive{bound}" in schema:
            schema |= {f"exclusive{bound}": True, bound.lower(): schema[f"exclusive{bound}"]}
    ways = schema.get("anyOf", [])
    if {"type": "null"} not in ways or len(ways) != 2:
        return schema
    kept = next(way for way in ways if way != {"type": "null"})
    return {**kept, "nullable": True, **{name: part for name, part in schema.items() if name != "anyOf"}}


def documented(id: str, body: type | None = None, query: dict[str, str] | None = None) -> Callable[[Handler], Handler]:
    """Documents a handler by the row of its id. body: what it takes; query: its parameters, each with what it is for"""
    call = next(call for call in calls() if call.id == id)

    def document(handler: Handler) -> Handler:
        operation = OperationStore()[handler]
        operation.name(id)
        operation.describe(call.summary, call.says)
        for name, says in (query or {}).items():
            operation.parameter(name, str, "query", description=says)
        if body is not None:
            content = {"schema": in_openapi(adapter(body).json_schema()), "example": json.loads(call.send)}
            operation.body({JSON: content}, required=True)
        members: dict[str, Any] = {name: {} for name in call.gives}
        operation.response(200, {JSON: {"schema": {"type": "object", "properties": members, "required": call.gives}}},
                           description=call.summary)  # fmt: skip
        for status, says in FAULTS.items() if body is not None else ():
            operation.response(status, {PROBLEM: {"schema": A_PROBLEM}}, description=says)
        return handler

    return document
