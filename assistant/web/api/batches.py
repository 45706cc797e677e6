"""The log of batches of whoever calls."""

from __future__ import annotations

from dataclasses import asdict, dataclass
from functools import partial
from typing import Annotated, Any, Literal

from pydantic import ConfigDict, Field
from sanic import Blueprint, HTTPResponse, Request
from sanic.response import json

from assistant.planning.clock import now_here
from assistant.recipes.batch_lines import next_lines
from assistant.store import batches, noting
from assistant.store.batches import Batch
from assistant.web.bodies import body_of
from assistant.web.desk import Desk
from assistant.web.documented import documented
from assistant.web.named import kitchen_of
from assistant.web.problems import Problem
from assistant.web.shown import bench_of

routes = Blueprint("api_batches", url_prefix="/api")
Words = Annotated[str, Field(max_length=400)]


@dataclass(frozen=True, slots=True, kw_only=True)
class NewBatch:
    """A batch to note."""

    __pydantic_config__ = ConfigDict(extra="forbid")
    recipe: Annotated[str, Field(min_length=1, max_length=200, description="the recipe's title")]
    at: Annotated[str, Field(max_length=200, description="where it was made: 7000ft, 2130m, a town")] = ""
    kitchen: Annotated[str, Field(max_length=80, description="a kitchen by name, in place of `at`")] = ""
    symptoms: Annotated[list[Words], Field(max_length=20, description="what went wrong")] = Field(default_factory=list)
    changed: Annotated[list[Words], Field(max_length=20, description="against the batch before")] = Field(
        default_factory=list
    )
    rating: Annotated[int | None, Field(ge=1, le=5)] = None
    than_before: Literal["better", "worse", "same"] | None = None
    note: Annotated[str, Field(max_length=2000)] = ""


@routes.get("/batches")
@documented("batches", query={"recipe": "only those of this title"})
async def every(request: Request) -> HTTPResponse:
    """All of them, or those of a recipe."""
    title, desk, person = str(request.args.get("recipe") or ""), request.app.ctx.desk, request.ctx.person

    def found() -> list[dict[str, Any]]:
        rows = desk.kept(
            lambda store: batches.of_recipe(store, title, person) if title else batches.every(store, person)
        )
        return [_as_values(batch) for batch in rows]

    return json({"batches": await bench_of(request).run(found)})


@routes.post("/batches")
@documented("add_batch", NewBatch)
async def add(request: Request) -> HTTPResponse:
    """Note one."""
    new = body_of(request, NewBatch)
    return json(await bench_of(request).run(partial(_noted, request.app.ctx.desk, request.ctx.person, new)))


@routes.delete("/batches/<id:int>")
@documented("remove_batch")
async def remove(request: Request, id: int) -> HTTPResponse:
    """Forget one."""
    desk, person = request.app.ctx.desk, request.ctx.person
    if not await bench_of(request).run(partial(desk.kept, lambda store: batches.remove(store, id, person))):
        raise Problem(404, "There is no such batch in your log.")
    return json({"removed": id})


def _noted(desk: Desk, person: str, new: NewBatch) -> dict[str, Any]:
    kitchen = kitchen_of(desk, person, new.kitchen, new.at, None)
    told = noting.Told(
        title=new.recipe, symptoms=new.symptoms, changed=new.changed, rating=new.rating, note=new.note,
        compared=new.than_before or "",
    )  # fmt: skip
    today = now_here().date()
    batch, found = desk.kept(lambda store: noting.note(store, told, kitchen, today, person))
    return {"batch": _as_values(batch), "next": list(next_lines(found, batch, kitchen.units))}


def _as_values(batch: Batch) -> dict[str, Any]:
    """A batch as `simmerline batch list --json` has it."""
    return {**asdict(batch), "made_on": batch.made_on.isoformat()}
