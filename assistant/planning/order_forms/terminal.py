"""An order in a terminal, with Rich: one table, a section a store."""

from __future__ import annotations

from rich import box
from rich.console import Console
from rich.table import Table
from rich.text import Text

from assistant.planning.order_forms import Form
from assistant.planning.order_forms.text import as_text
from assistant.planning.order_sheet import Sheet
from assistant.planning.order_view import View, say, view
from assistant.replies.sentences import worded
from assistant.replies.terminal import block
from rules.model import Units

COLUMNS = ("item", "need", "order", "parts")


def show_order(sheet: Sheet, units: Units, console: Console | None = None) -> None:
    """Print the order: what is bought by store, then what the elevation changes and what was left out."""
    out = console or Console(highlight=False)
    shown = view(sheet, units)
    out.print(Text(shown.title, style="bold"))
    out.print(Text("; ".join(shown.summary), style="dim"))
    if shown.stores:
        out.print(_table(shown, units))
    for title, lines in shown.blocks:
        block(out, title, lines, "")
    block(out, worded(say("left-out-heading"), units), shown.left_out, "yellow")
    out.print()
    out.print(Text(shown.foot, style="dim italic"))


def _table(shown: View, units: Units) -> Table:
    deducted = any(row.on_hand for _, rows in shown.stores for row in rows)
    table = Table(box=box.SIMPLE_HEAD, pad_edge=False, expand=True, padding=(0, 1, 0, 0))
    heads = {
        "item": say("columns-item"),
        "need": say("columns-need"),
        "on_hand": say("columns-on-hand"),
        "order": say("columns-order"),
        "parts": say("columns-parts"),
    }
    ratios = {"item": 4, "order": 4, "parts": 5}
    for name, head in heads.items():
        if name != "on_hand" or deducted:
            weighed = name in ("need", "on_hand")
            table.add_column(worded(head, units), ratio=ratios.get(name), justify="right" if weighed else "left", no_wrap=weighed)
    for title, rows in shown.stores:
        table.add_row(Text(title, style="bold italic"))
        for row in rows:
            less = [Text(row.on_hand, style="dim")] if deducted else []
            table.add_row(f"  {row.item}", Text(row.need), *less, Text(row.order, style="bold"), Text(row.parts, style="dim"))
    return table


def _written(sheet: Sheet, units: Units) -> bytes:
    return as_text(sheet, units).encode()


# what is written to a file has no screen whose width it could fill
FORM = Form(ending=".txt", write=_written, show=show_order)
