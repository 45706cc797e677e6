"""Any recipe, whatever it is written in -> Recipe."""

from __future__ import annotations

from assistant.recipes.errors import NoRecipe, RecipeError
from assistant.recipes.jsonld import read_jsonld, read_page
from assistant.recipes.text import read_text
from rules.recipe import Recipe

MOST_BYTES = 5 * 1024 * 1024
MOST_TEXT = 200_000


def read(content: str | bytes, *, name: str = "") -> Recipe:
    """Read a recipe: plain text, schema.org JSON-LD, or a saved web page with JSON-LD in it; the content tells which.

    content: text, or bytes in UTF-8 or UTF-16 (with its mark), else taken for Windows-1252
    name: what to call it in an error, usually the file name
    returns: the Recipe; nothing of a plain text is dropped
    raises: RecipeError for an empty, binary or oversized file (5 MB; 200,000 characters of plain text), for JSON that
        is broken, and for JSON or a page without a recipe; NoRecipe for one without an ingredient and a step

    >>> read("Rolls\\n500 g bread flour\\nBake 20 minutes at 425 F.").ingredients[0].mass_g
    500.0
    """
    if len(content) > MOST_BYTES:
        raise RecipeError(name, "it is larger than 5 MB", "Save the recipe alone, without pictures")
    text = _decoded(content, name)
    start = text.lstrip()
    if not start:
        raise RecipeError(name, "it is empty", "Paste the ingredients and the method")
    if start[0] in "{[" and _looks_like_json(start):
        return _with_lines(read_jsonld(text, name=name), name)
    if _looks_like_html(start):
        return _with_lines(read_page(text, name=name), name)
    if len(text) > MOST_TEXT:
        raise RecipeError(name, "it is far longer than a recipe", "Give one recipe at a time")
    return _with_lines(read_text(text), name)


def _with_lines(recipe: Recipe, name: str) -> Recipe:
    if not recipe.ingredients and not recipe.steps:
        raise NoRecipe(name)
    return recipe


def _decoded(content: str | bytes, name: str) -> str:
    if isinstance(content, str):
        return content.removeprefix("\ufeff")
    if content.startswith((b"\xff\xfe", b"\xfe\xff")):
        return content.decode("utf-16", errors="replace")
    if b"\x00" in content:
        raise RecipeError(name, "it is not text", "Export the recipe as text, JSON or a web page")
    try:
        return content.decode("utf-8-sig")
    except UnicodeDecodeError:
        return content.decode("cp1252", errors="replace")


def _looks_like_json(start: str) -> bool:
    """Whether the first sign after the bracket can begin JSON: "[ ] 2 eggs" and "[optional] nuts" cannot."""
    following = start[1:].lstrip()[:1]
    return following in ('"', "}") if start[0] == "{" else following in ("{", "[")


def _looks_like_html(start: str) -> bool:
    head = start[:2000].lower()
    signs = ("<html", "<!doctype", "<head", "<body", "<script", "<div", "<article")
    return head.startswith("<") and any(sign in head for sign in signs)
