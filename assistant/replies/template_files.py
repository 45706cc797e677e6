"""The templates of a package: files of Jinja in its folder `templates`, where a name that is not filled is an error."""

from __future__ import annotations

from functools import cache
from importlib.resources import files

from jinja2 import Environment, FunctionLoader, StrictUndefined


@cache
def environment(package: str) -> Environment:
    """The templates of a package, by its dotted name; those of pages (.html.j2) escape what they print."""
    folder = files(package) / "templates"

    def load(name: str) -> str | None:
        path = folder / name
        return path.read_text(encoding="utf-8") if path.is_file() else None

    return Environment(
        loader=FunctionLoader(load),
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
        autoescape=lambda name: bool(name and name.endswith(".html.j2")),
    )
