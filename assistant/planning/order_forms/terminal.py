"""An order in a terminal, with Rich: one table, a section a store."""

from __future__ import annotations

from rich.console import Console
from rich.table import Table
from rich.text import Text

from assistant.planning.forms import Form
from assistant.planning.order_forms.text import as_text
from assistant.planning.order_sheet import Sheet
from assistant.planning.order_view import View, view
from assistant.replies.terminal import block
from rules.model import Units


def show_order(sheet: Sheet, units: Units, console: Console | None = None) -> None:
    """Print the order: what is bought by store, then what the elevation changes and what was left out."""
    out = console or Console(highlight=False)
    shown = view(sheet, units)
    out.print(Text(shown.title, style="bold"))
    for line in shown.summary:
        out.print(Text(line, style="dim"))
    out.print()
    if shown.stores:
        out.print(_table(shown))
    for title, lines in shown.blocks:
        block(out, title, lines, "")
    block(out, shown.heads["left_out"], shown.left_out, "yellow")
    out.print()
    out.print(Text(shown.foot, style="dim italic"))


def _table(shown: View) -> Table:
    """The rows, a heading in the first column for each store."""
    deducted = any(row.on_hand for _, rows in shown.stores for row in rows)
    table = Table(box=None, expand=True, padding=(0, 2, 0, 0), header_style="dim", pad_edge=False)
    table.add_column(shown.heads["item"], ratio=6)
    for name in ("need", "on_hand") if deducted else ("need",):
        table.add_column(shown.heads[name], justify="right", no_wrap=True)
    table.add_column(shown.heads["order"], ratio=5)
    table.add_column(shown.heads["parts"], ratio=7)
    for title, rows in shown.stores:
        table.add_row()
        table.add_row(Text(title, style="bold"))
        for row in rows:
            less = [Text(row.on_hand, style="dim")] if deducted else []
            parts = Text(row.parts, style="dim")
            table.add_row(row.item, Text(row.need), *less, Text(row.order, style="bold"), parts)
    return table


def _written(sheet: Sheet, units: Units) -> bytes:
    return as_text(sheet, units).encode()


# what is written to a file has no screen whose width it could fill
FORM = Form(ending=".txt", write=_written, show=show_order)
