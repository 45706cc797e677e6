"""A plan in a terminal, with Rich: a table of stages, a heading a day."""

from __future__ import annotations

from rich.console import Console
from rich.table import Table
from rich.text import Text

from assistant.planning.forms import Form
from assistant.planning.plan import Plan
from assistant.planning.plan_forms.text import as_text
from assistant.planning.plan_view import View, view
from assistant.replies.terminal import block
from rules.model import Units


def show_plan(plan: Plan, units: Units, console: Console | None = None) -> None:
    """Print the plan: whether it fits, the stages in their order, then how each dish waits and what was left out."""
    out = console or Console(highlight=False)
    shown = view(plan, units)
    out.print(Text(shown.title, style="bold"))
    for line in shown.summary:
        out.print(Text(line, style="dim"))
    out.print()
    out.print(Text(shown.verdict, style="green" if plan.fits and plan.work else "yellow"))
    if shown.days:
        out.print(_table(shown))
    for title, lines in shown.blocks:
        block(out, title, lines, "")
    block(out, shown.left_out_head, shown.left_out, "yellow")
    out.print()
    out.print(Text(shown.foot, style="dim italic"))


def _table(shown: View) -> Table:
    table = Table(box=None, expand=True, padding=(0, 2, 0, 0), header_style="dim", pad_edge=False)
    begin, till, dish, what, where = shown.heads
    table.add_column(begin, justify="right", no_wrap=True)
    table.add_column(till, justify="right", no_wrap=True)
    table.add_column(dish, ratio=2)
    table.add_column(what, ratio=5)
    table.add_column(where, ratio=2)
    for day, rows in shown.days:
        table.add_row()
        table.add_row("", "", "", Text(day, style="bold"))
        for row in rows:
            table.add_row(
                Text(row.begin, style="bold"), row.till, Text(row.dish), Text(row.what), Text(row.where, "dim")
            )
    return table


def _written(plan: Plan, units: Units) -> bytes:
    return as_text(plan, units).encode()


# what is written to a file has no screen whose width it could fill
FORM = Form(ending=".txt", write=_written, show=show_plan)
