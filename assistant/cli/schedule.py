"""`simmerline schedule`: when each dish of a menu is begun, so that all of it is ready at service."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from assistant.cli import exits
from assistant.cli.menus import figures_told, form_asked_for, kitchen_of, menu_of, show
from assistant.cli.taken_for_granted import Units
from assistant.cli.watching import watched

if TYPE_CHECKING:
    from datetime import datetime

    from assistant.planning.menu import MenuLine

ASK_SERVICE = 'when is service? Say --serve "Saturday 6:30 pm", or put a line such as Service: 6:30 pm into the menu'


def register(app: typer.Typer) -> None:
    """Add the command to the app."""
    app.command("schedule", epilog=exits.EPILOG)(schedule)


def schedule(
    menu: Annotated[
        str | None, typer.Argument(metavar="MENU|-", help="A menu as text or CSV, as for order; - reads text.")
    ] = None,
    serve: Annotated[
        str | None,
        typer.Option("--serve", metavar="TIME", help='When service is: "Saturday 6:30 pm", "2027-03-14 18:30".'),
    ] = None,
    at: Annotated[str | None, typer.Option("--at", help="The elevation of the kitchen: 7000ft, 2130m, a town.")] = None,
    kitchen_name: Annotated[
        str | None, typer.Option("--kitchen", metavar="NAME", help="A kitchen of yours instead of the one in use.")
    ] = None,
    covers: Annotated[
        int | None, typer.Option("--covers", metavar="N", help="How many guests; by default as the menu says.")
    ] = None,
    ovens: Annotated[int, typer.Option("--ovens", metavar="N", help="Ovens, each at one heat at a time.")] = 1,
    shelves: Annotated[
        int, typer.Option("--shelves", metavar="N", help="Full-size sheets that an oven takes at a time.")
    ] = 5,
    burners: Annotated[int, typer.Option("--burners", metavar="N", help="Burners, one for each pot.")] = 6,
    cooks: Annotated[int, typer.Option("--cooks", metavar="N", help="Pairs of hands.")] = 1,
    zone: Annotated[
        str | None, typer.Option("--zone", metavar="NAME", help="Time zone: America/Denver; by default this machine's.")
    ] = None,
    units: Annotated[Units | None, typer.Option("--units", help="Unit system shown first.")] = None,
    form: Annotated[
        str | None,
        typer.Option(
            "--format",
            metavar="terminal|text|csv|json|ics|svg|png",
            help="By default terminal on a screen, else text, or by the ending of --out.",
        ),
    ] = None,
    out: Annotated[Path | None, typer.Option("--out", metavar="FILE", help="Write the schedule there.")] = None,
    force: Annotated[bool, typer.Option("--force", help="Write over a file that is there.")] = False,
) -> None:
    """Work a menu back from service: when each dish goes on, within ovens, burners and hands.

    What has to be ready early is so within what it keeps; where that cannot be, it is said what does not fit.

    simmerline schedule saturday.txt --serve "Saturday 6:30 pm" --at 7000ft --ovens 2

    simmerline schedule saturday.txt --at 7000ft --out saturday.ics
    """
    from assistant.planning import plan_forms
    from assistant.planning.asked import check_covers, has_told, planned

    asked_for = form_asked_for(plan_forms, form, out, command="schedule")
    with figures_told():
        has = has_told(ovens, burners, cooks, shelves)
        check_covers(covers)
    read = menu_of(menu, command="schedule")
    kitchen = kitchen_of(read, at, kitchen_name, units)
    served, now = _service(serve or read.service, zone)
    with exits.kindly():
        made, told = planned(
            read, served, now, elevation_m=kitchen.elevation_m or 0.0, covers=covers, has=has, watched=_watched
        )
        if told:
            typer.echo(f"simmerline: {told}", err=True)
        if out is None:
            show(made, asked_for, kitchen.units)
        else:
            content = asked_for.write(made, kitchen.units)
            exits.write({out: content}, force)
    raise typer.Exit(exits.FAILED if made.faults or made.late or made.past else exits.ANSWERED)


def _service(told: str, zone: str | None) -> tuple[datetime, datetime]:
    """The moment of service and the present one; leaves with code 2 or 3 where it is not told."""
    from assistant.planning.clock import now_here
    from assistant.planning.serving import BadServing, serving, zone_of

    if not told:
        exits.leave(ASK_SERVICE, exits.ASKS_BACK)
    try:
        now = now_here().astimezone(zone_of(zone))
        return serving(told, now), now
    except BadServing as fault:
        exits.leave(str(fault))


def _watched(lines: Sequence[MenuLine]) -> Iterable[MenuLine]:
    return watched(lines, "Working back", slow=len(lines) >= 40)
