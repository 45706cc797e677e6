"""`simmerline kitchen`: the places you cook at, one of them in use."""

from __future__ import annotations

import json
import re
from dataclasses import asdict, replace
from typing import TYPE_CHECKING, Annotated

import typer

from assistant.cli import exits
from assistant.cli.taken_for_granted import Units, elevation_heard, opened

if TYPE_CHECKING:
    from assistant.reading.spans import Measure
    from assistant.store.kitchens import SavedKitchen

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


def line(kitchen: SavedKitchen) -> str:
    """A kitchen in one line."""
    from assistant.replies.quantities import Say

    place = f", {kitchen.place}" if kitchen.place else ""
    height = (
        Say(kitchen.units).elevation(kitchen.elevation_m) if kitchen.elevation_m is not None else "elevation unknown"
    )
    return f"{kitchen.name}{place}: {height}{', in use' if kitchen.in_use else ''}"


def details(kitchen: SavedKitchen) -> list[str]:
    """What else is kept of a kitchen, a line each."""
    from assistant.replies.quantities import Say
    from rules.baking.rounding import number
    from rules.heat.equipment import label
    from rules.physics.ambient import ambient
    from rules.physics.units import INHG_PER_PA

    lines = []
    if kitchen.elevation_m is not None:
        air = ambient(kitchen.elevation_m)
        say = Say(kitchen.units)
        lines.append(f"Water boils at {say.temp(air.boiling_c)}; the air stands at {say.pressure(air.pressure_pa)}.")
    lines.append(f"Units: {'US first' if kitchen.units == 'us' else 'metric first'}.")
    if kitchen.equipment:
        lines.append(f"Equipment: {', '.join(label(id) for id in kitchen.equipment)}.")
    if offset := kitchen.barometer_offset_pa:
        size = f"{number(abs(offset) * INHG_PER_PA, 2)} inHg ({number(abs(offset) / 100, 1)} hPa)"
        lines.append(f"Its barometer reads {size} too {'high' if offset > 0 else 'low'}.")
    if offset := kitchen.thermometer_offset_c:
        size = f"{number(abs(offset) * 1.8, 1)} °F ({number(abs(offset), 1)} °C)"
        lines.append(f"Its thermometer reads {size} too {'high' if offset > 0 else 'low'}.")
    return lines


def equipment_id(words: str) -> str:
    """The id of a piece of equipment by its name or another that it goes by; leaves with code 2 for an unknown one."""
    from assistant.reading.text import fold
    from assistant.understanding.lexicon import meanings
    from rules.errors import UnknownWord
    from rules.tables import read_toml

    id = next((id for kind, id in meanings(fold(words)) if kind == "equipment"), None)
    if id is None:
        labels = [row["label"] for row in read_toml("lexicon/equipment.toml")["equipment"]]
        exits.leave(str(UnknownWord.among("equipment", words, labels)))
    return id


def pascals(text: str) -> float:
    """A pressure difference [Pa] as it is typed: 0.05inHg, -2 hPa; leaves with code 2 where it is none."""
    typed = signed(text, ("pressure",))
    if typed is None:
        exits.leave(f"--barometer-offset {text!r} is not a pressure; say 0.05inHg or -2hPa")
    return typed.low


def kelvins(text: str) -> float:
    """A temperature difference [K] as it is typed: 2F, -1 C; leaves with code 2 where it is none."""
    # "2K" is two kelvins here, and never two thousand
    typed = signed(re.sub(r"(?<=\d)\s*k\s*$", " K", text, flags=re.IGNORECASE), ("temperature",))
    if typed is None:
        exits.leave(f"--thermometer-offset {text!r} is not a difference in temperature; say 2F or -1C")
    return typed.said * 5 / 9 if typed.unit == "degF" else typed.said


def signed(text: str, kinds: tuple[str, ...]) -> Measure | None:
    """A measure of some kinds and nothing else, as typed after an option, with its sign."""
    from assistant.reading.reader import hear

    return hear(re.sub(r"^\+\s*|(?<=^-)\s+", "", text.strip()), kinds).only()
