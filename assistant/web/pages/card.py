"""The card for the wall and the plots: on the page as tables, and as files where something draws."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from pathlib import Path

from sanic import Blueprint, HTTPResponse, Request
from sanic.response import raw
from sanic_ext import openapi

from assistant.errors import AssistantError
from assistant.web import guard
from assistant.web.asked import kitchen_at, placed
from assistant.web.desk import Desk
from assistant.web.pictured import OF_PLACE, of_place
from assistant.web.problems import Problem, in_a_sentence
from assistant.web.settings import Settings
from assistant.web.shown import Values, bench_of, shown
from rules.errors import RulesError

routes = Blueprint("card")
ENDINGS = {"pdf": "application/pdf", "svg": "image/svg+xml", "png": "image/png"}
LONGEST = 100


@routes.get("/card")
@openapi.exclude()
async def show(request: Request) -> HTTPResponse:
    """The card of the kitchen, or of the place that is told."""
    at = str(request.args.get("at") or "").strip()[:LONGEST]
    return await shown(request, "card.html.j2", partial(_page, at=at, settings=request.app.ctx.settings), slow=True)


@routes.get("/card/wall/<ending:str>")
@openapi.exclude()
async def file(request: Request, ending: str) -> HTTPResponse:
    """The card as a file."""
    return await _drawn(request, ending, _card)


@routes.get("/card/plot/<kind:str>/<ending:str>")
@openapi.exclude()
async def plot(request: Request, kind: str, ending: str) -> HTTPResponse:
    """A plot as a file."""
    if kind not in OF_PLACE:
        raise Problem(404, "There is no such plot.")
    return await _drawn(request, ending, partial(_plot, kind=kind))


async def _drawn(request: Request, ending: str, draw: Callable[[Desk, str, str, str], bytes]) -> HTTPResponse:
    if ending not in ENDINGS:
        raise Problem(404, "A card is .pdf, .svg or .png.")
    at = str(request.args.get("at") or "").strip()[:LONGEST]
    work = partial(draw, request.app.ctx.desk, request.ctx.person, at, ending)
    made = await bench_of(request, slow=True).run(work)
    return raw(made, content_type=ENDINGS[ending], headers={"Content-Security-Policy": guard.MADE_SHEET})


def _page(desk: Desk, person: str, at: str, settings: Settings) -> Values:
    from assistant.printing.card import card_for

    page: Values = {"at": at, "pictures": (), "card": None, "wrong": ""}
    try:
        kitchen = kitchen_at(desk.kitchen(person), at)
        if kitchen.elevation_m is None:
            return page
        card = card_for(kitchen.name, kitchen.elevation_m, kitchen.units)
        return page | {"card": card, "pictures": of_place(kitchen, settings)}
    except (AssistantError, RulesError) as fault:
        return page | {"wrong": in_a_sentence(fault), "status": 422}


def _card(desk: Desk, person: str, at: str, ending: str) -> bytes:
    from assistant.printing.card import card_for
    from assistant.printing.card_drawn import page
    from assistant.printing.drawing import as_files

    kitchen = kitchen_at(desk.kitchen(person), at)
    made = page(card_for(kitchen.name, placed(kitchen), kitchen.units), "letter")
    return next(iter(as_files([made], Path(f"card.{ending}")).values()))


def _plot(desk: Desk, person: str, at: str, ending: str, kind: str) -> bytes:
    from assistant.printing.drawing import as_files
    from assistant.printing.plots import Asked, drawer

    kitchen = kitchen_at(desk.kitchen(person), at)
    drawn = drawer(kind)(Asked(placed(kitchen), kitchen.units))
    return next(iter(as_files([drawn], Path(f"plot.{ending}")).values()))
