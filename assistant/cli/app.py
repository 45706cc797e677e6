"""The `simmerline` command: its subcommands, gathered."""

from __future__ import annotations

import importlib
import sys
from collections.abc import Iterable
from importlib import metadata
from typing import Annotated

import typer

from assistant.cli import exits, quick, streams

# in the order in which --help lists them, with what it says of each; each is a module beside this one
COMMANDS = {
    "ask": "Ask one question in your own words.",
    "chat": "Talk it over: later questions lean on earlier ones, and what is missing is asked for.",
    "listen": "Listen to a question, show what was heard, and answer it once it is right.",
    "say": "Answer a question aloud, by espeak-ng where it is installed.",
    "convert": "Convert recipes from the elevation they were written for to yours.",
    "bulk": "Convert every recipe for every kitchen: a row a pair, in Parquet, in FOLDER/conversions.",
    "order": "Reckon what to order for a menu: raw weights, packs, and what your elevation changes.",
    "schedule": "Work a menu back from service: when each dish goes on, within ovens, burners and hands.",
    "card": "Print the card for the wall: boil, times, sugar, frying, pressure and baking where you cook.",
    "plot": "Draw a plot: boil, times, pressure or a dish against elevation, the range of a time, "
    "a recipe before and after.",
    "lesson": "Print a lesson: the why, a table, worked examples, an experiment and questions; "
    "the key is a file of its own.",
    "drill": "Train: questions on cooking at elevation, each answer worked out, explained and graded.",
    "sources": "List every rule with its sources, then the bibliography with the basis of each entry.",
    "serve": "Serve the page for the kitchen tablet, on this machine alone unless --host says otherwise.",
    "actions": "Serve simmerline's actions to a Rasa server, until told to stop.",
    "doctor": "List what is installed and what is missing, with the command that adds it.",
    "schema": "Print what a JSON of simmerline holds, as JSON Schema: an answer, a converted recipe, an order, "
    "a schedule.",
    "batch": "The log of your batches: what was changed, how it came out, and the one change to make next.",
    "kitchen": "The places you cook at. Questions take for granted the elevation, units and equipment "
    "of the one in use.",
    "store": "All that is kept, kitchens, conversations, batches, timers and progress, in a file and back.",
}
OVERVIEW: tuple[list[str], ...] = ([], ["--help"])
NO_COMMAND = ["--version"]


def _print_version(asked: bool) -> None:
    if asked:
        typer.echo(f"simmerline {metadata.version('simmerline')}")
        raise typer.Exit


def create_app(commands: Iterable[str] = COMMANDS) -> typer.Typer:
    """The app with these commands, whose modules are imported here."""
    app = bare_app()
    for name in commands:
        importlib.import_module(f"assistant.cli.{name}").register(app)
    return app


def overview() -> typer.Typer:
    """The app with all commands by name alone, of which none is imported: what is listed where none was asked for."""
    app = bare_app()
    for name, purpose in COMMANDS.items():
        app.command(name, help=purpose)(lambda: None)
    return app


def bare_app() -> typer.Typer:
    """The app without commands."""
    app = typer.Typer(
        name="simmerline",
        help="Times, temperatures and quantities for cooks above sea level, with the reason and the source.\n\n"
        'Begin with: simmerline ask "how long to braise short ribs at 7,000 feet"',
        epilog=exits.EPILOG,
        no_args_is_help=True,
        pretty_exceptions_enable=False,
    )
    # with a callback Typer keeps the command's name on the line, however few commands there are
    app.callback()(simmerline)
    return app


def simmerline(
    version: Annotated[
        bool, typer.Option("--version", is_eager=True, callback=_print_version, help="Print the version, and end.")
    ] = False,
) -> None:
    """What stands before every command."""


def main() -> None:
    """Entry point of the `simmerline` command."""
    asked = sys.argv[1:]
    streams.make_ready()
    quick.start(takes_data=asked not in (*OVERVIEW, NO_COMMAND))
    try:
        with streams.ended_kindly():
            app_for(asked)()
    finally:
        quick.ended()


def app_for(asked: list[str]) -> typer.Typer:
    """The app for what was typed; only the module of the command that is asked for is imported."""
    wanted = [name for name in COMMANDS if asked[:1] == [name]]
    app = bare_app() if asked == NO_COMMAND else overview() if asked in OVERVIEW else create_app(wanted or COMMANDS)
    if wanted != ["chat"] and (wanted != ["ask"] or "--jsonl" in asked):
        quick.loaded()
    return app
