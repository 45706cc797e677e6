"""`simmerline order`: what a menu takes, as a sheet for the suppliers."""

from __future__ import annotations

import re
import sys
from collections.abc import Iterable, Sequence
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from assistant.cli import exits
from assistant.cli.menus import MOST_COVERS, content_of, menu_of
from assistant.cli.taken_for_granted import Units, kitchen_for

if TYPE_CHECKING:
    from assistant.planning.menu import Menu, MenuLine
    from assistant.planning.order_sheet import Sheet

TEXT, TERMINAL, JSON = "text", "terminal", "json"
# what is printed nowhere but into a file
BINARY = ("xlsx",)
MOST_MARGIN = 1.0
ASK_ELEVATION = (
    "where will you cook? Say --at 7000ft or a town, or keep your kitchen once: "
    'simmerline kitchen add "Timberfold Lodge" --at 7000ft'
)
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
) -> None:
    """Reckon what to order for a menu: raw weights, packs, and what your elevation changes.

    A menu has a dish a line, and behind it who takes it, as what, how big: short ribs 40% / polenta, side, all /
    trout, 35, 6 oz. Lines such as Covers: 90 and Service: 6:30 pm stand at its head.

    simmerline order saturday.txt --at 7000ft --covers 90

    simmerline order saturday.csv --on-hand store.txt --format xlsx --out order.xlsx
    """
    from assistant.planning import order_forms

    chosen = _known_form(form, out, order_forms.names())
    over = _margin(margin)
    if covers is not None and not 1 <= covers <= MOST_COVERS:
        exits.leave(f"--covers {covers} is nobody to cook for; give a number from 1 to {MOST_COVERS:,}")
    read = menu_of(menu, command="order")
    told = None if at is not None or kitchen_name is not None or not read.at else read.at
    kitchen = kitchen_for(
        at or told, units, kitchen_name or (read.kitchen or None if at is None and told is None else None)
    )
    if kitchen.elevation_m is None:
        exits.leave(ASK_ELEVATION, exits.ASKS_BACK)
    if covers is None and read.covers is None and read.lines and not any(line.covers for line in read.lines):
        exits.leave(ASK_COVERS, exits.ASKS_BACK)
    sheet = _reckoned(read, kitchen.elevation_m, covers, over, on_hand, kitchen.units)
    form_of = order_forms.form(chosen or (TERMINAL if out is None and sys.stdout.isatty() else TEXT))
    if out is not None:
        _write(out, form_of.write(sheet, kitchen.units))
    elif form_of.show and sys.stdout.isatty():
        form_of.show(sheet, kitchen.units)
    else:
        typer.echo(form_of.write(sheet, kitchen.units).decode(), nl=False)
    raise typer.Exit(exits.FAILED if sheet.faults else exits.ANSWERED)


def _known_form(form: str | None, out: Path | None, names: Sequence[str]) -> str | None:
    """The form that is asked for, by its name or by the ending of the file; leaves with code 2 where there is none."""
    from assistant.planning import order_forms

    if form is None:
        if out is None:
            return None
        form = next((n for n in names if n != TERMINAL and order_forms.form(n).ending == out.suffix.lower()), TEXT)
    if form not in names:
        exits.leave(f"--format {form} is none of {', '.join(names)}")
    if form in BINARY and out is None:
        exits.leave(f"--format {form} needs a file: --out order{order_forms.form(form).ending}")
    return form


def _margin(text: str) -> float:
    """A margin as a share: 5%, 5, 0.05 are the same."""
    found = re.fullmatch(r"\s*(\d+(?:\.\d+)?)\s*(%?)\s*", text)
    figure = float(found[1]) if found else -1.0
    share = figure if found and not found[2] and 0 < figure < 1 else figure / 100
    if not 0 <= share <= MOST_MARGIN:
        exits.leave(f"--margin {text} is no margin; give a percentage from 0 to 100, such as 5%")
    return share


def _reckoned(
    menu: Menu, elevation_m: float, covers: int | None, margin: float, on_hand: Path | None, units: str
) -> Sheet:
    from dataclasses import replace

    from assistant.planning import on_hand as stores
    from assistant.planning.order_sheet import order_sheet

    there = stores.read_on_hand(content_of(on_hand, stores.MOST_BYTES + 1)) if on_hand else None
    sheet = order_sheet(
        menu, elevation_m=elevation_m, covers=covers, margin=margin, on_hand=there.grams if there else None,
        units="metric" if units == "metric" else "us", watched=_watched,
    )  # fmt: skip
    return replace(sheet, faults=(*sheet.faults, *there.faults)) if there else sheet


def _watched(lines: Sequence[MenuLine]) -> Iterable[MenuLine]:
    """The lines with a bar on standard error, where somebody can see it and there is something to wait for."""
    from rich.console import Console
    from rich.progress import track

    screen = Console(stderr=True)
    few = sum(line.recipe is not None for line in lines) < 20
    return track(lines, "Reckoning", console=screen, transient=True, disable=few or not screen.is_terminal)


def _write(out: Path, content: bytes) -> None:
    try:
        out.parent.mkdir(parents=True, exist_ok=True)
        out.write_bytes(content)
    except OSError as error:
        exits.leave(f"cannot write {out}: {(error.strerror or 'no such place').lower()}", exits.FAILED)
    typer.echo(f"Written: {out}")
