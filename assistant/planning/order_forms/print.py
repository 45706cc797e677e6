"""A page to print and tick off in the store: HTML that needs nothing else."""

from __future__ import annotations

from functools import cache
from pathlib import Path
from typing import TYPE_CHECKING

from assistant.planning.forms import Form
from assistant.planning.order_sheet import Sheet
from assistant.planning.order_view import view
from rules.model import Units

if TYPE_CHECKING:
    from jinja2 import Environment


def as_page(sheet: Sheet, units: Units = "us") -> str:
    """The page: a table a store with a box to tick, for black and white paper."""
    return _environment().get_template("order.html.j2").render(order=view(sheet, units))


@cache
def _environment() -> Environment:
    from jinja2 import Environment, FileSystemLoader

    return Environment(
        loader=FileSystemLoader(Path(__file__).parents[1] / "templates"),
        autoescape=True,
        trim_blocks=True,
        lstrip_blocks=True,
    )


def _written(sheet: Sheet, units: Units) -> bytes:
    return as_page(sheet, units).encode()


FORM = Form(ending=".html", write=_written)
