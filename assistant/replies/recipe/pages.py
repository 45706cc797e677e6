"""The forms that people read: plain text, Markdown, and a page to print."""

from __future__ import annotations

from assistant.replies.recipe.view import view
from assistant.replies.recipe.words import environment
from rules.model import Units
from rules.recipes.convert import Converted


def as_text(converted: Converted, units: Units = "us") -> str:
    """Plain text: changed lines are starred, each with what it was."""
    return _rendered("text.j2", converted, units)


def as_markdown(converted: Converted, units: Units = "us") -> str:
    """Markdown with a table of ingredients, as it was beside as it is."""
    return _rendered("markdown.j2", converted, units)


def as_html(converted: Converted, units: Units = "us") -> str:
    """A page that needs nothing else: both columns, made to be printed and read on a counter."""
    return _rendered("page.html.j2", converted, units)


def _rendered(template: str, converted: Converted, units: Units) -> str:
    return environment().get_template(template).render(recipe=view(converted, units)).strip() + "\n"
