"""The log of a person's batches: note one, and what to change next."""

from __future__ import annotations

from functools import partial

from sanic import Blueprint, HTTPResponse, Request
from sanic.response import redirect
from sanic_ext import openapi

from assistant.errors import AssistantError
from assistant.planning.clock import now_here
from assistant.web.desk import Desk
from assistant.web.forms import fields, typed, whole
from assistant.web.pictured import of_batches
from assistant.web.problems import Problem, in_a_sentence
from assistant.web.settings import Settings
from assistant.web.shown import Values, bench_of, shown
from rules.errors import RulesError

routes = Blueprint("batches")
LINES = ("title", "symptom", "changed", "rating", "compared", "note")
COMPARED = ("", "better", "worse", "same")


@routes.get("/batches")
@openapi.exclude()
async def show(request: Request) -> HTTPResponse:
    """The log, by recipe."""
    settings: Settings = request.app.ctx.settings
    return await shown(request, "batches.html.j2", lambda desk, person: _page(desk, person, {}, settings))


@routes.post("/batches")
@openapi.exclude()
async def note(request: Request) -> HTTPResponse:
    """Keep a batch; the page then says what to change next."""
    given = fields(request, *LINES)
    return await shown(request, "batches.html.j2", partial(_noted, given=given, settings=request.app.ctx.settings))


@routes.post("/batches/remove")
@openapi.exclude()
async def remove(request: Request) -> HTTPResponse:
    """Forget a batch."""
    from assistant.store import batches

    number, desk, person = whole(fields(request, "id")["id"], "id"), request.app.ctx.desk, request.ctx.person
    work = partial(desk.kept, lambda store: batches.remove(store, number or 0, person))
    if not await bench_of(request).run(work):
        raise Problem(404, "There is no such batch in your log.")
    return redirect("/batches", status=303)


def _page(desk: Desk, person: str, given: dict[str, str], settings: Settings, **more: object) -> Values:
    from assistant.recipes.batch_lines import line
    from assistant.store import batches

    kitchen = desk.kitchen(person)
    found = desk.record(person, 0).kept(lambda store: batches.every(store, person)) or ()
    rows = [(batch.id, line(batch, kitchen.units)) for batch in found[::-1]]
    titles = list(dict.fromkeys(batch.recipe for batch in found[::-1]))
    return {
        "given": typed(given),
        "rows": rows,
        "titles": titles,
        "pictures": of_batches(tuple(found), kitchen, settings),
        "said": (),
        "wrong": "",
        "compared": COMPARED,
        **more,
    }


def _noted(desk: Desk, person: str, given: dict[str, str], settings: Settings) -> Values:
    from assistant.recipes.batch_lines import next_lines
    from assistant.store import noting

    if not given["title"]:
        return _page(desk, person, given, settings, wrong="What was made? Give the title of the recipe.", status=422)
    kitchen = desk.kitchen(person)
    try:
        told = noting.Told(
            title=given["title"],
            symptoms=_parts(given["symptom"]),
            changed=_parts(given["changed"]),
            rating=whole(given["rating"], "rating"),
            compared=given["compared"] if given["compared"] in COMPARED else "",
            note=given["note"],
        )
        today = now_here().date()
        batch, found = desk.kept(lambda store: noting.note(store, told, kitchen, today, person))
    except (AssistantError, RulesError, ValueError) as fault:
        return _page(desk, person, given, settings, wrong=in_a_sentence(fault), status=422)
    said = tuple(next_lines(found, batch, kitchen.units))
    return _page(desk, person, {"title": batch.recipe}, settings, said=said)


def _parts(text: str) -> list[str]:
    """What is told behind one another, with semicolons between."""
    return [part.strip() for part in text.split(";") if part.strip()]
