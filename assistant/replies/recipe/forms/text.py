"""Plain text."""

from __future__ import annotations

from assistant.replies.recipe.forms import Form
from assistant.replies.recipe.laid_out import laid_out
from rules.model import Units
from rules.recipes.convert import Converted


def as_text(converted: Converted, units: Units = "us") -> str:
    """Changed lines are starred, each with what it was."""
    return laid_out("text.j2", converted, units)


FORM = Form(ending=".txt", write=as_text)
