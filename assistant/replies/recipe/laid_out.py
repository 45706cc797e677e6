"""A converted recipe laid out by a template, for the forms that people read."""

from __future__ import annotations

from assistant.replies.recipe.view import view
from assistant.replies.recipe.words import environment
from rules.model import Units
from rules.recipes.convert import Converted


def laid_out(template: str, converted: Converted, units: Units) -> str:
    """What a template of templates/ makes of the recipe, which it has as `recipe`, with one line break at its end."""
    return environment().get_template(template).render(recipe=view(converted, units)).strip() + "\n"
