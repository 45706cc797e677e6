"""Sentences of data/wording in the terminal, wrapped between words where it is one."""

from __future__ import annotations

import re
import shutil
import sys
import textwrap
from typing import TYPE_CHECKING

import typer

if TYPE_CHECKING:
    from rules.model import Units
    from rules.said import Value

WIDEST = 100
LISTED = re.compile(r"[-*] |\d+\. |\s+\S\) |Stop: ")


def show(words: Value, units: Units = "us") -> None:
    """Print a sentence. units: the system its quantities are written in first."""
    tell(text_of(words, units))


def tell(text: str) -> None:
    """Print a text; in a terminal no line is wider than it."""
    width = min(WIDEST, shutil.get_terminal_size().columns)
    typer.echo(wrapped(text, width) if sys.stdout.isatty() else text)


def text_of(words: Value, units: Units = "us") -> str:
    """A sentence as text."""
    from assistant.replies.sentences import worded

    return worded(words, units)


def wrapped(text: str, width: int) -> str:
    """Lines no longer than the width, broken between words; what goes on under a list item is indented.

    >>> print(wrapped("1. Hold the liquid at a bare simmer.", 24))
    1. Hold the liquid at a
       bare simmer.
    """
    return "\n".join(
        textwrap.fill(
            line,
            width,
            subsequent_indent=" " * len(found[0]) if (found := LISTED.match(line)) else "",
            break_long_words=False,
            break_on_hyphens=False,
        )
        for line in text.splitlines()
    )
