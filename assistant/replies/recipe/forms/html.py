"""A page to print."""

from __future__ import annotations

from assistant.replies.recipe.forms import Form
from assistant.replies.recipe.laid_out import laid_out
from rules.model import Units
from rules.recipes.convert import Converted


def as_html(converted: Converted, units: Units = "us") -> str:
    """A page that needs nothing else: both columns, made to be printed and read on a counter."""
    return laid_out("page.html.j2", converted, units)


FORM = Form(ending=".html", write=as_html)
