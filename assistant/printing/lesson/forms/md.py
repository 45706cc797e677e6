"""Plain Markdown, with the drawing beside it as a file of its own."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

from assistant.printing.lesson.air_column import as_svg
from assistant.printing.lesson.blocks import (
    Answers,
    Block,
    Care,
    Grid,
    Heading,
    Lead,
    Picture,
    Questions,
    Sheet,
    Steps,
    Sum,
    Text,
    Together,
)
from assistant.printing.lesson.forms import Form

PROLOGUE = '<?xml version="1.0" encoding="utf-8"?>\n'
MARKS = str.maketrans({mark: f"\\{mark}" for mark in "\\`*_[]<>|"})


def write(sheet: Sheet, path: Path, paper: str) -> dict[Path, bytes]:
    """The sheet, and the drawing where it has one."""
    picture = path.with_name(f"{path.stem}-air.svg")
    body = "\n\n".join(
        (
            f"# {plain(sheet.title)}",
            f"{plain(sheet.place)}",
            *(f"{plain(blank)}: ______________________________" for blank in sheet.to_fill_in),
            *(text for block in sheet.blocks for text in _block(block, picture.name)),
            "---",
            plain(sheet.foot),
        )
    )
    files = {path: f"{body}\n".encode()}
    for block in sheet.blocks:
        if isinstance(block, Picture):
            files[picture] = (PROLOGUE + as_svg(block.column)).encode()
    return files


def plain(text: str) -> str:
    """Text in which nothing is taken for a mark; blanks to write on stay as they are.

    >>> plain("a * b: ____")
    'a \\\\* b: ____'
    """
    return text.translate(MARKS).replace("\\_", "_")


def _block(block: Block, picture: str) -> Iterator[str]:
    match block:
        case Heading(text):
            yield f"## {plain(text)}"
        case Lead(text, label):
            yield f"{_label(label)}**{plain(text)}**"
        case Text(text, label, strong=strong):
            yield f"{_label(label)}**{plain(text)}**" if strong else f"{_label(label)}{plain(text)}"
        case Sum(text, label):
            yield f"> {_label(label)}{plain(text)}"
        case Steps(items):
            yield "\n".join(f"{n}. {plain(item)}" for n, item in enumerate(items, start=1))
        case Care(title, items):
            yield f"**{plain(title)}**"
            yield "\n".join(f"- {plain(item)}" for item in items)
        case Grid(head, rows):
            yield "\n".join(_row(row) for row in (head, ("---",) * len(head), *rows))
        case Picture(_, caption, shows):
            yield f"![{plain(shows)}]({picture})"
            yield plain(caption)
        case Questions(intro, items):
            yield plain(intro)
            for n, asked in enumerate(items, start=1):
                inside = _indent(n)
                yield f"{n}. {plain(asked.text)}"
                if asked.options:
                    yield "\n".join(f"{inside}- {plain(option)}" for option in asked.options)
                yield f"{inside}{plain(asked.blank)}"
        case Answers(items):
            for n, answered in enumerate(items, start=1):
                yield f"{n}. **{plain(answered.shown)}**"
                yield _indent(n) + " ".join(plain(text) for text in (answered.counts, answered.why) if text)
        case Together(blocks):
            for inner in blocks:
                yield from _block(inner, picture)


def _indent(number: int) -> str:
    """What stands before a line that goes on under a number."""
    return " " * len(f"{number}. ")


def _label(label: str) -> str:
    return f"*{plain(label)}.* " if label else ""


def _row(cells: tuple[str, ...]) -> str:
    return f"| {' | '.join(cell if cell == '---' else plain(cell) for cell in cells)} |"


FORM = Form(write)
