"""Sentences of data/wording in the terminal."""

from __future__ import annotations

from typing import TYPE_CHECKING

import typer

if TYPE_CHECKING:
    from rules.model import Units
    from rules.said import Value


def show(words: Value, units: Units = "us") -> None:
    """Print a sentence. units: the system its quantities are written in first."""
    typer.echo(text_of(words, units))


def text_of(words: Value, units: Units = "us") -> str:
    """A sentence as text."""
    from assistant.replies.sentences import worded

    return worded(words, units)
