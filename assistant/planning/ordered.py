"""Put packs to the order of a menu: the rules weigh what a dish takes, a manager orders by the case and the store."""

from __future__ import annotations

from dataclasses import replace

from assistant.planning.menu import Menu, MenuLine
from assistant.planning.order_sheet import MARGIN, order_sheet
from assistant.planning.order_view import Row, view
from rules.amounts.eaters import eaters
from rules.amounts.portion import PORTION, grams
from rules.model import Answer, Because, Caution, Request
from rules.said import Said, elevation, listed, number, sentences, together, yes

say = sentences("planning/ordered")
# the subject that asks for the gas of a menu
FUEL = "fuel"
RULE, COMMON = "order.menu", "common-practice"


def with_packs(answer: Answer) -> Answer:
    """The answer of the rules to the order of a menu with the packs of each store; any other as it is."""
    request = answer.request
    if answer.missing or not request.menu or request.subject not in (None, FUEL):
        return answer
    sheet = order_sheet(
        menu_of(request), elevation_m=request.elevation_m or 0.0, covers=request.portions, units=request.units
    )
    shown = view(sheet, request.units)
    if request.subject == FUEL:
        return replace(answer, headline=say("fuel", place=elevation(request.elevation_m or 0.0), line=shown.fuel))
    spare = say("spare", percent=number(MARGIN * 100, 0)) if shown.stores else ""
    here = elevation(request.elevation_m or 0.0)
    changed = listed((line.rstrip(".") for line in shown.effects), "semicolons")
    told = Because(RULE, say("effects", place=here, lines=changed), (COMMON,))
    stores = (say("store", store=name, rows=listed(map(_row, rows), "semicolons")) for name, rows in shown.stores)
    return replace(
        answer,
        headline=together(answer.headline, spare),
        steps=(*stores, *(say("by-recipe", line=line) for line in shown.made)),
        cautions=(*answer.cautions, *(Caution("note", note) for note in sheet.notes)),
        because=(told, *answer.because) if request.elevation_m is not None else answer.because,
    )


def menu_of(request: Request) -> Menu:
    """A menu that was told in talk, as one that was written down."""
    lines = tuple(
        MenuLine(
            line=at,
            text=one.text,
            dish=one.dish,
            covers=_some(one, request),
            course=one.course,
            portion_g=grams(one.quantity) if one.quantity_of == PORTION else None,
        )
        for at, one in enumerate(request.menu, start=1)
        if one.dish
    )
    return Menu(covers=request.portions, lines=lines)


def _some(one: Request, menu: Request) -> int | None:
    """How many take a dish, where it is not all of the guests."""
    count = eaters(one, menu)
    return None if count == menu.portions else count


def _row(row: Row) -> Said:
    """A line of the order; what it is for is told where its name does not say it."""
    named, loose = yes(row.parts in row.item), yes(row.order == row.need)
    return say("row", item=row.item, order=row.order, need=row.need, named=named, parts=row.parts, loose=loose)
