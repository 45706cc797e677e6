"""`simmerline card`: the card for a kitchen's wall."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from assistant.cli import exits
from assistant.cli.taken_for_granted import Units, kitchen_for
from rules.model import Kitchen

ASK_ELEVATION = "a card is for one kitchen: say --at 7000ft or a town, or --kitchen with the name of one of yours"


def register(app: typer.Typer) -> None:
    """Add the command to the app."""
    app.command("card", epilog=exits.EPILOG)(card)


def card(
    at: Annotated[str | None, typer.Option("--at", help="Where the kitchen is: 7000ft, 2130m, a town.")] = None,
    names: Annotated[
        list[str] | None,
        typer.Option("--kitchen", metavar="NAME", help="A kitchen of yours; said more than once, a page for each."),
    ] = None,
    title: Annotated[str | None, typer.Option("--title", help="What stands at the head instead of its name.")] = None,
    units: Annotated[Units | None, typer.Option("--units", help="Unit system in large type.")] = None,
    paper: Annotated[str, typer.Option("--paper", help="letter, a4, tabloid or a3.")] = "letter",
    out: Annotated[
        Path, typer.Option("--out", metavar="FILE", help="What to write, .pdf, .svg or .png; by default card.pdf.")
    ] = Path("card.pdf"),
    force: Annotated[bool, typer.Option("--force", help="Write over a file that is there.")] = False,
) -> None:
    """Print the card for the wall: boil, times, sugar, frying, pressure and baking where you cook.

    simmerline card --at 7000ft

    simmerline card --kitchen "Timberfold Lodge" --kitchen "Timberfold Bakery" --paper a3 --out cards.pdf
    """
    from assistant.printing.card import card_for
    from assistant.printing.card_drawn import PAPERS_MM, page
    from assistant.printing.drawing import as_files

    if paper not in PAPERS_MM:
        exits.leave(f"--paper {paper} is none of {', '.join(PAPERS_MM)}")
    title = title and title.encode(errors="replace").decode()  # half a letter cannot be drawn
    kitchens = [_placed(kitchen_for(at, units, name)) for name in (names or (None,))]
    with exits.kindly():
        pages = [page(card_for(title or k.name, k.elevation_m or 0.0, k.units), paper) for k in kitchens]
        exits.write(as_files(pages, out), force)


def _placed(kitchen: Kitchen) -> Kitchen:
    if kitchen.elevation_m is None:
        exits.leave(ASK_ELEVATION, exits.ASKS_BACK)
    return kitchen
