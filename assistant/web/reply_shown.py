"""A reply as a page shows it: its first line large, then its lists and paragraphs.

Read from the text, which is what every front end shows: so a page leaves nothing out, and adds nothing.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from typing import Literal

from assistant.replies.shown import first_sentence

Kind = Literal["text", "list", "steps"]
_ITEM = re.compile(r"(?:[-*]|(\d+)\.)\s+(.*)")
# the space between a figure and a unit, and within a length of time
_UNIT = re.compile(r"(?<=\d h) (?=\d)|(?<=\d) (?=(?:ft|m|h|min|s|lb|oz|kg|g|ml|l|psi|kPa|hPa|inHg|°[FC]|%)(?:\b|$|\W))")
# one word or two before a colon
_LABEL = re.compile(r"([A-Z][a-z]+(?: [a-z]+)?:) ")
STOP = "Stop: "
# a first sentence shorter than this says too little by itself [letters]
SHORTEST = 24


@dataclass(frozen=True, slots=True)
class Block:
    """A part of a reply. head: what stands over it, or ""; lines: of its text, or its items"""

    kind: Kind
    head: str
    lines: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Shown:
    """A reply. first: its first line, cut into what is shown large and the rest of it"""

    first: str
    rest: str
    blocks: tuple[Block, ...]


def shown(text: str) -> Shown:
    """A reply in its parts.

    >>> reply = shown("About 4 h.\\n\\nWhat to do\\n1. Start early.\\n2. Stir.")
    >>> reply.first, reply.blocks
    ('About 4 h.', (Block(kind='steps', head='What to do', lines=('Start early.', 'Stir.')),))
    """
    line, _, behind = text.strip().partition("\n")
    first = _first_of(line)
    blocks = (block for part in behind.split("\n\n") for block in _blocks(part.strip("\n")))
    return Shown(first, line[len(first) :].strip(), tuple(blocks))


def _first_of(line: str) -> str:
    """The first sentence of a line, and those that follow as long as they are no more than a word: No. Discard them."""
    first = first_sentence(line)
    while len(first) < SHORTEST and len(first) < len(line):
        first = f"{first} {first_sentence(line[len(first) :].strip())}"
    return first


def labelled(line: str) -> tuple[str, str]:
    """What a line opens with to say what it is, and the rest of it.

    >>> labelled("Take care: keep the lid on."), labelled("Rice: 20 min, then a rest of 10.")[0], labelled("Stir.")[0]
    (('Take care:', 'keep the lid on.'), 'Rice:', '')
    """
    found = _LABEL.match(line)
    return (found[1], line[found.end() :]) if found else ("", line)


def tied(text: str) -> str:
    """A text in which no line ends between a figure and its unit.

    >>> tied("7,000 ft, 199 °F").split(" ")
    ['7,000\\xa0ft,', '199\\xa0°F']
    """
    return _UNIT.sub("\N{NO-BREAK SPACE}", text)


def _blocks(part: str) -> Iterator[Block]:
    """The blocks of what stands between two empty lines."""
    loose: list[str] = []
    items: list[str] = []
    kind: Kind = "list"
    for line in part.splitlines():
        found = _ITEM.fullmatch(line)
        if found:
            kind = "steps" if found[1] else "list"
            items.append(found[2])
        elif items and line.startswith("  "):
            items[-1] = f"{items[-1]} {line.strip()}"
        elif items:
            yield Block(kind, _head(loose), tuple(items))
            loose, items = [line], []
        else:
            loose.append(line)
    if items:
        if len(loose) > 1:
            yield Block("text", "", tuple(loose[:-1]))
        yield Block(kind, _head(loose), tuple(items))
    elif any(loose):
        yield Block("text", "", tuple(loose))


def _head(loose: list[str]) -> str:
    return loose[-1] if loose else ""
