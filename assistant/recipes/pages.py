"""A saved web page -> the Recipe in it, from its JSON-LD, else from its microdata."""

from __future__ import annotations

import json
import re
from collections.abc import Iterable
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from assistant.recipes import lenient_json, microdata
from assistant.recipes.errors import NoRecipe, RecipeError
from assistant.recipes.html_tree import tree
from assistant.recipes.jsonld import at, fullest
from assistant.recipes.lenient_json import MOST_MENDED
from assistant.recipes.schema_org import fullness, read_node
from rules.recipe import Recipe

if TYPE_CHECKING:
    from selectolax.lexbor import LexborHTMLParser

# a Recipe that has both ingredients and a method
WHOLE = 2
HEAD = 2_000
_BLOCKS = 'script[type*="ld+json" i]'
_BEFORE = re.compile(r"(?:[\s\ufeff\"'“”‘’`>]|<!--(?:(?!-->).)*-->|<\?xml[^>]*>)*", re.DOTALL)
_PAGE = re.compile(r"<!doctype\s+html|<html[\s>]", re.IGNORECASE)
_PART = re.compile(
    r"<(?:head|body|main|script|div|article|section|header|meta|title|[a-z][a-z0-9-]*\s[^<>]*itemscope)\b",
    re.IGNORECASE,
)


@dataclass(frozen=True, slots=True)
class _Found:
    """A Recipe of a page: its node, empty for none, and the document that it stands in."""

    node: dict[str, Any]
    text: str


def looks_like_page(text: str) -> bool:
    """Whether a text is a page or a part of one, whatever stands before it: a comment, a quote mark.

    >>> looks_like_page("'<!-- saved --><html>"), looks_like_page("<b>Rolls</b>, 500 g flour")
    (True, False)
    """
    before = _BEFORE.match(text)
    start = text[before.end() if before else 0 :][:HEAD]
    return bool(_PAGE.search(start)) or (start.startswith("<") and bool(_PART.search(start)))


def read_page(page: str, *, name: str = "") -> Recipe:
    """Read the Recipe out of a saved HTML page.

    Of several the one is read that has most of a recipe; a block of JSON-LD that is broken does not hide the next.

    raises: NoRecipe where it holds none, RecipeError where the only one is broken

    >>> read_page('<script type="application/ld+json">{"@type": "Recipe", "name": "Rolls"}</script>').title
    'Rolls'
    """
    seen = tree(page)
    found, fault = _in_scripts(seen, name)
    if fullness(found.node)[0] < WHOLE and "itemscope" in page.lower():
        marked = _best(_Found(node, json.dumps(node, ensure_ascii=False)) for node in microdata.recipes(seen, name))
        found = marked if fullness(marked.node)[0] > fullness(found.node)[0] else found
    if found.node:
        return read_node(found.node, found.text, name)
    raise fault or NoRecipe(
        name,
        "this page carries no recipe data: neither a script of it (JSON-LD) nor marks on the text (microdata) hold one",
        "Copy the recipe's text from the page and give me that",
    )


def _in_scripts(page: LexborHTMLParser, name: str) -> tuple[_Found, RecipeError | None]:
    """The fullest Recipe of the JSON-LD blocks, and the first fault of a block that speaks of one."""
    found: list[_Found] = []
    faults: list[RecipeError] = []
    to_mend = MOST_MENDED
    for text in (lenient_json.unwrapped(block.text()) for block in page.css(_BLOCKS)):
        try:
            document, fault = lenient_json.read(text, name, mend=len(text) <= to_mend)
        except RecipeError as unreadable:
            document, fault = None, unreadable
        to_mend -= len(text) if fault else 0
        path = fullest(document)
        if path is not None and not (fault and fullness(at(document, path))[0] == 0):
            found.append(_Found(at(document, path), text))
        elif fault and "Recipe" in text:
            faults.append(fault)
    return _best(found), next(iter(faults), None)


def _best(found: Iterable[_Found]) -> _Found:
    return max(found, key=lambda one: fullness(one.node), default=_Found({}, ""))
