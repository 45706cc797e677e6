"""Plain text: a block a store, a line or two an item, no wider than a page."""

from __future__ import annotations

import textwrap
from collections.abc import Iterable, Iterator

from assistant.planning.forms import Form
from assistant.planning.order_sheet import Sheet
from assistant.planning.order_view import Row, view
from rules.model import Units

WIDTH = 80


def as_text(sheet: Sheet, units: Units = "us") -> str:
    """The order as plain text, to the line break at its end."""
    return "\n".join(_lines(sheet, units)) + "\n"


def _lines(sheet: Sheet, units: Units) -> Iterator[str]:
    shown = view(sheet, units)
    yield shown.title
    yield from textwrap.wrap("; ".join(shown.summary), WIDTH)
    for title, rows in shown.stores:
        yield from ("", title)
        for row in rows:
            yield from _row(row, shown.heads["on_hand"].lower())
    for title, lines in (*shown.blocks, (shown.heads["left_out"], shown.left_out)):
        if lines:
            yield from ("", title, *wrapped(lines))
    yield from ("", *textwrap.wrap(shown.foot, WIDTH))


def _row(row: Row, on_hand: str) -> Iterator[str]:
    less = f", {on_hand} {row.on_hand}" if row.on_hand else ""
    yield from textwrap.wrap(f"  [ ] {row.order}  {row.item} ({row.need}{less})", WIDTH, subsequent_indent="      ")
    yield from textwrap.wrap(row.parts, WIDTH, initial_indent="      ", subsequent_indent="      ")


def wrapped(lines: Iterable[str]) -> Iterator[str]:
    """Lines indented under a heading, none wider than the page."""
    for line in lines:
        yield from textwrap.wrap(line, WIDTH, initial_indent="  ", subsequent_indent="    ")


def _written(sheet: Sheet, units: Units) -> bytes:
    return as_text(sheet, units).encode()


FORM = Form(ending=".txt", write=_written)
