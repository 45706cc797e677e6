"""Any recipe, whatever it is written in -> Recipe."""

from __future__ import annotations

import re
from pathlib import Path

from assistant.files import first_bytes
from assistant.recipes.errors import NoRecipe, RecipeError
from assistant.recipes.jsonld import read_jsonld
from assistant.recipes.lenient_json import unwrapped
from assistant.recipes.pages import looks_like_page, read_page
from assistant.recipes.text import read_text
from rules.recipe import Recipe

MOST_BYTES = 5 * 1024 * 1024
MOST_TEXT = 200_000
_JSON = re.compile(
    r"""\s*(?:\{\s*(?:["'}]|@?[a-z]\w*\s*:|//|/\*)|\[\s*(?:[{\[]|//|/\*)|[{\[]\s*&(?:quot|\#34);)""", re.IGNORECASE
)


def read(content: str | bytes, *, name: str = "") -> Recipe:
    """Read a recipe: plain text, schema.org JSON-LD, or a saved web page with data in it; the content tells which.

    content: text, or bytes in UTF-8 or UTF-16 (with its mark), else taken for Windows-1252
    name: what to call it in an error, usually the file name
    returns: the Recipe; nothing of a plain text is dropped
    raises: NoRecipe for an empty file, and for JSON or a page without a recipe; RecipeError for a binary or oversized
        file (5 MB; 200,000 characters of plain text) and for JSON that is broken past mending

    >>> read("Rolls\\n500 g bread flour\\nBake 20 minutes at 425 F.").ingredients[0].mass_g
    500.0
    """
    if len(content) > MOST_BYTES:
        raise RecipeError(name, "it is larger than 5 MB", "Save the recipe alone, without pictures")
    text = _decoded(content, name)
    if not text.strip():
        raise NoRecipe(name, "it is empty", "Paste the ingredients and the method")
    if _looks_like_json(text):
        return read_jsonld(text, name=name)
    if looks_like_page(text):
        return read_page(text, name=name)
    if len(text) > MOST_TEXT:
        raise RecipeError(name, "it is far longer than a recipe", "Give one recipe at a time")
    return read_text(text)


def bytes_of(path: Path) -> bytes:
    """What a file holds, or of one that is too large as much as shows it.

    raises: OSError
    """
    return first_bytes(path, MOST_BYTES + 1)


def _decoded(content: str | bytes, name: str) -> str:
    if isinstance(content, str):
        return content.lstrip("\ufeff")
    if content.startswith((b"\xff\xfe", b"\xfe\xff")):
        return content.decode("utf-16", errors="replace").lstrip("\ufeff")
    if b"\x00" in content:
        raise RecipeError(name, "it is not text", "Export the recipe as text, JSON or a web page")
    try:
        return content.decode("utf-8").lstrip("\ufeff")
    except UnicodeDecodeError:
        return content.decode("cp1252", errors="replace")


def _looks_like_json(text: str) -> bool:
    """Whether JSON can begin so, comments before it left out: "[ ] 2 eggs" and "{optional} nuts" cannot."""
    return bool(_JSON.match(text) or _JSON.match(unwrapped(text)))
