"""An answer in a terminal, with Rich."""

from __future__ import annotations

from rich.console import Console
from rich.padding import Padding
from rich.text import Text

from assistant.replies.wording import sections
from rules.model import Answer

CAUTION_STYLE = {"stop": "bold red", "warn": "yellow", "note": "dim"}


def show_answer(answer: Answer, console: Console | None = None) -> None:
    """Print the answer for reading at arm's length: the answer bold, the rest in its order."""
    out = console or Console(highlight=False)
    parts = sections(answer)
    out.print(Text(parts.headline, style="bold"))
    for note in parts.notes:
        out.print(Text(note, style="italic"))
    block(out, "", parts.figures, "")
    numbered = len(parts.steps) > 1
    block(out, "", tuple(f"{n}. {step}" if numbered else step for n, step in enumerate(parts.steps, start=1)), "")
    block(out, "", parts.reasons, "dim")
    if parts.warnings:
        out.print()
        for level, text in parts.warnings:
            out.print(Padding(Text(text, style=CAUTION_STYLE[level]), (0, 0, 0, 2)))
    if parts.sources:
        out.print()
        out.print(Text("Sources: " + "; ".join(parts.sources) + ".", style="dim italic"))


def block(out: Console, title: str, lines: tuple[str, ...], style: str) -> None:
    """A group of lines, indented, its title before them where it has one; nothing where there are none."""
    if not lines:
        return
    out.print()
    if title:
        out.print(Text(title, style="bold"))
    for line in lines:
        out.print(Padding(Text(line, style=style), (0, 0, 0, 2)))
