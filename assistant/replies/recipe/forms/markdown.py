"""Markdown."""

from __future__ import annotations

from assistant.replies.recipe.forms import Form
from assistant.replies.recipe.laid_out import laid_out
from rules.model import Units
from rules.recipes.convert import Converted


def as_markdown(converted: Converted, units: Units = "us") -> str:
    """Markdown with a table of ingredients, as it was beside as it is."""
    return laid_out("markdown.j2", converted, units)


FORM = Form(ending=".md", write=as_markdown)
