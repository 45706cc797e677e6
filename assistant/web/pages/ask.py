"""The conversation: a question, the reply in large type, and what was said before."""

from __future__ import annotations

from functools import partial

from sanic import Blueprint, HTTPResponse, Request
from sanic.response import redirect
from sanic_ext import openapi

from assistant.web.bodies import KB
from assistant.web.desk import Desk
from assistant.web.forms import fields
from assistant.web.people import COOKIE
from assistant.web.pictured import of_answer, of_wish
from assistant.web.settings import Settings
from assistant.web.shown import Values, bench_of, shown

routes = Blueprint("ask")
# a question may hold a whole recipe
MOST_BYTES = 512 * KB


@routes.get("/")
@openapi.exclude()
async def show(request: Request) -> HTTPResponse:
    """The page."""
    return await shown(request, "ask.html.j2", partial(said_so_far, settings=request.app.ctx.settings))


@routes.post("/ask", ctx_most_bytes=MOST_BYTES)
@openapi.exclude()
async def ask(request: Request) -> HTTPResponse:
    """Take a question; the reply is on the page that follows."""
    text = fields(request, long=("text",))["text"]
    if text:
        await bench_of(request).run(partial(_desk(request).say, request.ctx.person, text))
    return redirect("/#reply", status=303)


@routes.post("/forget")
@openapi.exclude()
async def forget(request: Request) -> HTTPResponse:
    """Forget a person and what they said."""
    await bench_of(request).run(partial(_desk(request).forget, request.ctx.person))
    response = redirect("/", status=303)
    request.ctx.known_from_now_on = False
    response.delete_cookie(COOKIE, path="/")
    return response


def said_so_far(desk: Desk, person: str, settings: Settings) -> Values:
    """The conversation, the latest first, and the picture of the latest answer."""
    exchanges = desk.exchanges(person)
    wish = desk.wanted_picture(person, exchanges[0]) if exchanges else None
    question = desk.question(person) if exchanges and wish is None else None
    picture = None
    if wish:
        picture = of_wish(wish, settings)
    elif question and question.text == exchanges[0].asked:
        # beside a question there may be talk that leaves it as it was
        picture = of_answer(question, settings)
    return {"exchanges": exchanges, "picture": picture, "nothing_to_draw": wish is not None and picture is None}


def _desk(request: Request) -> Desk:
    desk: Desk = request.app.ctx.desk
    return desk
