"""The wall card of a place."""

from __future__ import annotations

from dataclasses import asdict
from functools import partial
from pathlib import Path

from sanic import Blueprint, HTTPResponse, Request
from sanic.response import json, raw

from assistant.printing.card import Card, card_for
from assistant.web.asked import placed
from assistant.web.desk import Desk
from assistant.web.documented import documented
from assistant.web.named import kitchen_of, workroom_of
from assistant.web.pages.card import ENDINGS
from assistant.web.problems import Problem

routes = Blueprint("api_card", url_prefix="/api")
QUERY = {
    "at": "the elevation: 7000ft, 2130m, a town",
    "kitchen": "a kitchen by name, in place of it",
    "title": "what stands at its head",
    "units": "us or metric",
    "form": "json, pdf, svg or png",
}
LONGEST = 200


@routes.get("/card")
@documented("card", query=QUERY)
async def card(request: Request) -> HTTPResponse:
    """The card."""
    asked = {name: str(request.args.get(name) or "")[:LONGEST] for name in QUERY}
    if asked["form"] not in ("", "json", *ENDINGS):
        raise Problem(422, f"form is json, {', '.join(ENDINGS)}.")
    made = await workroom_of(request).slow.run(partial(_made, request.app.ctx.desk, request.ctx.person, asked))
    return json(asdict(made)) if isinstance(made, Card) else raw(made, content_type=ENDINGS[asked["form"]])


def _made(desk: Desk, person: str, asked: dict[str, str]) -> Card | bytes:
    kitchen = kitchen_of(desk, person, asked["kitchen"], asked["at"], asked["units"])
    made = card_for(asked["title"] or kitchen.name, placed(kitchen), kitchen.units)
    if asked["form"] not in ENDINGS:
        return made
    from assistant.printing.card_drawn import page
    from assistant.printing.drawing import as_files

    return next(iter(as_files([page(made, "letter")], Path(f"card.{asked['form']}")).values()))
