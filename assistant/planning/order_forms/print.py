"""A page to print and tick off in the store: HTML that needs nothing else."""

from __future__ import annotations

from assistant.planning.forms import Form
from assistant.planning.order_sheet import Sheet
from assistant.planning.order_view import view
from rules.model import Units


def as_page(sheet: Sheet, units: Units = "us") -> str:
    """The page: a table a store with a box to tick, for black and white paper."""
    from assistant.replies.template_files import environment

    return environment("assistant.planning").get_template("order.html.j2").render(order=view(sheet, units))


def _written(sheet: Sheet, units: Units) -> bytes:
    return as_page(sheet, units).encode()


FORM = Form(ending=".html", write=_written)
