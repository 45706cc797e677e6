"""Exit codes that scripts can use, and the one way to leave with a message."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from pathlib import Path
from typing import TYPE_CHECKING, NoReturn

import typer

if TYPE_CHECKING:
    from rules.model import Answer

ANSWERED = 0
FAILED = 1
MISUSED = 2
ASKS_BACK = 3
NOT_COVERED = 4

CODES = {
    ANSWERED: "answered",
    FAILED: "something failed, or a line or file of several did",
    MISUSED: "the command was misused",
    ASKS_BACK: "a piece is missing and the reply asks for it, or what was given holds no recipe",
    NOT_COVERED: "the question is outside what simmerline covers",
}
EPILOG = f"Exit codes: {'; '.join(f'{code} {means}' for code, means in CODES.items())}."


def of(answer: Answer) -> int:
    """The exit code of one answer."""
    from rules.catalogue import marked

    if answer.missing:
        return ASKS_BACK
    return ANSWERED if answer.covered or answer.request.topic in marked("by_words") else NOT_COVERED


def leave(message: str, code: int = MISUSED) -> NoReturn:
    """Say what is wrong on standard error and leave."""
    typer.echo(f"simmerline: {message}", err=True)
    raise typer.Exit(code)


@contextmanager
def kindly() -> Iterator[None]:
    """What goes wrong in a block is said in one line, and the code is 1."""
    from assistant.errors import AssistantError
    from rules.errors import RulesError

    try:
        yield
    except (AssistantError, RulesError) as fault:
        leave(str(fault), FAILED)
    except OSError as fault:
        leave(f"{fault.filename or 'the file'}: {(fault.strerror or str(fault)).lower()}", FAILED)


def write(files: Mapping[Path, bytes], force: bool) -> None:
    """Write files and say so; leaves with code 1 and writes none of them where one is there already and may not be
    written over. Never writes through a link."""
    for path in files:
        if path.is_symlink():
            leave(f"{path} is a link to another file; name a file of its own", FAILED)
        if path.exists() and not force:
            leave(f"{path} is there already; --force writes over it, --out names another", FAILED)
    for path, content in files.items():
        path.write_bytes(content)
        typer.echo(f"Written: {path}")
