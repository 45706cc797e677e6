"""HTML -> its tree, by lexbor, in time that grows with the text alone."""

from __future__ import annotations

import html
import operator
import re
from collections.abc import Iterator
from itertools import accumulate
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from selectolax.lexbor import LexborHTMLParser

# Nested deeper than any page that a browser shows: for each tag the parser looks through all those it stands in.
MOST_NESTED = 1_000
_TAG = re.compile(r"</?[a-z][^\s/>]*", re.IGNORECASE)
_ANY_TAG = re.compile(r"<[^<>]*>")
_SCRIPT, _SCRIPT_END = re.compile(r"<script\b", re.IGNORECASE), re.compile(r"</script\s*>", re.IGNORECASE)
_EMPTY = ("area", "base", "br", "col", "embed", "hr", "img", "input", "link", "meta", "source", "track", "wbr")
_CLOSED_BY_THE_NEXT = ("p", "li", "dt", "dd", "td", "th", "tr", "option")
_NOT_NESTING = frozenset((*_EMPTY, *_CLOSED_BY_THE_NEXT, "script", "style"))


def nesting(text: str) -> int:
    """How deep the tags of a text stand in each other, counted from the shallowest place before.

    >>> nesting("<div><p>x<p>y<br></div><ul><li><ul>"), nesting("</b></b><b>")
    (2, 1)
    """
    tags = _TAG.findall(text)
    steps = {tag: _step(tag) for tag in set(tags)}
    depths = list(accumulate(map(steps.__getitem__, tags), initial=0))
    return max(map(operator.sub, depths, accumulate(depths, min)))


def _step(tag: str) -> int:
    name = tag.strip("</").lower()
    return 0 if name in _NOT_NESTING else -1 if tag.startswith("</") else 1


def tree(page: str) -> LexborHTMLParser:
    """The tree of a page; of one that is nested deeper than any browser shows, its scripts alone."""
    from selectolax.lexbor import LexborHTMLParser

    return LexborHTMLParser(page if nesting(page) <= MOST_NESTED else "".join(_scripts(page)))


def _scripts(page: str) -> Iterator[str]:
    end = 0
    while (start := _SCRIPT.search(page, end)) and (closing := _SCRIPT_END.search(page, start.end())):
        end = closing.end()
        yield page[start.start() : end]


def plain(text: str) -> str:
    """Text without HTML tags and entities, its line breaks kept.

    >>> plain("Bake at 350&deg;F, <b>covered</b>")
    'Bake at 350°F, covered'
    """
    if "<" in text:
        from selectolax.lexbor import LexborHTMLParser

        bare = nesting(text) > MOST_NESTED
        text = _ANY_TAG.sub("", text) if bare else LexborHTMLParser(text).text()
    return html.unescape(text).replace("\u00a0", " ")
