"""A line that lists several ingredients -> a line for each: "1 cup flour, 2 eggs; a pinch of salt"."""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import lru_cache

from assistant.recipes.each import each_of
from assistant.recipes.lines import read_line
from assistant.recipes.pantry import find

FEWEST, FEWEST_WITH_SIGNS, LONGEST, LONGEST_PART = 3, 2, 20_000, 300
_FLAGS = re.IGNORECASE
# a comma inside a number parts nothing; "and", "plus" only before an amount
_AMOUNT = r"(?:[\d.]*\d|[½¼¾⅐-⅞]|(?:an?|one|two|three|four|five|six|half(?:\s+an?)?|pinch|dash)\b)"
_CUT = re.compile(
    rf"\s*(?:;|,(?!(?<=\d,)\d)|\s/(?=\s\d)|\n)\s*(?:(?:and|plus|also)\s+(?={_AMOUNT}))?"
    rf"|\s+(?:and|\+|&)\s+(?!\d+\s*[°º℉℃])(?=\d|(?:an?|half|one|two|three)\s+\w+\s+(?:of\s+)?\w)",
    _FLAGS,
)
_PART = re.compile(rf"^(?:and\s+)?for\s+(?:the\s+|my\s+)?(?P<part>[a-z][a-z -]{{1,30}}?)[:,]?\s+(?={_AMOUNT})", _FLAGS)
_HEAT = re.compile(
    r"\d+(?:\s*(?:-|–|to)\s*\d+)?\s*(?:[°º℉℃]|degrees\b|min(?:ute)?s?\b|h(?:ou)?rs?\b|secs?\b|seconds?\b|days?\b)",
    _FLAGS,
)
_TAIL = re.compile(r"(?<=[a-z)])[.!]+\s+(?=\S)", _FLAGS)


@lru_cache(maxsize=4096)
def items(text: str) -> tuple[str, ...]:
    """The ingredients that a text lists, a line each, headings of parts among them; none where it is no list.

    >>> items("2 cups flour, sifted, 2 eggs, salt; 1 cup milk, and for the icing 1 cup powdered sugar")
    ('2 cups flour, sifted', '2 eggs', 'salt', '1 cup milk', 'For the icing:', '1 cup powdered sugar')
    >>> items("Mix 2 cups flour and 1 egg"), items("3 eggs plus 2 egg yolks")
    ((), ())
    """
    if len(text) > LONGEST:
        return ()
    found: list[str] = []
    counted, semicolons, text, begun = 0, ";" in text, text.strip(), 0
    for start, end in _pieces(text):
        piece = text[start:end].strip()
        if part := _PART.match(piece):
            found.append(f"For the {part['part'].strip()}:")
            start, piece = start + part.end(), piece[part.end() :]
        if counted and _HEAT.match(piece):
            found.append(text[start:].strip(" ,;"))
            break
        if begins_measured(piece):
            counted, begun = counted + 1, start
            found.append(piece)
        elif found and not _is_item(piece):
            if len(found[-1]) + len(piece) > LONGEST_PART or found[-1].endswith(":"):
                return ()
            found[-1] = text[begun:end].strip()
        elif piece and (found or _is_item(piece)):
            begun = start
            found.append(piece)
        else:
            return ()
    several = counted >= FEWEST or (counted >= FEWEST_WITH_SIGNS and (semicolons or _differ(found)))
    if not several or any(_TAIL.search(line) for line in found[:-1]):
        return ()
    tail = _TAIL.split(found[-1], maxsplit=1)
    return tuple(line for piece in (*found[:-1], *tail) for line in each_of(piece))


def run_together(line: str) -> list[str]:
    """The ingredients of a line that lists several, each with its measure; the line itself where it does not."""
    return list(items(line)) or [line]


def _pieces(text: str) -> Iterator[tuple[int, int]]:
    """Where the pieces of a text stand, cut at commas, semicolons and "and", but not inside brackets."""
    depth, at, cuts = 0, 0, {m.start(): m.end() for m in _CUT.finditer(text)}
    for i, char in enumerate(text):
        depth = max(0, depth + (char in "([") - (char in ")]"))
        if depth == 0 and i in cuts and i >= at:
            yield at, i
            at = cuts[i]
    yield at, len(text)


def begins_measured(piece: str) -> bool:
    """Whether a text begins with an amount of something."""
    read = None if _HEAT.match(piece) else read_line(piece)
    return read is not None and read.amount is not None and bool(read.item) and not piece[: read.start].strip("~ .")


def _is_item(piece: str) -> bool:
    """Whether a piece without an amount is an ingredient by itself, rather than what is done to the one before it."""
    item = find(piece)
    return item is not None and bool(item.name) and len(piece.split()) <= FEWEST


def _differ(lines: list[str]) -> bool:
    """Whether the lines are of different ingredients, all known."""
    reads = [read_line(line) for line in lines]
    return all(read and read.known for read in reads) and len({read.item for read in reads if read}) == len(reads)
