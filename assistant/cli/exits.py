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
STOPPED = 130

# every code that a command ends with, and what it says
CODES = {
    ANSWERED: "answered",
    FAILED: "something failed, or a line or file of several did",
    MISUSED: "the command was misused",
    ASKS_BACK: "a piece is missing and the reply asks for it, or what was given holds no recipe",
    NOT_COVERED: "the question is outside what simmerline covers",
    STOPPED: "stopped by Ctrl-C",
}
EPILOG = "Exit codes: " + "; ".join(f"{code} {words}" for code, words in CODES.items()) + "."


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
        leave(of_system(fault), FAILED)


def of_system(fault: OSError) -> str:
    """A fault of the operating system in one line; one that names no file befell what was to be shown."""
    reason = (fault.strerror or str(fault)).lower()
    return f"{fault.filename}: {reason}" if fault.filename else f"the answer cannot be shown: {reason}"


def write(files: Mapping[Path, bytes], force: bool) -> None:
    """Write files, each whole, and say so; leaves with code 1 and writes none of them where one cannot be written, or
    is there already and may not be written over."""
    from assistant.files import AlreadyThere, NotWritten, write_all

    try:
        write_all(files, over=force)
    except AlreadyThere as fault:
        leave(f"{fault.path} is there already; --force writes over it, --out names another", FAILED)
    except NotWritten as fault:
        leave(str(fault), FAILED)
    for path in files:
        typer.echo(f"Written: {path}")
