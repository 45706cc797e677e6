"""schema.org/Recipe as microdata of a page (itemscope, itemtype, itemprop) -> nodes as JSON-LD has them.

Every property of a Recipe is kept, also those that mean nothing to us. A tree is walked once, without recursion.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field
from typing import TYPE_CHECKING, Any

from assistant.recipes.errors import RecipeError
from assistant.recipes.schema_org import MOST_DEEP, types

if TYPE_CHECKING:
    from selectolax.lexbor import LexborHTMLParser, LexborNode

Node = dict[str, Any]
MOST_NODES = 100_000
CONTEXT = "https://schema.org"
_SCOPES = '[itemscope][itemtype*="recipe" i]'
# the attribute in which an element says what it means
_VALUES = {"img": "src", "a": "href", "link": "href", "area": "href", "data": "value", "meter": "value"}
# properties that are what is read on the page, and those of them that are lists of lines where their element is a block
_SHOWN = frozenset(
    ("name", "text", "description", "recipeYield", "yield", "recipeIngredient", "ingredients", "recipeInstructions")
)
_LINES = frozenset(("text", "description", "recipeIngredient", "ingredients", "recipeInstructions"))
_ONE_LINE = frozenset(("recipeIngredient", "ingredients"))
_BLOCKS = frozenset(["ul", "ol", "table", "tbody", "div", "section", "dl", "article"])
# in these, with no other tag inside, the lines of a method are told by nothing but the ends of lines in the source
_HOLDS_LINES = _BLOCKS | frozenset(("span", "pre", "td"))
_BREAKS = _BLOCKS | frozenset(["li", "p", "br", "tr", "dt", "dd", "h1", "h2", "h3", "h4", "h5", "h6"])
_NOT_SHOWN = frozenset(("script", "style", "template"))
_BREAK = object()


@dataclass(slots=True)
class _Open:
    """An element that is being read: the properties it gives to an item, the item it is itself, its text so far."""

    element: LexborNode
    owner: Node | None
    names: tuple[str, ...]
    item: Node | None
    parts: list[str | object] = field(default_factory=list)


def recipes(page: LexborHTMLParser, name: str = "") -> list[Node]:
    """The Recipes of a page in order, as nodes of JSON-LD.

    name: what to call the page in an error
    raises: RecipeError for one that is larger than any recipe is

    >>> from assistant.recipes.html_tree import tree
    >>> recipes(tree('<p itemscope itemtype="https://schema.org/Recipe"><b itemprop="name">Rolls</b></p>'))
    [{'@context': 'https://schema.org', '@type': 'Recipe', 'name': 'Rolls'}]
    """
    found: list[Node] = []
    seen: set[int] = set()
    moments = iter(range(2 * MOST_NODES))  # each node begins and ends
    for scope in page.css(_SCOPES):
        if scope.mem_id not in seen:
            found += _read(scope, seen, moments)
        if next(moments, None) is None:
            raise RecipeError(
                name, "its recipes are longer than any page of a book", "Copy the text of the recipe and give me that"
            )
    return found


def _read(scope: LexborNode, seen: set[int], moments: Iterator[int]) -> Iterator[Node]:
    """The Recipes from a scope on: its own, and those inside it."""
    opened: list[_Open] = []
    for element, closing in _walked(scope, moments):
        if closing:
            if opened and opened[-1].element is element:
                _close(opened.pop())
        elif element.is_text_node:
            _tell(opened, element.text_content or "")
        else:
            if (tag := element.tag) in _BREAKS:
                _tell(opened, _BREAK)
            attributes = element.attributes
            if "itemscope" not in attributes and not attributes.get("itemprop"):
                continue
            owner = next((one.item for one in reversed(opened) if one.item is not None), None)
            names = tuple((attributes.get("itemprop") or "").split()) if owner is not None else ()
            item = _item(attributes) if "itemscope" in attributes and len(opened) < MOST_DEEP else None
            if "itemscope" in attributes:
                seen.add(element.mem_id)
            if item is not None and "Recipe" in types(item):
                yield item
            if owner is not None and names and item is None and (said := _said(tag or "", attributes, names)):
                _give(owner, names, said)
            elif len(opened) < MOST_DEEP and (names or item is not None):
                opened.append(_Open(element, owner, names, item))


def _walked(scope: LexborNode, moments: Iterator[int]) -> Iterator[tuple[LexborNode, bool]]:
    """Every node from a scope on, in order; elements again, with True, where they end."""
    waiting = [(scope, False)]
    for _ in moments:
        if not waiting:
            return
        node, closing = waiting.pop()
        yield node, closing
        if closing or not node.is_element_node:
            continue
        waiting.append((node, True))
        if node.tag not in _NOT_SHOWN:
            waiting += [(child, False) for child in node.iter(include_text=True)][::-1]


def _tell(opened: list[_Open], part: str | object) -> None:
    for one in opened:
        if one.owner is not None:
            one.parts.append(part)


def _item(attributes: dict[str, str | None]) -> Node:
    """A new item of the types that its element says it is of."""
    kinds = [types({"@type": kind})[0] for kind in (attributes.get("itemtype") or "").split()]
    context = {"@context": CONTEXT} if "Recipe" in kinds else {}
    return {**context, "@type": kinds[0] if len(kinds) == 1 else kinds} if kinds else {}


def _said(tag: str, attributes: dict[str, str | None], names: tuple[str, ...]) -> str | None:
    """What an element says in its attributes rather than in its text; None where its text counts."""
    if tag != "meta" and any(name in _SHOWN for name in names):
        return None
    keys = ("content", "datetime", _VALUES.get(tag, "content"))
    return next((said.strip() for key in keys if (said := attributes.get(key))), None)


def _give(owner: Node, names: tuple[str, ...], value: Any) -> None:
    for name in names:
        if name not in owner:
            owner[name] = value
        elif isinstance(owner[name], list):
            owner[name].append(value)
        else:
            owner[name] = [owner[name], value]


def _close(one: _Open) -> None:
    """Give what an element says to the item whose property it is."""
    if one.owner is None:
        return
    text = _text(one)
    if one.item is None:
        attributes = one.element.attributes
        _give(one.owner, one.names, text or attributes.get("content") or "")
    else:
        if text and not any(key[0] != "@" for key in one.item):
            one.item["text"] = text
        _give(one.owner, one.names, one.item)


def _text(one: _Open) -> str:
    """The text of an element: in lines where it is a block of lines, else in one."""
    in_lines = any(name in _LINES for name in one.names) or one.item is not None
    if any(name in _ONE_LINE for name in one.names) and one.element.tag not in _BLOCKS:
        in_lines = False
    if in_lines and not any(part is _BREAK for part in one.parts):
        text = "".join(str(part) for part in one.parts)
        written_in_lines = "recipeInstructions" in one.names and one.element.tag in _HOLDS_LINES
        lines = text.strip().splitlines() if written_in_lines else [text]
        return "\n".join(" ".join(line.split()) for line in lines)
    text = "".join("\0" if part is _BREAK else str(part).replace("\0", " ") for part in one.parts)
    said = (" ".join(line.split()) for line in text.split("\0"))
    return ("\n\n" if in_lines else " ").join(filter(None, said))
