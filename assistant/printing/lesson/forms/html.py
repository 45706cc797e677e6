"""A page that needs nothing else, to be read on a screen and printed: its style and its drawing stand in it."""

from __future__ import annotations

from functools import cache
from importlib.resources import files
from pathlib import Path

from jinja2 import Environment, FunctionLoader, StrictUndefined
from markupsafe import Markup

from assistant.printing.lesson.air_column import AirColumn, as_svg
from assistant.printing.lesson.blocks import Sheet
from assistant.printing.lesson.forms import Form

PAGE = "lesson.html.j2"


def write(sheet: Sheet, path: Path, paper: str) -> dict[Path, bytes]:
    """The sheet as one page."""
    text = environment().get_template(PAGE).render(sheet=sheet, paper=paper, kind=_kind, drawing=_drawing)
    return {path: f"{text.strip()}\n".encode()}


@cache
def environment() -> Environment:
    """The templates of this folder; what is written is escaped."""
    folder = files("assistant.printing.lesson.forms") / "templates"

    def load(name: str) -> str | None:
        path = folder / name
        return path.read_text(encoding="utf-8") if path.is_file() else None

    return Environment(
        loader=FunctionLoader(load), undefined=StrictUndefined, trim_blocks=True, lstrip_blocks=True, autoescape=True
    )


def _kind(block: object) -> str:
    return type(block).__name__.lower()


def _drawing(column: AirColumn) -> Markup:
    return Markup(as_svg(column))


FORM = Form(write)
