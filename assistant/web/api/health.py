"""Whether the server is well."""

from __future__ import annotations

from sanic import Blueprint, HTTPResponse, Request
from sanic.response import json

from assistant.web import entry
from assistant.web.documented import documented
from assistant.web.settings import Settings

routes = Blueprint("api_health", url_prefix="/api")


@routes.get("/health")
@documented("health")
async def health(request: Request) -> HTTPResponse:
    """How it is; what is wrong with the store is told only to who may come in."""
    settings: Settings = request.app.ctx.settings
    well = {"status": "ok"}
    if settings.token and not entry.has_entry(request, settings):
        return json(well)
    fault = request.app.ctx.desk.fault
    return json({**well, "store": fault or "ok"})
