"""A page that needs nothing else, to be read on a screen and printed: its style and its drawing stand in it."""

from __future__ import annotations

from pathlib import Path

from markupsafe import Markup

from assistant.printing.lesson.air_column import AirColumn, as_svg
from assistant.printing.lesson.blocks import Sheet
from assistant.printing.lesson.forms import Form
from assistant.replies.template_files import environment

PACKAGE, PAGE = "assistant.printing.lesson.forms", "lesson.html.j2"


def write(sheet: Sheet, path: Path, paper: str) -> dict[Path, bytes]:
    """The sheet as one page."""
    text = environment(PACKAGE).get_template(PAGE).render(sheet=sheet, paper=paper, kind=_kind, drawing=_drawing)
    return {path: f"{text.strip()}\n".encode()}


def _kind(block: object) -> str:
    return type(block).__name__.lower()


def _drawing(column: AirColumn) -> Markup:
    return Markup(as_svg(column))


FORM = Form(write)
