"""`simmerline doctor`: what is installed, what is missing, and the command that adds it."""

from __future__ import annotations

import json
import platform
from typing import Annotated

import typer

from assistant.cli import exits


def register(app: typer.Typer) -> None:
    """Add the command to the app."""
    app.command("doctor", epilog=exits.EPILOG)(doctor)


def doctor(as_json: Annotated[bool, typer.Option("--json", help="Print as one JSON object.")] = False) -> None:
    """List what is installed and what is missing, with the command that adds it.

    simmerline doctor
    """
    from assistant import parts

    libraries = [("python", platform.python_version()), *parts.versions()]
    found = [(part, parts.lacks(part)) for part in parts.PARTS]
    store, fault = _store()
    if as_json:
        rows = [{"id": part.id, "does": part.does, "lacks": list(lacks), "get": part.get} for part, lacks in found]
        report = {"libraries": dict(libraries), "parts": rows, "store": {"at": store, "fault": fault}}
        typer.echo(json.dumps(report, ensure_ascii=False, indent=2))
    else:
        for name, version in libraries:
            typer.echo(f"{name} {version}" if version else f"{name}: missing; reinstall simmerline")
        typer.echo(f"store: {fault or store}\n")
        for part, lacks in found:
            state = f"missing ({', '.join(lacks)}); get it: {part.get}" if lacks else "installed"
            typer.echo(f"{part.id}: {state}\n  {part.does}")
    whole = not fault and all(version for _, version in libraries)
    raise typer.Exit(exits.ANSWERED if whole else exits.FAILED)


def _store() -> tuple[str, str]:
    """Where the store is, and what is wrong with it."""
    from assistant.store import StoreError, open_store
    from assistant.store.where import database_url, sqlite_file

    # an address may hold a password
    place = str(sqlite_file(database_url()) or "the database that SIMMERLINE_DB names")
    try:
        open_store().close()
    except StoreError as fault:
        return place, str(fault)
    return place, ""
