"""What a call of the API names: the kitchen it is about, and where its work is done."""

from __future__ import annotations

from dataclasses import asdict
from typing import Any

from sanic import Request

from assistant.store import kitchens
from assistant.store.kitchens import SavedKitchen, UnknownKitchen
from assistant.store.owners import HOUSE
from assistant.web.asked import kitchen_at
from assistant.web.desk import Desk
from assistant.web.workroom import Workroom
from rules.model import Kitchen


def workroom_of(request: Request) -> Workroom:
    """Where the work for a call is done; nobody has to be known for it."""
    workroom: Workroom = request.app.ctx.workroom
    return workroom


def kitchen_of(desk: Desk, person: str, name: str, at: str, units: str | None) -> Kitchen:
    """The kitchen of a name or a place; a blank one where neither is told.

    raises: UnknownKitchen, NotAnElevation, StoreError
    """
    kitchen = named(desk, person, name).taken_for_granted() if name else Kitchen()
    return kitchen_at(kitchen, at, units or "")


def named(desk: Desk, person: str, name: str) -> SavedKitchen:
    """A kitchen of the person's own, else of the house.

    raises: UnknownKitchen, StoreError
    """
    try:
        return desk.kept(lambda store: kitchens.named(store, name, person))
    except UnknownKitchen:
        return desk.kept(lambda store: kitchens.named(store, name, HOUSE))


def as_values(kitchen: SavedKitchen) -> dict[str, Any]:
    """A kitchen as `simmerline kitchen show --json` has it."""
    return asdict(kitchen)
