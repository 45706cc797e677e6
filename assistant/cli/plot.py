"""`simmerline plot`: one picture of what elevation does."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from assistant.cli import exits
from assistant.cli.taken_for_granted import Units, kitchen_for

ASK_ELEVATION = "where is the kitchen? Say --at 7000ft or a town"


def register(app: typer.Typer) -> None:
    """Add the command to the app."""
    app.command("plot", epilog=exits.EPILOG)(plot)


def plot(
    kind: Annotated[str, typer.Argument(help="boil, time, pressure, dish, range or recipe.")],
    words: Annotated[
        list[str] | None, typer.Argument(metavar="WORDS|FILE", help="For dish and range a dish, for recipe its file.")
    ] = None,
    at: Annotated[str | None, typer.Option("--at", help="Where the kitchen is: 7000ft, 2130m, a town.")] = None,
    kitchen_name: Annotated[
        str | None, typer.Option("--kitchen", metavar="NAME", help="A kitchen of yours instead of the one in use.")
    ] = None,
    units: Annotated[Units | None, typer.Option("--units", help="Unit system of the axes.")] = None,
    out: Annotated[
        Path | None,
        typer.Option("--out", metavar="FILE", help="What to write, .svg, .png or .pdf; by default KIND.svg."),
    ] = None,
    force: Annotated[bool, typer.Option("--force", help="Write over a file that is there.")] = False,
) -> None:
    """Draw a plot: boil, times, pressure or a dish against elevation, the range of a time, a recipe before and after.

    simmerline plot boil --at 7000ft

    simmerline plot dish braise short ribs --at 7000ft --out ribs.png

    simmerline plot recipe carrot-cake.txt --at 7000ft
    """
    from assistant.printing.drawing import as_files
    from assistant.printing.plots import Asked, drawer, kinds

    if kind not in kinds():
        exits.leave(f"there is no plot {kind!r}; say one of {', '.join(kinds())}")
    kitchen = kitchen_for(at, units, kitchen_name)
    if kitchen.elevation_m is None:
        exits.leave(ASK_ELEVATION, exits.ASKS_BACK)
    path = out or Path(f"{kind}.svg")
    with exits.kindly():
        drawn = drawer(kind)(Asked(kitchen.elevation_m, kitchen.units, " ".join(words or ())))
        exits.write(as_files([drawn], path), force)
