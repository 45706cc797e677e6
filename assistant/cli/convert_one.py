"""One recipe from its file to one of the forms it is written in."""

from __future__ import annotations

import json
import sys
from enum import StrEnum
from pathlib import Path
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from rules.recipes.convert import Converted


class Format(StrEnum):
    """The forms a converted recipe is written in."""

    terminal = "terminal"
    text = "text"
    markdown = "markdown"
    html = "html"
    jsonld = "jsonld"
    json = "json"


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
    from assistant.recipes.read import MOST_BYTES

    if source == "-":
        return sys.stdin.buffer.read(MOST_BYTES + 1)
    try:
        with Path(source).open("rb") as file:
            return file.read(MOST_BYTES + 1)
    except (OSError, ValueError) as error:
        reason = getattr(error, "strerror", None) or "that is no name of a file"
        raise RecipeError(source, f"it cannot be read ({reason.lower()})", "Check the name and the folder") from None


def written_as(converted: Converted, form: Format, units: Any) -> str:
    """The recipe in one of the written forms, with a line break at its end."""
    from assistant.replies import recipe as forms

    match form:
        case Format.json:
            return json.dumps(forms.as_json(converted, units), ensure_ascii=False, indent=2) + "\n"
        case Format.jsonld:
            return json.dumps(forms.as_jsonld(converted, units), ensure_ascii=False, indent=2) + "\n"
        case Format.html:
            return forms.as_html(converted, units)
        case Format.markdown:
            return forms.as_markdown(converted, units)
        case _:
            return forms.as_text(converted, units)
