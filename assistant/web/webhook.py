"""Rasa's webhook on the same server: the actions of the action server, with the same contract and the same words."""

from __future__ import annotations

import asyncio
from functools import partial

from rasa_sdk.interfaces import ActionExecutionRejection, ActionMissingDomainException, ActionNotFoundException
from sanic import HTTPResponse, Request, Sanic
from sanic.response import json as as_json
from sanic_ext import openapi

from assistant.dialogue import server
from assistant.dialogue.executor import KitchenExecutor
from assistant.web.workroom import Workroom


def add(app: Sanic) -> None:
    """Add POST /webhook and GET /actions."""
    app.add_route(webhook, "/webhook", methods=("POST",), ctx_most_bytes=server.MOST_BYTES)
    app.add_route(actions, "/actions", methods=("GET",))
    app.before_server_start(_make)


async def _make(app: Sanic) -> None:
    app.ctx.executor = KitchenExecutor(app.ctx.desk.keeper)


@openapi.exclude()
async def webhook(request: Request) -> HTTPResponse:
    """Run an action."""
    call, problem = server.call_of(request)
    if problem:
        return as_json({"error": problem, "action_name": None}, status=400)
    workroom: Workroom = request.app.ctx.workroom
    return await workroom.quick.run(partial(_run, request.app.ctx.executor, call))


def _run(executor: KitchenExecutor, call: dict[str, object]) -> HTTPResponse:
    try:
        result = asyncio.run(executor.run(call))
    except (ActionExecutionRejection, ActionNotFoundException, ActionMissingDomainException) as fault:
        statuses = {ActionNotFoundException: 404, ActionMissingDomainException: 449}
        error = {"error": fault.message, "action_name": fault.action_name}
        return as_json(error, status=statuses.get(type(fault), 400))
    return as_json(result.model_dump() if result else None)


@openapi.exclude()
async def actions(request: Request) -> HTTPResponse:
    """The actions there are."""
    return as_json([action.model_dump() for action in request.app.ctx.executor.list_actions()])
