"""A menu: what to order for it, and when each dish is begun."""

from __future__ import annotations

from functools import partial
from typing import Any

from sanic import Blueprint, HTTPResponse, Request
from sanic.response import raw
from sanic_ext import openapi

from assistant.errors import AssistantError
from assistant.planning.clock import now_here
from assistant.planning.menu import MOST_BYTES as LARGEST_MENU
from assistant.web.asked import MenuAsked, ordered, scheduled
from assistant.web.bodies import KB
from assistant.web.desk import Desk
from assistant.web.forms import fields, typed, whole
from assistant.web.problems import Problem, in_a_sentence
from assistant.web.shown import Values, bench_of, shown
from rules.errors import RulesError
from rules.model import Kitchen

routes = Blueprint("menu")
# what a form encodes takes up to three letters for one
MOST_BYTES = 3 * LARGEST_MENU + 64 * KB
LINES = ("at", "covers", "margin", "serve", "ovens", "burners", "cooks", "want", "form")
USUAL = {"ovens": "1", "burners": "6", "cooks": "1", "margin": "5%"}
ORDER = "order"
SCHEDULE = "schedule"
FORMS = {ORDER: ("print", "csv", "xlsx", "text", "json"), SCHEDULE: ("ics", "csv", "svg", "text", "json")}


@routes.get("/menu")
@openapi.exclude()
async def show(request: Request) -> HTTPResponse:
    """The empty form."""
    return await shown(request, "menu.html.j2", lambda desk, person: _page(USUAL))


@routes.post("/menu", ctx_most_bytes=MOST_BYTES)
@openapi.exclude()
async def reckon(request: Request) -> HTTPResponse:
    """The order or the schedule, on the page, or as a file in the form that was asked for."""
    given = fields(request, *LINES, long=("menu", "on_hand"))
    if given["form"]:
        work = partial(_file, request.app.ctx.desk, request.ctx.person, given)
        written, ending = await bench_of(request, slow=True).run(work)
        name = f"{given['want']}{ending}"
        return raw(
            written, content_type="application/octet-stream",
            headers={"Content-Disposition": f'attachment; filename="{name}"'},
        )  # fmt: skip
    return await shown(request, "menu.html.j2", partial(_reckoned, given=given), slow=True)


def _page(given: dict[str, str], **more: object) -> Values:
    return {"given": typed(given), "order": None, "plan": None, "note": "", "wrong": "", "forms": FORMS, **more}


def _asked(desk: Desk, person: str, given: dict[str, str]) -> MenuAsked:
    ovens, burners, cooks = (whole(given[name] or USUAL[name], name) or 0 for name in ("ovens", "burners", "cooks"))
    return MenuAsked(
        menu=given["menu"],
        kitchen=desk.kitchen(person),
        at=given["at"],
        covers=whole(given["covers"], "covers"),
        margin=given["margin"],
        on_hand=given["on_hand"],
        serve=given["serve"],
        ovens=ovens,
        burners=burners,
        cooks=cooks,
    )


def _reckoned(desk: Desk, person: str, given: dict[str, str]) -> Values:
    from assistant.planning import order_view, plan_view

    try:
        made, note, kitchen = _made(_asked(desk, person, given), given["want"])
    except (AssistantError, RulesError) as fault:
        return _page(given, wrong=in_a_sentence(fault), status=422)
    if given["want"] == SCHEDULE:
        return _page(given, plan=plan_view.view(made, kitchen.units), note=note)
    return _page(given, order=order_view.view(made, kitchen.units))


def _made(asked: MenuAsked, want: str) -> tuple[Any, str, Kitchen]:
    if want == SCHEDULE:
        return scheduled(asked, now_here())
    sheet, kitchen = ordered(asked)
    return sheet, "", kitchen


def _file(desk: Desk, person: str, given: dict[str, str]) -> tuple[bytes, str]:
    from assistant.planning import order_forms, plan_forms

    if given["form"] not in FORMS.get(given["want"], ()):
        raise Problem(422, "There is no such form of it.")
    made, _, kitchen = _made(_asked(desk, person, given), given["want"])
    form = (plan_forms if given["want"] == SCHEDULE else order_forms).form(given["form"])
    return form.write(made, kitchen.units), form.ending
