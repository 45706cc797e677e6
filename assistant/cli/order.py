"""`simmerline order`: what a menu takes, as a sheet for the suppliers."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from assistant.cli import exits
from assistant.cli.menus import content_of, figures_told, form_asked_for, kitchen_of, menu_of, show
from assistant.cli.taken_for_granted import Units
from assistant.cli.watching import watched

if TYPE_CHECKING:
    from assistant.planning.menu import Menu, MenuLine
    from assistant.planning.order_sheet import Sheet
    from rules.model import Kitchen

ASK_COVERS = "for how many? Say --covers 90, or put a line such as Covers: 90 at the head of the menu"


def register(app: typer.Typer) -> None:
    """Add the command to the app."""
    app.command("order", epilog=exits.EPILOG)(order)


def order(
    menu: Annotated[
        str | None,
        typer.Argument(metavar="MENU|FOLDER|-", help="A menu as text or CSV, or a folder of recipes; - reads text."),
    ] = None,
    at: Annotated[str | None, typer.Option("--at", help="The elevation of the kitchen: 7000ft, 2130m, a town.")] = None,
    covers: Annotated[
        int | None, typer.Option("--covers", metavar="N", help="How many guests; by default as the menu says.")
    ] = None,
    kitchen_name: Annotated[
        str | None, typer.Option("--kitchen", metavar="NAME", help="A kitchen of yours instead of the one in use.")
    ] = None,
    units: Annotated[Units | None, typer.Option("--units", help="Pounds or kilograms.")] = None,
    margin: Annotated[
        str, typer.Option("--margin", metavar="PERCENT", help="What to order on top, to be safe.")
    ] = "5%",
    on_hand: Annotated[
        Path | None, typer.Option("--on-hand", metavar="FILE", help="What is in the stores: 20 lb flour, a line each.")
    ] = None,
    form: Annotated[
        str | None,
        typer.Option(
            "--format",
            metavar="terminal|text|csv|xlsx|json|print",
            help="By default terminal on a screen, else text, or by the ending of --out.",
        ),
    ] = None,
    out: Annotated[Path | None, typer.Option("--out", metavar="FILE", help="Write the order there.")] = None,
    force: Annotated[bool, typer.Option("--force", help="Write over a file that is there.")] = False,
) -> None:
    """Reckon what to order for a menu: raw weights, packs, and what your elevation changes.

    A menu has a dish a line, and behind it who takes it, as what, how big: short ribs 40% / polenta, side, all /
    trout, 35, 6 oz. Lines such as Covers: 90 and Service: 6:30 pm stand at its head.

    simmerline order saturday.txt --at 7000ft --covers 90

    simmerline order saturday.csv --on-hand store.txt --format xlsx --out order.xlsx
    """
    from assistant.planning import order_forms
    from assistant.planning.asked import check_covers, margin_told

    asked_for = form_asked_for(order_forms, form, out, command="order")
    with figures_told():
        over = margin_told(margin)
        check_covers(covers)
    read = menu_of(menu, command="order")
    kitchen = kitchen_of(read, at, kitchen_name, units)
    if covers is None and read.covers is None and read.lines and not any(line.covers for line in read.lines):
        exits.leave(ASK_COVERS, exits.ASKS_BACK)
    sheet = _reckoned(read, kitchen, covers, over, on_hand)
    if out is not None:
        with exits.kindly():
            exits.write({out: asked_for.write(sheet, kitchen.units)}, force)
    else:
        show(sheet, asked_for, kitchen.units)
    raise typer.Exit(exits.FAILED if sheet.faults else exits.ANSWERED)


def _reckoned(menu: Menu, kitchen: Kitchen, covers: int | None, margin: float, on_hand: Path | None) -> Sheet:
    from dataclasses import replace

    from assistant.planning import on_hand as stores
    from assistant.planning.order_sheet import order_sheet

    there = stores.read_on_hand(content_of(on_hand, stores.MOST_BYTES)) if on_hand else None
    sheet = order_sheet(
        menu, elevation_m=kitchen.elevation_m or 0.0, covers=covers, margin=margin,
        on_hand=there.grams if there else None, units=kitchen.units, watched=_watched,
    )  # fmt: skip
    return replace(sheet, faults=(*sheet.faults, *there.faults)) if there else sheet


def _watched(lines: Sequence[MenuLine]) -> Iterable[MenuLine]:
    return watched(lines, "Reckoning", slow=sum(line.recipe is not None for line in lines) >= 20)
