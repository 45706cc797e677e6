"""A recipe pasted, dropped or uploaded, and the same recipe here: side by side, each change with its reason."""

from __future__ import annotations

from functools import partial

from sanic import Blueprint, HTTPResponse, Request
from sanic.response import raw
from sanic_ext import openapi

from assistant.errors import AssistantError
from assistant.recipes.read import MOST_BYTES as LARGEST_RECIPE
from assistant.web import foreign
from assistant.web.asked import NotTold, converted, kitchen_at
from assistant.web.bodies import KB
from assistant.web.desk import Desk
from assistant.web.forms import fields, typed, upload
from assistant.web.pictured import of_recipe
from assistant.web.problems import Problem, in_a_sentence
from assistant.web.settings import Settings
from assistant.web.shown import Values, bench_of, shown
from rules.errors import RulesError

routes = Blueprint("recipe")
ROOM_FOR_FIELDS = 256 * KB
FORMS = ("html", "text", "markdown", "csv", "json", "jsonld")
LINES = ("at", "written_for", "servings", "form")


@routes.get("/recipe")
@openapi.exclude()
async def show(request: Request) -> HTTPResponse:
    """The empty form."""
    return await shown(request, "recipe.html.j2", lambda desk, person: _page({}))


@routes.post("/recipe", ctx_most_bytes=LARGEST_RECIPE + ROOM_FOR_FIELDS)
@openapi.exclude()
async def convert(request: Request) -> HTTPResponse:
    """The recipe here, on the page, or as a file in the form that was asked for."""
    given = fields(request, *LINES, long=("recipe",))
    name, content = upload(request, "file")
    if given["form"]:
        work = partial(_file, request.app.ctx.desk, request.ctx.person, given, content)
        written, ending = await bench_of(request, slow=True).run(work)
        return raw(
            written, content_type="application/octet-stream",
            headers={"Content-Disposition": f'attachment; filename="recipe{ending}"'},
        )  # fmt: skip
    return await shown(
        request, "recipe.html.j2",
        partial(_converted, given=given, name=name, content=content, settings=request.app.ctx.settings), slow=True,
    )  # fmt: skip


def _page(given: dict[str, str], **more: object) -> Values:
    return {"given": typed(given), "forms": FORMS, "recipe": None, "picture": None, "wrong": "", "original": "", **more}


def _converted(desk: Desk, person: str, given: dict[str, str], name: str, content: bytes, settings: Settings) -> Values:
    from assistant.replies.recipe.view import view

    if content:
        # what came as a file stands in the field, so that it can be put right and sent again
        given = {**given, "recipe": foreign.as_text(content)}
    try:
        kitchen = kitchen_at(desk.kitchen(person), given["at"])
        made = converted(
            content or given["recipe"], kitchen, written_for=given["written_for"], servings=_servings(given),
            name=name or "the recipe",
        )  # fmt: skip
    except (AssistantError, RulesError) as fault:
        return _page(given, wrong=in_a_sentence(fault), status=422)
    picture = of_recipe(made, kitchen.units, settings)
    original = foreign.as_page(given["recipe"])
    return _page(given, recipe=view(made, kitchen.units), picture=picture, original=original)


def _file(desk: Desk, person: str, given: dict[str, str], content: bytes) -> tuple[bytes, str]:
    from assistant.replies.recipe import forms

    if given["form"] not in FORMS:
        raise Problem(422, f"There is no form {given['form']}; there are {', '.join(FORMS)}.")
    kitchen = kitchen_at(desk.kitchen(person), given["at"])
    made = converted(
        content or given["recipe"], kitchen, written_for=given["written_for"], servings=_servings(given)
    )  # fmt: skip
    form = forms.form(given["form"])
    return form.write(made, kitchen.units).encode(), form.ending


def _servings(given: dict[str, str]) -> float | None:
    if not given["servings"]:
        return None
    try:
        return float(given["servings"])
    except ValueError:
        raise NotTold("portions", "Servings is a number, such as 24.") from None
