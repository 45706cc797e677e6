"""What is installed here, what programs can ask for, and the door where the access token is told."""

from __future__ import annotations

from sanic import Blueprint, HTTPResponse, Request
from sanic.response import html, redirect
from sanic_ext import openapi

from assistant import parts
from assistant.web import entry
from assistant.web.desk import Desk
from assistant.web.documented import calls
from assistant.web.forms import field
from assistant.web.shown import Values, shown, templates

routes = Blueprint("about")


@routes.get("/parts")
@openapi.exclude()
async def installed(request: Request) -> HTTPResponse:
    """The parts there are, and how to get those that are missing."""
    return await shown(request, "parts.html.j2", _parts)


@routes.get("/programs")
@openapi.exclude()
async def programs(request: Request) -> HTTPResponse:
    """The API with its examples."""
    return await shown(request, "programs.html.j2", lambda desk, person: {"calls": calls()})


@routes.get("/enter")
@openapi.exclude()
async def door(request: Request) -> HTTPResponse:
    """Ask for the token."""
    return html(templates().get_template("enter.html.j2").render(wrong=False))


@routes.post("/enter")
@openapi.exclude()
async def enter(request: Request) -> HTTPResponse:
    """Take the token."""
    settings = request.app.ctx.settings
    told = field(request, "token")
    if settings.token and entry.is_token(told, settings):
        return entry.give_pass(redirect("/", status=303), settings)
    await entry.refuse()
    return html(templates().get_template("enter.html.j2").render(wrong=True), status=403)


def _parts(desk: Desk, person: str) -> Values:
    return {"parts": [(part, parts.lacks(part)) for part in parts.PARTS], "versions": tuple(parts.versions())}
