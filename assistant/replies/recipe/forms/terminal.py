"""A converted recipe in a terminal: as it was beside as it is, with Rich."""

from __future__ import annotations

from collections.abc import Iterable

from rich import box
from rich.console import Console
from rich.table import Table
from rich.text import Text

from assistant.replies.recipe.forms import Form
from assistant.replies.recipe.forms.text import as_text
from assistant.replies.recipe.view import Group, Told, view
from assistant.replies.recipe.words import opening, pieces
from assistant.replies.terminal import CAUTION_STYLE, block
from rules.model import Units
from rules.recipes.convert import Converted

NARROW = 80


def show_recipe(converted: Converted, units: Units, console: Console | None = None) -> None:
    """Print the recipe for cooking from it: both columns, changed lines marked; one column where it is narrow."""
    out = console or Console(highlight=False)
    recipe = view(converted, units)
    out.print(Text(recipe.title, style="bold"))
    for line in recipe.summary:
        out.print(Text(line, style="dim"))
    both = out.width >= NARROW
    for title, groups, numbered in (("Ingredients", recipe.ingredients, False), ("Method", recipe.steps, True)):
        if groups:
            out.print()
            out.print(_table(title, groups, recipe.there, recipe.here, numbered=numbered, both=both))
    if recipe.formula:
        out.print()
        out.print(Text(f"Formula: {'; '.join(recipe.formula)}.", style="dim"))
    block(out, "What changes, and why", _lines(recipe.changes), "")
    block(out, "What stays, and why", _lines(recipe.kept), "dim")
    if recipe.cautions:
        out.print()
        out.print(Text("Take care", style="bold"))
        for level, text in recipe.cautions:
            out.print(Text(f"  {'Stop: ' if level == 'stop' else ''}{text}", style=CAUTION_STYLE[level]))
    block(out, "Notes of the recipe", recipe.notes, "")
    block(out, "Not understood, kept as it was", recipe.unread, "yellow")
    if recipe.sources:
        out.print()
        out.print(Text("Sources: " + "; ".join(recipe.sources) + ".", style="dim italic"))


def _lines(told: Iterable[Told]) -> tuple[str, ...]:
    return tuple(f"{'; '.join(one.heads)}. {one.because}" for one in told)


def _table(title: str, groups: Iterable[Group], there: str, here: str, *, numbered: bool, both: bool) -> Table:
    table = Table(
        box=box.SIMPLE_HEAD, title=title, title_justify="left", title_style="bold", expand=True, pad_edge=False
    )
    if both:
        table.add_column(opening(there), style="dim", ratio=2)
    table.add_column("", width=3, no_wrap=True, justify="right")
    table.add_column(opening(here), ratio=3)
    if not numbered:
        table.add_column("Weight", justify="right", no_wrap=True)
    for group in groups:
        if group.title:
            table.add_row(*([""] if both else []), "", Text(group.title, style="italic"))
        for number, row in enumerate(group.rows, start=group.first):
            mark = Text(
                str(number) if numbered else ">" if row.changed else "", style="green" if row.changed else "dim"
            )
            cells = [Text(row.was)] if both else []
            cells += [mark, _now(row.now, row.changed, numbered)]
            table.add_row(*cells, *([] if numbered else [Text(row.grams)]), end_section=False)
    return table


def _now(text: str, changed: bool, step: bool) -> Text:
    if not step:
        return Text(text, style="bold green" if changed else "")
    told = Text()
    for part, aside in pieces(text):
        told.append(part, style="dim green" if aside else "")
    return told


# what is written to a file has no screen whose width it could fill
FORM = Form(ending=".txt", write=as_text, show=show_recipe)
