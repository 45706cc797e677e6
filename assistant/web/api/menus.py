"""A menu: what to order for it, and when each dish is begun."""

from __future__ import annotations

from dataclasses import dataclass
from functools import partial
from typing import Annotated, Any, Literal

from pydantic import ConfigDict, Field
from sanic import Blueprint, HTTPResponse, Request
from sanic.response import json

from assistant.planning.asked import MARGIN
from assistant.planning.clock import now_here
from assistant.planning.menu import MOST_BYTES as LARGEST_MENU
from assistant.planning.order_forms.json import as_json as order_as_json
from assistant.planning.plan_forms.json import as_json as plan_as_json
from assistant.web.asked import MenuAsked, ordered, scheduled
from assistant.web.bodies import KB, body_of
from assistant.web.desk import Desk
from assistant.web.documented import documented
from assistant.web.named import kitchen_of, workroom_of

routes = Blueprint("api_menus", url_prefix="/api")
MOST_BYTES = 2 * LARGEST_MENU + 64 * KB
Menu = Annotated[str, Field(min_length=1, description="a menu as text or CSV, a dish a line")]
At = Annotated[str, Field(max_length=200, description="the elevation of the kitchen: 7000ft, 2130m, a town")]
Named = Annotated[str, Field(max_length=80, description="a kitchen by name, in place of `at`")]
Covers = Annotated[int | None, Field(description="how many guests; otherwise as the menu says")]
First = Annotated[Literal["us", "metric"] | None, Field(description="which units stand first")]


@dataclass(frozen=True, slots=True, kw_only=True)
class ToOrder:
    """A menu to order for."""

    __pydantic_config__ = ConfigDict(extra="forbid")
    menu: Menu
    at: At = ""
    kitchen: Named = ""
    covers: Covers = None
    margin: Annotated[str, Field(max_length=20, description="what to order on top")] = MARGIN
    on_hand: Annotated[str, Field(description="what is in the stores: 20 lb flour, a line each")] = ""
    units: First = None


@dataclass(frozen=True, slots=True, kw_only=True)
class ToSchedule:
    """A menu to be ready at service."""

    __pydantic_config__ = ConfigDict(extra="forbid")
    menu: Menu
    serve: Annotated[str, Field(max_length=200, description="when service is; otherwise as the menu says")] = ""
    at: At = ""
    kitchen: Named = ""
    covers: Covers = None
    ovens: int = 1
    burners: int = 6
    cooks: int = 1
    zone: Annotated[str, Field(max_length=80, description="time zone; otherwise that of the server")] = ""
    units: First = None


@routes.post("/order", ctx_most_bytes=MOST_BYTES)
@documented("order", ToOrder)
async def order(request: Request) -> HTTPResponse:
    """Order."""
    asked = body_of(request, ToOrder)
    return json(await workroom_of(request).slow.run(partial(_order, request.app.ctx.desk, request.ctx.person, asked)))


@routes.post("/schedule", ctx_most_bytes=MOST_BYTES)
@documented("schedule", ToSchedule)
async def schedule(request: Request) -> HTTPResponse:
    """Schedule."""
    asked = body_of(request, ToSchedule)
    work = partial(_schedule, request.app.ctx.desk, request.ctx.person, asked)
    return json(await workroom_of(request).slow.run(work))


def _order(desk: Desk, person: str, asked: ToOrder) -> dict[str, Any]:
    sheet, kitchen = ordered(
        MenuAsked(
            menu=asked.menu, kitchen=kitchen_of(desk, person, asked.kitchen, "", None), at=asked.at,
            units=asked.units or "", covers=asked.covers, margin=asked.margin, on_hand=asked.on_hand,
        )
    )  # fmt: skip
    return order_as_json(sheet, kitchen.units)


def _schedule(desk: Desk, person: str, asked: ToSchedule) -> dict[str, Any]:
    plan, _, kitchen = scheduled(
        MenuAsked(
            menu=asked.menu, kitchen=kitchen_of(desk, person, asked.kitchen, "", None), at=asked.at,
            units=asked.units or "", covers=asked.covers, serve=asked.serve, zone=asked.zone, ovens=asked.ovens,
            burners=asked.burners, cooks=asked.cooks,
        ),
        now_here(),
    )  # fmt: skip
    return plan_as_json(plan, kitchen.units)
