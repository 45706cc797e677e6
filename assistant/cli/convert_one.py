"""One recipe, read from its file and converted."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from rules.recipes.convert import Converted


def converted_from(source: str, asked: dict[str, Any]) -> Converted:
    """The recipe in a file, or in standard input for "-", converted.

    raises: AssistantError or RulesError that says what is wrong with it
    """
    from assistant.recipes.converting import convert_recipe

    name = "the text given" if source == "-" else source
    return convert_recipe(_content(source), name=name, **asked)


def _content(source: str) -> bytes:
    """The bytes of a file, one more at the most than any recipe may have."""
    from assistant.recipes.errors import RecipeError
    from assistant.recipes.read import MOST_BYTES, bytes_of

    if source == "-":
        return sys.stdin.buffer.read(MOST_BYTES + 1)
    try:
        return bytes_of(Path(source))
    except (OSError, ValueError) as error:
        reason = getattr(error, "strerror", None) or "that is no name of a file"
        raise RecipeError(source, f"it cannot be read ({reason.lower()})", "Check the name and the folder") from None
