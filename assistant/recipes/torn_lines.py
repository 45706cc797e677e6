"""Lines that a page or a mail has torn in the middle of a sentence -> the lines that were meant."""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import pairwise

# a text that was wrapped at a width has lines of nearly that many characters; shorter lines were written as such
SHORTEST_TORN, NARROWEST, WIDEST = 25, 40, 120
FEWEST_TORN = 2
# how many of the breaks inside sentences stand where the next word had no room, in a text that was wrapped
MOSTLY = 0.75
_SENTENCE_END = re.compile(r"[.!?:;…][\"'”’)\]]*$")
_LISTED = re.compile(r"(?:[-*•·▪–—]\s|\(?\d{1,3}[.):](?!\d)|step\s+\d)", re.IGNORECASE)


def rejoined(text: str) -> list[str]:
    """The lines of a method, where a line that goes on with the sentence before it is joined to it.

    An empty line always parts. A break is inside a sentence where the line before it ends none and the next begins
    with a small letter; in a text that was wrapped also where the next word had no room on the line.

    >>> rejoined("Heat the oven and line the tins with\\npaper.\\nWhisk the eggs.")
    ['Heat the oven and line the tins with paper.', 'Whisk the eggs.']
    """
    lines = [line.strip() for line in text.splitlines()]
    capitals = next((sign for sign in text if sign.isalpha()), "A").isupper()
    width = _wrapped_at(lines) if capitals else 0
    joined: list[str] = []
    before = ""
    for line in lines:
        if before and line and _goes_on(before, line, capitals, width):
            joined[-1] += f" {line}"
        elif line:
            joined.append(line)
        before = line
    return joined


def _goes_on(before: str, line: str, capitals: bool, width: int) -> bool:
    if _LISTED.match(line):
        return False
    return before.endswith(",") or (capitals and _torn(before, line)) or bool(width and _no_room(before, line, width))


def _torn(before: str, line: str) -> bool:
    """Whether a break stands inside a sentence, by the signs beside it alone."""
    return len(before) >= SHORTEST_TORN and line[0].islower() and not _SENTENCE_END.search(before)


def _no_room(before: str, line: str, width: int) -> bool:
    return len(before) + 1 + len(line.split(maxsplit=1)[0]) > width


def _wrapped_at(lines: Sequence[str]) -> int:
    """The width [characters] at which a text was wrapped; 0 where it was not."""
    width = max(map(len, lines), default=0)
    torn = [(a, b) for a, b in pairwise(lines) if a and b and _torn(a, b)]
    forced = sum(_no_room(a, b, width) for a, b in torn)
    fits = NARROWEST <= width <= WIDEST and len(torn) >= FEWEST_TORN and forced >= MOSTLY * len(torn)
    return width if fits else 0
