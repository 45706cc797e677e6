"""A recipe at another elevation."""

from __future__ import annotations

from dataclasses import dataclass
from functools import partial
from typing import Annotated, Any, Literal

from pydantic import ConfigDict, Field
from sanic import Blueprint, HTTPResponse, Request
from sanic.response import json

from assistant.recipes.read import MOST_BYTES as LARGEST_RECIPE
from assistant.replies.recipe.forms.json import as_json
from assistant.web.asked import converted
from assistant.web.bodies import KB, body_of
from assistant.web.desk import Desk
from assistant.web.documented import documented
from assistant.web.named import kitchen_of, workroom_of

routes = Blueprint("api_convert", url_prefix="/api")
# JSON writes a quote or a line break as two letters
MOST_BYTES = 2 * LARGEST_RECIPE + 64 * KB


@dataclass(frozen=True, slots=True, kw_only=True)
class ToConvert:
    """A recipe, and where it goes."""

    __pydantic_config__ = ConfigDict(extra="forbid")
    recipe: Annotated[str, Field(min_length=1, description="text, JSON-LD or a saved page")]
    to: Annotated[str, Field(max_length=200, description="the elevation to cook at: 7000ft, 2130m, a town")] = ""
    written_for: Annotated[
        str, Field(alias="from", max_length=200, description="the elevation it is right for; sea level otherwise")
    ] = ""
    kitchen: Annotated[str, Field(max_length=80, description="a kitchen by name, in place of `to`")] = ""
    style: Annotated[str, Field(max_length=80, description="such as layer_cake; recognised otherwise")] = ""
    servings: Annotated[float | None, Field(gt=0, allow_inf_nan=False, description="how many it should make")] = None
    units: Annotated[Literal["us", "metric"] | None, Field(description="which units stand first")] = None


@routes.post("/convert", ctx_most_bytes=MOST_BYTES)
@documented("convert", ToConvert)
async def convert(request: Request) -> HTTPResponse:
    """Convert."""
    asked = body_of(request, ToConvert)
    work = partial(_converted, request.app.ctx.desk, request.ctx.person, asked)
    return json(await workroom_of(request).slow.run(work))


def _converted(desk: Desk, person: str, asked: ToConvert) -> dict[str, Any]:
    kitchen = kitchen_of(desk, person, asked.kitchen, asked.to, asked.units)
    made = converted(
        asked.recipe, kitchen, written_for=asked.written_for, style=asked.style, servings=asked.servings
    )  # fmt: skip
    return as_json(made, kitchen.units)
