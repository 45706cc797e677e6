"""`simmerline schema`: the JSON that programs get, as JSON Schema."""

from __future__ import annotations

import json
from typing import Annotated

import typer

from assistant.cli import exits
from assistant.schemas import NAMES, UnknownSchema
from assistant.schemas import schema as schema_of


def register(app: typer.Typer) -> None:
    """Add the command to the app."""
    app.command("schema", epilog=exits.EPILOG)(schema)


def schema(name: Annotated[str, typer.Argument(metavar="|".join(NAMES), help="Of which JSON.")]) -> None:
    """Print what a JSON of simmerline holds, as JSON Schema: an answer, a converted recipe, an order, a schedule.

    simmerline schema answer
    """
    try:
        typer.echo(json.dumps(schema_of(name), ensure_ascii=False, indent=2))
    except UnknownSchema as fault:
        exits.leave(str(fault))
