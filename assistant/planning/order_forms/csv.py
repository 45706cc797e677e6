"""Comma-separated values: a row an item."""

from __future__ import annotations

import csv
import io

from assistant.planning.forms import Form
from assistant.planning.order_sheet import Sheet
from assistant.planning.order_table import columns, rows
from assistant.replies.one_line import cell
from rules.model import Units


def as_csv(sheet: Sheet, units: Units = "us") -> str:
    """The order under a row of column names."""
    out = io.StringIO()
    table = csv.writer(out, lineterminator="\n")
    table.writerow(columns(units))
    table.writerows([cell(v) if isinstance(v, str) else v for v in row] for row in rows(sheet, units))
    return out.getvalue()


def _written(sheet: Sheet, units: Units) -> bytes:
    return as_csv(sheet, units).encode()


FORM = Form(ending=".csv", write=_written)
