"""`simmerline convert`: recipes taken from one elevation to another."""

from __future__ import annotations

import gc
import sys
from collections.abc import Iterable
from pathlib import Path
from typing import Annotated, Any

import typer

from assistant.cli import exits
from assistant.cli.convert_one import converted_from
from assistant.cli.taken_for_granted import Units, elevation_heard, kitchen_for
from assistant.replies.recipe import forms

TEXT, TERMINAL, JSON = "text", "terminal", "json"
ASK_ELEVATION = (
    "where will you cook? Say --to 7000ft or a town, or keep your kitchen once: "
    'simmerline kitchen add "Timberfold Lodge" --at 7000ft'
)


def register(app: typer.Typer) -> None:
    """Add the command to the app."""
    app.command("convert", epilog=exits.EPILOG)(convert)


def convert(
    recipes: Annotated[
        list[str] | None,
        typer.Argument(
            metavar="FILE|FOLDER|-",
            help="Recipes: text, JSON-LD or saved pages (JSON-LD or microdata in them); - reads standard input.",
        ),
    ] = None,
    written_for: Annotated[
        str | None,
        typer.Option("--from", help="The elevation the recipe was written for: 1600m, a town; by default sea level."),
    ] = None,
    to: Annotated[
        str | None, typer.Option("--to", help="The elevation to cook at; by default that of the kitchen in use.")
    ] = None,
    kitchen_name: Annotated[
        str | None, typer.Option("--kitchen", metavar="NAME", help="A kitchen of yours instead of the one in use.")
    ] = None,
    style: Annotated[
        str | None, typer.Option("--style", metavar="ID", help="What it is, such as layer_cake; recognised by default.")
    ] = None,
    servings: Annotated[
        float | None,
        typer.Option("--servings", metavar="N", help="How many it should make, in the recipe's own count."),
    ] = None,
    units: Annotated[Units | None, typer.Option("--units", help="Unit system shown first.")] = None,
    form: Annotated[
        str | None,
        typer.Option(
            "--format",
            metavar="|".join(forms.names()),
            help="By default terminal on a screen, text in a pipe or a folder.",
        ),
    ] = None,
    as_json: Annotated[bool, typer.Option("--json", help="The same as --format json.")] = False,
    out: Annotated[
        Path | None,
        typer.Option("--out", metavar="FOLDER", help="Write the results there; several recipes need it."),
    ] = None,
    force: Annotated[bool, typer.Option("--force", help="Write over results that are there.")] = False,
) -> None:
    """Convert recipes from the elevation they were written for to yours.

    simmerline convert carrot-cake.txt --to 7000ft

    simmerline convert rolls.json --from 5300ft --to 300ft --servings 48 --format html --out converted

    simmerline convert recipes/ --to 7000ft --out converted
    """
    if as_json and form not in (None, JSON):
        exits.leave(f"say --json or --format {form}, not both")
    kitchen = kitchen_for(None, units, kitchen_name)
    asked = _asked(written_for, to, kitchen.elevation_m, units.value if units else None, kitchen.units)
    asked |= {"style": _known_style(style), "servings": _enough(servings)}
    form = JSON if as_json else _known_form(form)
    sources = _sources(recipes)
    gc.disable()  # the process ends with its recipes; sweeping the freshly loaded lexicon would only cost time
    if len(sources) == 1 and not (recipes and Path(recipes[0]).is_dir()):
        raise typer.Exit(one(sources[0], asked, form, out, force=force))
    if out is None:
        exits.leave("several recipes need a folder for the results: --out converted")
    from assistant.cli.convert_many import many

    raise typer.Exit(many(sources, asked, form or TEXT, out, force=force))


def _asked(
    written_for: str | None, to: str | None, kept_m: float | None, units: str | None, kept: str
) -> dict[str, Any]:
    """The elevations [m] and units to convert with; leaves with code 3 where nobody says where it is cooked."""
    heard = elevation_heard(to, "--to") if to is not None else None
    to_m = heard.elevation_m if heard else kept_m
    if to_m is None:
        exits.leave(ASK_ELEVATION, exits.ASKS_BACK)
    from_m = elevation_heard(written_for, "--from").elevation_m if written_for is not None else 0.0
    return {
        "from_elevation_m": from_m,
        "to_elevation_m": to_m,
        "units": units or (heard.units if heard else kept),
    }


def _known_style(style: str | None) -> str | None:
    if style is None:
        return None
    from rules.baking.styles import ids
    from rules.errors import UnknownWord

    name = style.strip().lower().replace(" ", "_").replace("-", "_")
    if name not in ids():
        exits.leave(str(UnknownWord.among("style", style, ids())))
    return name


def _known_form(form: str | None) -> str | None:
    if form is not None and form not in forms.names():
        exits.leave(f"--format {form} is none of {', '.join(forms.names())}")
    return form


def _enough(servings: float | None) -> float | None:
    if servings is not None and not 0 < servings < float("inf"):
        exits.leave(f"--servings {servings:g} feeds nobody; give a number above 0")
    return servings


def _sources(recipes: list[str] | None) -> list[str]:
    """The files named, folders opened; leaves with code 2 where there are none."""
    if not recipes and not sys.stdin.isatty():
        return ["-"]
    found = recipe_files(recipes or ())
    if not found:
        exits.leave("convert which recipe? For example: simmerline convert carrot-cake.txt --to 7000ft")
    return found


def recipe_files(names: Iterable[str]) -> list[str]:
    """The files named, and those in the folders named, each once; leaves with code 2 where a folder holds none."""
    found: list[str] = []
    for name in names:
        path = Path(name)
        inside = path.is_dir()
        found += _files(path) if inside else [name]
        if inside and not found:
            exits.leave(f"there are no files in {name}")
    return list(dict.fromkeys(found))


def _files(folder: Path) -> list[str]:
    """Every file of a folder and of those inside it, but for hidden ones, in order of name."""
    inside = (path for path in folder.rglob("*") if path.is_file())
    seen = (p for p in inside if not any(part.startswith(".") for part in p.relative_to(folder).parts))
    return sorted(str(path) for path in seen)


def one(source: str, asked: dict[str, Any], form: str | None, out: Path | None, *, force: bool) -> int:
    """Convert one recipe and show it, or write it to the folder; leaves with code 3 where the file holds none."""
    from assistant.cli.convert_many import encoded, free_places
    from assistant.errors import AssistantError
    from assistant.recipes.errors import NoRecipe
    from rules.errors import RulesError

    screen = TERMINAL if out is None and sys.stdout.isatty() else TEXT
    chosen = forms.form(form or screen)
    places = [] if out is None else free_places([source], chosen, out, force=force)
    try:
        converted = converted_from(source, asked)
    except NoRecipe as fault:
        exits.leave(str(fault), exits.ASKS_BACK)
    except (AssistantError, RulesError) as fault:
        exits.leave(str(fault), exits.FAILED)
    if out is not None:
        exits.write({places[0]: encoded(chosen.write(converted, asked["units"]))}, force)
        return exits.ANSWERED
    if chosen.show:
        chosen.show(converted, asked["units"])
    else:
        typer.echo(chosen.write(converted, asked["units"]), nl=False)
    return exits.ANSWERED
