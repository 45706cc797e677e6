"""A workbook: the order, what the elevation changes, and what was left out, a sheet each."""

from __future__ import annotations

import io

from assistant.planning.forms import Form
from assistant.planning.order_sheet import Sheet
from assistant.planning.order_table import columns, rows
from assistant.planning.order_view import view
from assistant.replies.one_line import cell
from rules.model import Units

WIDEST, NARROWEST = 60, 8
ORDER, NOTES = "Order", "Notes"


def as_xlsx(sheet: Sheet, units: Units = "us") -> bytes:
    """The workbook. Weights are numbers; the head stays in sight and can be filtered by."""
    from openpyxl import Workbook
    from openpyxl.styles import Font
    from openpyxl.utils import get_column_letter

    book = Workbook()
    page = book.active
    page.title = ORDER
    page.append(columns(units))
    for row in rows(sheet, units):
        page.append([_value(v) for v in row])
    for head in page[1]:
        head.font = Font(bold=True)
    page.freeze_panes = "C2"
    page.auto_filter.ref = page.dimensions
    for at, column in enumerate(page.iter_cols(values_only=True), start=1):
        width = max(len(str(value)) for value in column if value is not None)
        page.column_dimensions[get_column_letter(at)].width = min(WIDEST, max(NARROWEST, width + 1))
    page.page_setup.orientation, page.page_setup.fitToWidth, page.page_setup.fitToHeight = "landscape", 1, 0
    page.sheet_properties.pageSetUpPr.fitToPage = True
    page.print_title_rows = "1:1"
    notes = book.create_sheet(NOTES)
    for line in _notes(sheet, units):
        notes.append([_value(line)])
    notes.column_dimensions["A"].width = 2 * WIDEST
    out = io.BytesIO()
    book.save(out)
    return out.getvalue()


def _notes(sheet: Sheet, units: Units) -> list[str]:
    shown = view(sheet, units)
    left_out = (shown.heads["left_out"], shown.left_out)
    lines = [shown.title, *shown.summary]
    for title, told in (*shown.blocks, left_out):
        lines += ["", title, *told] if told else []
    return [*lines, "", shown.foot]


def _value(value: str | float | None) -> str | float | None:
    return cell(value) if isinstance(value, str) else value


FORM = Form(ending=".xlsx", write=as_xlsx, binary=True)
