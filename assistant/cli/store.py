"""`simmerline store`: what is kept, written into a file and put back."""

from __future__ import annotations

import os
import sys
from collections.abc import Iterable, Iterator
from contextlib import contextmanager, nullcontext
from pathlib import Path
from typing import IO, Annotated

import typer

from assistant.cli import exits
from assistant.cli.taken_for_granted import opened

STREAM = "-"
app = typer.Typer(
    name="store",
    help="All that is kept, kitchens, conversations, batches, timers and progress, in a file and back.",
    no_args_is_help=True,
)


def register(main: typer.Typer) -> None:
    """Add the commands to the app."""
    main.add_typer(app)


@app.command("backup", epilog=exits.EPILOG)
def backup(
    file: Annotated[str, typer.Argument(metavar="FILE", help="Where to write it, - for standard output.")],
    force: Annotated[bool, typer.Option("--force", help="Write over a file that is there.")] = False,
) -> None:
    """Write all that is kept into a file, as JSON Lines. It holds what people said: it is for its owner alone.

    simmerline store backup lodge.jsonl
    """
    from assistant.store.backup import backup as lines_of

    with opened() as store, exits.kindly():
        if file == STREAM:
            for line in lines_of(store):
                typer.echo(line)
            return
        written = _put(lines_of(store), Path(file), force)
    typer.echo(f"Written: {file} ({written} lines)")


@app.command("restore", epilog=exits.EPILOG)
def restore(
    file: Annotated[str, typer.Argument(metavar="FILE", help="A backup, - for standard input.")],
    force: Annotated[bool, typer.Option("--force", help="What the store holds now makes way for it.")] = False,
) -> None:
    """Put a backup back into the store that SIMMERLINE_DB names, whole or not at all; it may be another database.

    simmerline store restore lodge.jsonl
    """
    from assistant.store.backup import StoreNotEmpty, told
    from assistant.store.backup import restore as put_back

    with opened() as store, exits.kindly(), _lines(file) as lines:
        try:
            counts = put_back(store, lines, replacing=force)
        except StoreNotEmpty as fault:
            exits.leave(f"{fault}. --force puts the backup in its place", exits.FAILED)
    typer.echo(f"Put back: {told(counts)}")


@contextmanager
def _lines(file: str) -> Iterator[IO[str]]:
    with nullcontext(sys.stdin) if file == STREAM else Path(file).open(encoding="utf-8") as lines:
        yield lines


def _put(lines: Iterable[str], path: Path, force: bool) -> int:
    """Write lines into a file for its owner alone, whole or not at all; leaves with code 1 where it may not be written
    over. Gives how many."""
    from assistant.files import AlreadyThere, check_free

    try:
        check_free(path, over=force)
    except AlreadyThere as fault:
        exits.leave(f"{fault}; --force writes over it", exits.FAILED)
    part = path.with_name(f".{path.name}.{os.getpid()}.part")
    count = 0
    try:
        with os.fdopen(os.open(part, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600), "w", encoding="utf-8") as out:
            for line in lines:
                out.write(f"{line}\n")
                count += 1
            out.flush()
            os.fsync(out.fileno())
        part.replace(path)
    finally:
        part.unlink(missing_ok=True)
    return count
