"""The pictures of the pages, each in the colours of a light or a dark page, for a wide or a narrow one."""

from __future__ import annotations

from functools import partial

from sanic import Blueprint, HTTPResponse, Request
from sanic.response import raw
from sanic_ext import openapi

from assistant.recipes.batch import Batch
from assistant.store import batches
from assistant.web import guard, pictured
from assistant.web.desk import Desk
from assistant.web.named import workroom_of
from assistant.web.problems import Problem
from assistant.web.shelf import Shelf

routes = Blueprint("pictures")
# what is at an address stays what it is
HEADERS = {"Cache-Control": "private, max-age=86400", "Content-Security-Policy": guard.MADE_SHEET}


@routes.get("/picture/<scheme:str>/<width:str>")
@openapi.exclude()
async def show(request: Request, scheme: str, width: str) -> HTTPResponse:
    """A picture."""
    if scheme not in pictured.SCHEMES or width not in pictured.WIDTHS:
        raise Problem(404, "There is no such picture.")
    of, mark = (str(request.args.get(name) or "") for name in ("of", "mark"))
    drawing = pictured.read(of, mark, request.app.ctx.settings)
    shelf: Shelf = request.app.ctx.shelf
    # a log is drawn for its own person alone
    key = (of, scheme, width, request.ctx.person if drawing.kind == pictured.BATCHES else "")
    svg = shelf.get(key)
    if svg is None:
        log = partial(_log, request.app.ctx.desk, request.ctx.person)
        svg = await workroom_of(request).slow.run(partial(pictured.drawn, drawing, scheme, width, log))
        shelf.put(key, svg)
    return raw(svg, content_type="image/svg+xml", headers=HEADERS)


def _log(desk: Desk, person: str) -> tuple[Batch, ...]:
    return tuple(desk.kept(lambda store: batches.every(store, person)))
