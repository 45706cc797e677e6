"""The ingredients as a table for a spreadsheet, each as it was beside as it is."""

from __future__ import annotations

import csv
import io
from collections.abc import Iterator

from assistant.replies.one_line import cell
from assistant.replies.recipe.forms import Form
from assistant.replies.recipe.worded import in_words
from assistant.replies.recipe.words import added
from rules.baking.change import Change, adds
from rules.model import Units
from rules.recipes.convert import Converted
from rules.recipes.lines import LineTo, round_mass
from rules.recipes.sheet import line_added, stands_after

COLUMNS = ("recipe", "part", "item", "was", "was_g", "now", "now_g", "changed", "stop")


def as_csv(converted: Converted, units: Units = "us") -> str:
    """A row an ingredient under a row of COLUMNS, masses in grams, empty where not known; before them what is stopped.

    Every row names its recipe, so that the tables of a folder can be put under one another.
    """
    out = io.StringIO()
    table = csv.DictWriter(out, COLUMNS, restval="", lineterminator="\n")
    table.writeheader()
    title = converted.recipe.title
    table.writerows(
        {column: cell(text) for column, text in ({"recipe": title} | row).items()}
        for row in _rows(in_words(converted, units))
    )
    return out.getvalue()


def _rows(converted: Converted) -> Iterator[dict[str, str]]:
    yield from ({"stop": caution.text} for caution in converted.cautions if caution.level == "stop")
    yield from map(_listed, converted.ingredients)
    new = [change for change in converted.changes if adds(change)]
    part = converted.recipe.ingredients[stands_after(converted.recipe)].component if new else ""
    yield from ({"part": part} | _new(change) for change in new)


def _listed(to: LineTo) -> dict[str, str]:
    line = to.line
    return {
        "part": line.component,
        "item": line.item,
        "was": line.line,
        "was_g": _grams(line.mass_g),
        "now": to.text,
        "now_g": _grams(to.mass_g),
        "changed": "yes" if to.changed else "no",
    }


def _new(change: Change) -> dict[str, str]:
    line = line_added(change)
    return {
        "item": change.item,
        "now": added(change),
        "now_g": _grams(line.mass_g if line else None),
        "changed": "yes",
    }


def _grams(mass_g: float | None) -> str:
    """A mass as a spreadsheet adds it up, without a sign between thousands.

    >>> _grams(1328.2), _grams(4.54), _grams(None)
    ('1328', '4.5', '')
    """
    return "" if mass_g is None else f"{round_mass(mass_g):.10g}"


FORM = Form(ending=".csv", write=as_csv)
