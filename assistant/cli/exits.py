"""Exit codes that scripts can use, and the one way to leave with a message."""

from __future__ import annotations

from typing import NoReturn

import typer

from rules.catalogue import marked
from rules.model import Answer

ANSWERED = 0
FAILED = 1
MISUSED = 2
ASKS_BACK = 3
NOT_COVERED = 4

EPILOG = (
    "Exit codes: 0 answered; 1 something failed, or a line or file of several did; 2 the command was misused; "
    "3 a piece is missing and the reply asks for it, or what was given holds no recipe; "
    "4 the question is outside what simmerline covers."
)


def of(answer: Answer) -> int:
    """The exit code of one answer."""
    if answer.missing:
        return ASKS_BACK
    return ANSWERED if answer.covered or answer.request.topic in marked("by_words") else NOT_COVERED


def leave(message: str, code: int = MISUSED) -> NoReturn:
    """Say what is wrong on standard error and leave."""
    typer.echo(f"simmerline: {message}", err=True)
    raise typer.Exit(code)
