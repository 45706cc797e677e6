"""`simmerline kitchen`: the places you cook at, one of them in use."""

from __future__ import annotations

import json
from dataclasses import asdict, replace
from typing import Annotated

import typer

from assistant.cli import exits
from assistant.cli.taken_for_granted import Units, elevation_heard, opened
from assistant.replies.kitchen_lines import details, line
from assistant.understanding import kitchen_fields

app = typer.Typer(
    name="kitchen",
    help="The places you cook at. Questions take for granted the elevation, units and equipment of the one in use.",
    no_args_is_help=True,
)

Name = Annotated[str, typer.Argument(help="The kitchen's name, in any case.")]
AsJson = Annotated[bool, typer.Option("--json", help="Print as JSON.")]


def register(main: typer.Typer) -> None:
    """Add the commands to the app."""
    main.add_typer(app)


@app.command("add")
def add(
    name: Annotated[str, typer.Argument(help="What you call it.")],
    at: Annotated[str, typer.Option("--at", help="Its elevation: 7000ft, 2130m, or a town.")],
    units: Annotated[
        Units | None, typer.Option("--units", help="Unit system shown first; by default that of the elevation.")
    ] = None,
    equipment: Annotated[
        list[str] | None, typer.Option("--equipment", help='Such as "electric pressure cooker"; may be repeated.')
    ] = None,
    place: Annotated[str, typer.Option("--place", help="Where it is, in your own words.")] = "",
    barometer_offset: Annotated[
        str, typer.Option("--barometer-offset", help="How much its barometer reads too high: 0.05inHg, -2hPa.")
    ] = "0 hPa",
    thermometer_offset: Annotated[
        str, typer.Option("--thermometer-offset", help="How much its thermometer reads too high: 2F, -1C.")
    ] = "0 C",
    replacing: Annotated[bool, typer.Option("--replace", help="Overwrite the kitchen of that name.")] = False,
) -> None:
    """Keep a kitchen. The first one is put in use.

    simmerline kitchen add "Timberfold Lodge" --at 7000ft --equipment "electric pressure cooker"
    """
    from assistant.store import kitchens
    from rules.errors import OutOfRange

    heard = elevation_heard(at)
    try:
        kitchen = kitchens.SavedKitchen(
            name=name,
            elevation_m=heard.elevation_m,
            place=place or (at if heard.elevation_from == "place" else ""),
            units=units.value if units else heard.units,
            equipment=tuple(dict.fromkeys(equipment_id(words) for words in equipment or ())),
            barometer_offset_pa=pascals(barometer_offset),
            thermometer_offset_c=kelvins(thermometer_offset),
        )
    except (OutOfRange, ValueError) as fault:
        exits.leave(str(fault))
    with opened() as store:
        try:
            kitchen = kitchens.add(store, kitchen, replacing=replacing)
        except kitchens.KitchenExists as fault:
            exits.leave(f"{fault}, or say --replace")
    typer.echo(f"Kept. {line(kitchen)}")


@app.command("list")
def show_all(as_json: AsJson = False) -> None:
    """List your kitchens; the one in use is marked."""
    from assistant.store import kitchens

    with opened() as store:
        found = kitchens.every(store)
    if as_json:
        typer.echo(json.dumps([asdict(k) for k in found], ensure_ascii=False, indent=2))
    elif not found:
        typer.echo('No kitchens yet. Begin with: simmerline kitchen add "Timberfold Lodge" --at 7000ft')
    for kitchen in () if as_json else found:
        typer.echo(line(kitchen))


@app.command("use")
def use(
    name: Annotated[str | None, typer.Argument(help="The kitchen's name, in any case.")] = None,
    none: Annotated[bool, typer.Option("--none", help="Put none in use.")] = False,
) -> None:
    """Put a kitchen in use: later questions take it for granted."""
    from assistant.store import kitchens

    if (name is None) != none:
        exits.leave("say which kitchen, or --none")
    with opened() as store:
        try:
            kitchen = kitchens.use(store, name)
        except kitchens.UnknownKitchen as fault:
            exits.leave(str(fault))
    typer.echo(line(kitchen) if kitchen else "No kitchen is in use.")


@app.command("show")
def show(
    name: Annotated[str | None, typer.Argument(help="The kitchen's name; by default the one in use.")] = None,
    as_json: AsJson = False,
) -> None:
    """Show all that is kept of a kitchen."""
    from assistant.store import kitchens

    with opened() as store:
        try:
            kitchen = kitchens.in_use(store) if name is None else kitchens.named(store, name)
        except kitchens.UnknownKitchen as fault:
            exits.leave(str(fault))
    if kitchen is None:
        exits.leave("no kitchen is in use; say which one to show")
    if as_json:
        typer.echo(json.dumps(asdict(kitchen), ensure_ascii=False, indent=2))
    else:
        typer.echo("\n".join([line(kitchen), *details(kitchen)]))


@app.command("remove")
def remove(name: Name) -> None:
    """Forget a kitchen."""
    from assistant.store import kitchens

    with opened() as store:
        try:
            kitchen = kitchens.remove(store, name)
        except kitchens.UnknownKitchen as fault:
            exits.leave(str(fault))
    after = " No kitchen is in use now." if kitchen.in_use else ""
    typer.echo(f"Forgotten: {line(replace(kitchen, in_use=False))}.{after}")


def equipment_id(words: str) -> str:
    """The id of a piece of equipment by its name or another that it goes by; leaves with code 2 for an unknown one."""
    from rules.errors import UnknownWord

    try:
        return kitchen_fields.equipment_id(words)
    except UnknownWord as fault:
        exits.leave(str(fault))


def pascals(text: str) -> float:
    """A pressure difference [Pa] as it is typed: 0.05inHg, -2 hPa; leaves with code 2 where it is none."""
    try:
        return kitchen_fields.pascals(text)
    except kitchen_fields.BadOffset as fault:
        exits.leave(f"--barometer-offset {fault}")


def kelvins(text: str) -> float:
    """A temperature difference [K] as it is typed: 2F, -1 C; leaves with code 2 where it is none."""
    try:
        return kitchen_fields.kelvins(text)
    except kitchen_fields.BadOffset as fault:
        exits.leave(f"--thermometer-offset {fault}")
