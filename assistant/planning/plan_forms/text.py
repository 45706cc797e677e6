"""Plain text: a table of stages in their order, no wider than a page."""

from __future__ import annotations

import textwrap
from collections.abc import Iterator, Sequence
from itertools import zip_longest

from assistant.planning.forms import Form
from assistant.planning.order_forms.text import WIDTH, wrapped
from assistant.planning.plan import Plan
from assistant.planning.plan_view import Row, view
from rules.model import Units

GAP, WIDEST_DISH, WIDEST_WHERE = 2, 16, 12


def as_text(plan: Plan, units: Units = "us") -> str:
    """The plan as plain text, to the line break at its end."""
    return "\n".join(_lines(plan, units)) + "\n"


def _lines(plan: Plan, units: Units) -> Iterator[str]:
    shown = view(plan, units)
    yield from textwrap.wrap(shown.title, WIDTH)
    yield from textwrap.wrap("; ".join(shown.summary), WIDTH)
    yield from ("", *textwrap.wrap(shown.verdict, WIDTH))
    rows = [row for _, rows in shown.days for row in rows]
    widths = _widths(rows, shown.heads)
    for n, (day, of_day) in enumerate(shown.days):
        yield from ("", day)
        if not n:
            yield from _in_columns(shown.heads, widths)
        for row in of_day:
            yield from _in_columns((row.begin, row.till, row.dish, row.what, row.where), widths)
    for title, lines in (*shown.blocks, (shown.left_out_head, shown.left_out)):
        if lines:
            yield from ("", title, *wrapped(lines))
    yield from ("", *textwrap.wrap(shown.foot, WIDTH))


def _widths(rows: Sequence[Row], heads: Sequence[str]) -> tuple[int, ...]:
    """How wide the columns are; what is done takes the room that is left."""

    def widest(cells: Iterator[str], head: str, most: int) -> int:
        return min(most, max([len(head), *map(len, cells)]))

    begin = widest((row.begin for row in rows), heads[0], WIDTH)
    till = widest((row.till for row in rows), heads[1], WIDTH)
    dish = widest((row.dish for row in rows), heads[2], WIDEST_DISH)
    where = widest((row.where for row in rows), heads[4], WIDEST_WHERE)
    return begin, till, dish, WIDTH - begin - till - dish - where - 4 * GAP, where


def _in_columns(cells: Sequence[str], widths: Sequence[int]) -> Iterator[str]:
    columns = [textwrap.wrap(cell, width) for cell, width in zip(cells, widths, strict=True)]
    for line in zip_longest(*columns, fillvalue=""):
        padded = (f"{cell:<{width}}" for cell, width in zip(line, widths, strict=True))
        yield (" " * GAP).join(padded).rstrip()


def _written(plan: Plan, units: Units) -> bytes:
    return as_text(plan, units).encode()


FORM = Form(ending=".txt", write=_written)
