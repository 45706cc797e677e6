"""What is asked for by form or by body, worked out as the command line works it out."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import datetime
from typing import TYPE_CHECKING

from assistant.errors import AssistantError
from assistant.understanding.elevation_told import elevation_told
from rules.model import Kitchen, Units

if TYPE_CHECKING:
    from assistant.planning.menu import Menu
    from assistant.planning.order_sheet import Sheet
    from assistant.planning.plan import Plan
    from rules.recipes.convert import Converted


class NotTold(AssistantError, ValueError):
    """Something that has to be told and was not. what: as MISSING_WORDS calls it"""

    def __init__(self, what: str, ask: str) -> None:
        super().__init__(what, ask)
        self.what, self.ask = what, ask

    def __str__(self) -> str:
        return self.ask


def kitchen_at(kitchen: Kitchen, at: str = "", units: str = "") -> Kitchen:
    """A kitchen with its elevation told anew, where it is told. units: us, metric, or "" for those of the kitchen

    raises: NotAnElevation
    """
    if at:
        heard = elevation_told(at)
        kitchen = replace(kitchen, name="", elevation_m=heard.elevation_m, pressure_pa=None, units=heard.units)
    return replace(kitchen, units=_units(units) or kitchen.units)


def placed(kitchen: Kitchen) -> float:
    """Its elevation [m].

    raises: NotTold where nobody has said
    """
    if kitchen.elevation_m is None:
        raise NotTold("elevation", "Where is the kitchen? Say 7000ft or a town, or tell your place once.")
    return kitchen.elevation_m


def _units(name: str) -> Units | None:
    return "us" if name == "us" else "metric" if name == "metric" else None


def converted(
    recipe: bytes | str, kitchen: Kitchen, *, written_for: str = "", style: str = "", servings: float | None = None,
    name: str = "the recipe",
) -> Converted:  # fmt: skip
    """A recipe at the elevation of a kitchen.

    written_for: the elevation it is right for, sea level where that is not told; style: "" to recognise it
    raises: AssistantError or RulesError that says what is wrong
    """
    from assistant.recipes.converting import convert_recipe

    return convert_recipe(
        recipe,
        from_elevation_m=(elevation_told(written_for).elevation_m or 0.0) if written_for else 0.0,
        to_elevation_m=placed(kitchen),
        style=style.strip().lower().replace(" ", "_").replace("-", "_") or None,
        servings=servings,
        units=kitchen.units,
        name=name,
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class MenuAsked:
    """A menu, and what is asked of it. at, serve: "" as the menu says, covers: None; units: "" those of the place"""

    menu: str
    kitchen: Kitchen
    at: str = ""
    units: str = ""
    covers: int | None = None
    margin: str = ""
    on_hand: str = ""
    serve: str = ""
    zone: str = ""
    ovens: int = 1
    burners: int = 6
    cooks: int = 1


def ordered(asked: MenuAsked) -> tuple[Sheet, Kitchen]:
    """What a menu takes, and the kitchen it is reckoned for.

    raises: AssistantError that says what is wrong or not told
    """
    from assistant.planning import on_hand
    from assistant.planning.asked import MARGIN, check_covers, margin_told
    from assistant.planning.order_sheet import order_sheet

    margin = margin_told(asked.margin or MARGIN)
    check_covers(asked.covers)
    menu, kitchen = _read(asked)
    if asked.covers is None and menu.covers is None and menu.lines and not any(line.covers for line in menu.lines):
        raise NotTold("portions", "For how many? Say the covers, or put a line such as Covers: 90 at the head.")
    there = on_hand.read_on_hand(asked.on_hand.encode(errors="replace")) if asked.on_hand else None
    sheet = order_sheet(
        menu, elevation_m=placed(kitchen), covers=asked.covers, margin=margin, on_hand=there.grams if there else None,
        units=kitchen.units,
    )  # fmt: skip
    return (replace(sheet, faults=(*sheet.faults, *there.faults)) if there else sheet), kitchen


def scheduled(asked: MenuAsked, now: datetime) -> tuple[Plan, str, Kitchen]:
    """A menu worked back from service, what is to be said of how, and the kitchen it is for.

    raises: AssistantError that says what is wrong or not told
    """
    from assistant.planning.asked import check_covers, has_told, planned
    from assistant.planning.serving import serving, zone_of

    has = has_told(asked.ovens, asked.burners, asked.cooks)
    check_covers(asked.covers)
    menu, kitchen = _read(asked)
    told = asked.serve or menu.service
    if not told:
        raise NotTold("service_time", "When is service? Say Saturday 6:30 pm, or put a line Service: 6:30 pm on top.")
    now = now.astimezone(zone_of(asked.zone or None))
    plan, note = planned(
        menu, serving(told, now), now, elevation_m=placed(kitchen), covers=asked.covers, has=has
    )  # fmt: skip
    return plan, note, kitchen


def _read(asked: MenuAsked) -> tuple[Menu, Kitchen]:
    """The menu, which may name no file here, and where it is cooked: as its head says, else in the kitchen."""
    from assistant.planning.menu import read_menu

    menu = read_menu(asked.menu.encode(errors="replace"))
    return menu, kitchen_at(asked.kitchen, asked.at or menu.at, asked.units)
