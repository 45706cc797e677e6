"""Where a person cooks: told, by a barometer, by a boil test, by where the device is; and their kitchens by name."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from functools import partial

from sanic import Blueprint, HTTPResponse, Request
from sanic.response import redirect
from sanic_ext import openapi

from assistant.errors import AssistantError
from assistant.web import whereabouts
from assistant.web.desk import Desk
from assistant.web.forms import fields, several, typed
from assistant.web.problems import Problem, in_a_sentence
from assistant.web.shown import Values, bench_of, shown
from rules.errors import RulesError
from rules.model import Kitchen
from rules.tables import read_toml

routes = Blueprint("place")
POSITION = ("latitude", "longitude", "altitude", "accuracy")


@routes.get("/place")
@openapi.exclude()
async def show(request: Request) -> HTTPResponse:
    """The page."""
    return await shown(request, "place.html.j2", _page)


@routes.post("/place")
@openapi.exclude()
async def tell(request: Request) -> HTTPResponse:
    """Take where the kitchen is, in any of the ways there are."""
    given = fields(request, "way", "told", "unit", *POSITION)
    return await shown(request, "place.html.j2", partial(_told, given=given))


@routes.post("/place/units")
@openapi.exclude()
async def units(request: Request) -> HTTPResponse:
    """Take which units stand first."""
    wanted = fields(request, "units")["units"]
    if wanted not in ("us", "metric"):
        raise Problem(422, "Units are us or metric.")

    def settle(desk: Desk, person: str) -> Values:
        kitchen = replace(desk.kitchen(person), units="metric" if wanted == "metric" else "us")
        said = whereabouts.told_of(kitchen)
        desk.settle(person, kitchen, f"Units: {wanted}", said)
        return _page(desk, person, said=said)

    return await shown(request, "place.html.j2", settle)


@routes.post("/kitchens")
@openapi.exclude()
async def add(request: Request) -> HTTPResponse:
    """Keep a kitchen by name, and cook in it from now on."""
    given = fields(request, "name", "at", "barometer_offset", "thermometer_offset")
    work = partial(_added, given=given, equipment=several(request, "equipment"))
    return await shown(request, "place.html.j2", work)


@routes.post("/kitchens/use")
@openapi.exclude()
async def use(request: Request) -> HTTPResponse:
    """Cook in a kitchen that is kept."""
    return await _then_back(request, _used)


@routes.post("/kitchens/remove")
@openapi.exclude()
async def remove(request: Request) -> HTTPResponse:
    """Forget a kitchen."""
    return await _then_back(request, _removed)


async def _then_back(request: Request, work: Callable[[Desk, str, str], None]) -> HTTPResponse:
    name = fields(request, "name")["name"]
    await bench_of(request).run(partial(work, request.app.ctx.desk, request.ctx.person, name))
    return redirect("/place", status=303)


def _page(desk: Desk, person: str, **more: object) -> Values:
    from assistant.replies.kitchen_lines import details, line
    from assistant.store import kitchens

    record = desk.record(person, 0)
    own = record.kept(lambda store: kitchens.every(store, person)) or ()
    house = record.kept(kitchens.every) or ()
    shown_house = [(kitchen.name, line(replace(kitchen, in_use=False)), details(kitchen)) for kitchen in house]
    return {
        "own": [(kitchen.name, line(kitchen), details(kitchen)) for kitchen in own],
        "house": shown_house,
        "equipment": [(row["id"], row["label"]) for row in read_toml("lexicon/equipment.toml")["equipment"]],
        "said": "", "wrong": "", "given": typed(), **more,
    }  # fmt: skip


def _told(desk: Desk, person: str, given: dict[str, str]) -> Values:
    try:
        found = whereabouts.found(given, desk.kitchen(person))
    except (AssistantError, RulesError) as fault:
        return _page(desk, person, wrong=in_a_sentence(fault), given=typed(given), status=422)
    desk.settle(person, found.kitchen, found.words, found.said)
    return _page(desk, person, said=found.said)


def _added(desk: Desk, person: str, given: dict[str, str], equipment: list[str]) -> Values:
    from assistant.store import kitchens
    from assistant.understanding import kitchen_fields
    from assistant.understanding.elevation_told import elevation_told

    try:
        heard = elevation_told(given["at"])
        kitchen = kitchens.SavedKitchen(
            name=given["name"],
            elevation_m=heard.elevation_m,
            place=given["at"] if heard.elevation_from == "place" else "",
            units=heard.units,
            equipment=tuple(dict.fromkeys(kitchen_fields.equipment_id(words) for words in equipment)),
            barometer_offset_pa=kitchen_fields.pascals(given["barometer_offset"] or "0 hPa"),
            thermometer_offset_c=kitchen_fields.kelvins(given["thermometer_offset"] or "0 C"),
        )
        kept = desk.kept(lambda store: kitchens.add(store, kitchen, owner=person))
    except (AssistantError, RulesError, ValueError) as fault:
        return _page(desk, person, wrong=in_a_sentence(fault), given=typed(given), status=422)
    _settle(desk, person, kept.taken_for_granted())
    return _page(desk, person, said=whereabouts.told_of(kept.taken_for_granted()))


def _used(desk: Desk, person: str, name: str) -> None:
    """A kitchen of the person's own before one of the house of the same name."""
    from assistant.store import kitchens

    def named(owner: str) -> Kitchen:
        return desk.kept(lambda store: kitchens.named(store, name, owner)).taken_for_granted()

    try:
        kitchen = named(person)
    except kitchens.UnknownKitchen:
        kitchen = named("")
    _settle(desk, person, kitchen)


def _removed(desk: Desk, person: str, name: str) -> None:
    from assistant.store import kitchens

    desk.kept(lambda store: kitchens.remove(store, name, person))


def _settle(desk: Desk, person: str, kitchen: Kitchen) -> None:
    desk.settle(person, kitchen, f"Kitchen: {kitchen.name}", whereabouts.told_of(kitchen))
