"""The kitchens of whoever calls."""

from __future__ import annotations

from dataclasses import dataclass
from functools import partial
from typing import Annotated, Any, Literal
from urllib.parse import unquote

from pydantic import ConfigDict, Field
from sanic import Blueprint, HTTPResponse, Request
from sanic.response import json

from assistant.store import kitchens
from assistant.understanding import kitchen_fields
from assistant.understanding.elevation_told import elevation_told
from assistant.web.bodies import body_of
from assistant.web.desk import Desk
from assistant.web.documented import documented
from assistant.web.named import as_values
from assistant.web.shown import bench_of

routes = Blueprint("api_kitchens", url_prefix="/api")
MOST_PIECES = 40


@dataclass(frozen=True, slots=True, kw_only=True)
class NewKitchen:
    """A kitchen to keep."""

    __pydantic_config__ = ConfigDict(extra="forbid")
    name: Annotated[str, Field(min_length=1, max_length=kitchens.LONGEST_NAME, description="what you call it")]
    at: Annotated[str, Field(min_length=1, max_length=200, description="its elevation: 7000ft, 2130m, a town")]
    units: Annotated[Literal["us", "metric"] | None, Field(description="otherwise those of the elevation")] = None
    equipment: Annotated[list[str], Field(max_length=MOST_PIECES)] = Field(default_factory=list)
    replace: Annotated[bool, Field(description="overwrite the kitchen of that name")] = False


@routes.get("/kitchens")
@documented("kitchens")
async def every(request: Request) -> HTTPResponse:
    """All of them."""
    return json(await bench_of(request).run(partial(_every, request.app.ctx.desk, request.ctx.person)))


@routes.post("/kitchens")
@documented("add_kitchen", NewKitchen)
async def add(request: Request) -> HTTPResponse:
    """Keep one."""
    new = body_of(request, NewKitchen)
    return json(await bench_of(request).run(partial(_added, request.app.ctx.desk, request.ctx.person, new)))


@routes.delete("/kitchens/<name:str>")
@documented("remove_kitchen")
async def remove(request: Request, name: str) -> HTTPResponse:
    """Forget one."""
    desk, person = request.app.ctx.desk, request.ctx.person
    work = partial(desk.kept, lambda store: kitchens.remove(store, unquote(name), person))
    return json(as_values(await bench_of(request).run(work)))


def _every(desk: Desk, person: str) -> dict[str, Any]:
    own = desk.kept(lambda store: kitchens.every(store, person))
    return {"kitchens": [*map(as_values, own)], "house": [*map(as_values, desk.kept(kitchens.every))]}


def _added(desk: Desk, person: str, new: NewKitchen) -> dict[str, Any]:
    heard = elevation_told(new.at)
    kitchen = kitchens.SavedKitchen(
        name=new.name,
        elevation_m=heard.elevation_m,
        place=new.at if heard.elevation_from == "place" else "",
        units=new.units or heard.units,
        equipment=tuple(dict.fromkeys(kitchen_fields.equipment_id(words) for words in new.equipment)),
    )
    return as_values(desk.kept(lambda store: kitchens.add(store, kitchen, replacing=new.replace, owner=person)))
