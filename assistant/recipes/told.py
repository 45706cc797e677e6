"""A formula told within a sentence, its amounts among other words -> the question and the formula, apart."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import cache
from itertools import groupby
from typing import TYPE_CHECKING

from assistant.reading.text import fold
from assistant.recipes.lines import any_of, read_line
from assistant.recipes.shorthand import spelled_out
from rules import tables

if TYPE_CHECKING:
    from assistant.recipes.pasted import Pasted

FEWEST_LINES, FEWEST_BARE, LONGEST_TEXT = 2, 3, 1_000
# amounts without a unit are grams from here on: two hundred and fifty of flour, but three eggs
SMALLEST_G = 20.0
WEIGHED = ("fat", "flour", "sugar", "yeast", "leavening", "salt", "starch")
# a piece of a sentence ends at a sign or at "and"; amounts without a sign between them, before the next figure
_CUT = re.compile(r"\s*(?:,(?!(?<=\d,)\d)|[;:\n+&]|/(?!\d)|\.(?=\s|$)|\band\b|\bplus\b)\s*", re.IGNORECASE)
_NEXT_FIGURE = re.compile(r"(?<=[a-z])\s+(?=\d)", re.IGNORECASE)
_BARE = re.compile(r"(?P<figure>\d+(?:\.\d+)?)\s+(?P<name>[a-z][a-z ]*)", re.IGNORECASE)
_UNKNOWN = re.compile(
    r"\d+(?:[./]\d+)?\s*(?:g|kg|ml|l|oz|cups?|tsp|tbsp|teaspoons?|tablespoons?|sticks?)\s+(?:of\s+)?"
    r"(?P<name>[a-z][a-z' -]{1,30})",
    re.IGNORECASE,
)
TALK, LONGEST_NAME, LONGEST_COUNTED = "lexicon/recipe_talk.toml", 3, 4
_COUNT = re.compile(r"\d{1,2}(?:[./]\d)?\s+(?=[a-z])")
_TURNED = re.compile(r"(?P<name>[a-z][a-z ]*?)\s+(?P<figure>\d+(?:\.\d+)?)\s*(?P<unit>kg|g|ml|l|oz)?", re.IGNORECASE)
# what belongs to the recipe besides: a step with a figure, and how much it makes; "scale it for 7,000 ft" does not
_FOR_A_HEIGHT = r"(?!.*\bfor\s+\d[\d,]{2,}\s*(?:ft|feet|foot|m|metres|meters)\b)"
_BESIDES = re.compile(
    rf"(?!(?:for|they|it|these|mine)\b){_FOR_A_HEIGHT}(?:{any_of('steps', 'verbs')}|makes|serves|yields?).*\d",
    re.IGNORECASE,
)


@dataclass(frozen=True, slots=True)
class Piece:
    """A piece of a sentence. line: as an ingredient line, where it is one; grams: whether its unit was left out

    small: what it is in grams where it is so little that it is grams only among others: 250 butter, 10 yeast
    """

    text: str
    line: str = ""
    grams: bool = False
    small: str = ""


def told(text: str) -> Pasted | None:
    """The formula in a sentence; None where it tells fewer than two amounts of known ingredients.

    >>> told("brownies at 8,000 ft, 1 cup sugar, 1/2 cup butter, 2 eggs")
    Pasted(question='brownies at 8,000 ft', recipe='1 cup sugar\\n1/2 cup butter\\n2 eggs')
    >>> told("how long for 2 kg of lamb") is None
    True
    """
    if len(text) > LONGEST_TEXT:
        return None
    pieces = [piece for part in _CUT.split(spelled_out(text)) if part for piece in _pieces(part)]
    if sum(piece.grams for piece in pieces) > 1:
        pieces = [Piece(piece.text, piece.small, grams=True) if piece.small else piece for piece in pieces]
    lines = [piece for piece in pieces if piece.line]
    if len(lines) < FEWEST_BARE:
        pieces = [Piece(piece.text) if piece.grams else piece for piece in pieces]
        lines = [piece for piece in pieces if piece.line]
    if len(lines) < FEWEST_LINES:
        return None
    if len(lines) >= FEWEST_BARE:
        pieces = _with_unknown(pieces)
        lines = [piece for piece in pieces if piece.line]
    besides = [piece.text for piece in pieces if not piece.line and _BESIDES.match(piece.text)]
    rest = [piece.text for piece in pieces if not piece.line and piece.text not in besides]
    from assistant.recipes.pasted import Pasted

    return Pasted(_joined(rest), "\n".join([*(piece.line for piece in lines), *besides]))


def _with_unknown(pieces: list[Piece]) -> list[Piece]:
    """The pieces with what nobody has heard of as lines: by weight anywhere, by count among the others."""
    at = [i for i, piece in enumerate(pieces) if piece.line]
    return [
        piece
        if piece.line
        else replace(piece, line=unknown(piece.text) or (piece.text if i > at[0] and as_written(piece.text) else ""))
        for i, piece in enumerate(pieces)
    ]


def _pieces(text: str) -> list[Piece]:
    """A part of a sentence as one piece, or as several amounts in a row."""
    whole = _piece(text)
    apart = [_piece(piece) for piece in _NEXT_FIGURE.split(text)]
    return apart if not whole.line and any(piece.line for piece in apart) else [whole]


def _piece(text: str) -> Piece:
    known, bare = _known(text), _BARE.fullmatch(text)
    weighed = _in_grams(bare.groupdict(), 0.0) if bare and is_weighed(text) else ""
    if known and not (bare and weighed and float(bare["figure"]) >= SMALLEST_G):
        return Piece(text, known, small=weighed)
    if weighed and bare and float(bare["figure"]) < SMALLEST_G:
        return Piece(text, small=weighed)
    for pattern in (_BARE, _TURNED):
        found = pattern.fullmatch(text)
        if found and (line := _in_grams(found.groupdict())):
            return Piece(text, line, grams=not found.groupdict().get("unit"))
    return Piece(text)


def unknown(text: str) -> str:
    """An amount of what nobody has heard of, a brand or a local name, as it is written; "" for any other piece.

    >>> unknown("180 g Nordmark"), unknown("900 g loaf tin"), unknown("sank 20 g deep")
    ('180 g Nordmark', '', '')
    """
    found = _UNKNOWN.fullmatch(text)
    words = found["name"].lower().split() if found else ["of"]
    other = not set(words).isdisjoint(tables.read_toml(TALK)["no_ingredient"])
    return "" if other or len(words) > LONGEST_NAME else text


def as_written(text: str) -> bool:
    """Whether a piece counts out something that nobody has heard of, and so is a line that is left as it is written.

    >>> as_written("2 ripe mangoes"), as_written("a handful of walnuts"), as_written("8 people"), as_written("45 min")
    (True, True, False, False)
    """
    talk, low = tables.read_toml(TALK), fold(text).strip(" .")
    led = next((phrase for phrase in sorted(talk["counts"], key=len, reverse=True) if low.startswith(f"{phrase} ")), "")
    figure = _COUNT.match(low)
    words = low[figure.end() if figure else len(led) :].split()
    other = {*talk["not_counted"], *(word for word in talk["no_ingredient"] if word not in ("of", "and"))}
    named = all(word.replace("-", "").isalpha() for word in words) and 0 < len(words) <= LONGEST_COUNTED
    return bool(figure or led) and named and other.isdisjoint(words)


def _known(text: str) -> str:
    """A piece that is an ingredient line as it stands: an amount with its unit, or a count of what is counted."""
    line = read_line(text) if text[0].isdigit() else None
    if line is None or not line.known or line.amount is None:
        return ""
    return text if line.unit or line.mass_from == "each" else ""


def is_weighed(text: str) -> bool:
    """Whether bakers weigh it, so that a number of it without a unit is grams: butter and yeast, no eggs or bananas."""
    line = read_line(text)
    return line is not None and bool(line.known) and what_role(line.item) in WEIGHED


def what_role(item: str) -> str | None:
    """The role of an ingredient by its name; None for one that is not known."""
    return roles().get(item)


@cache
def roles() -> dict[str, str]:
    """The role of every ingredient, by all its names."""
    rows = tables.read_toml("lexicon/ingredients.toml")["ingredient"]
    return {name: row["role"] for row in rows for name in (row["name"], *row["heard_as"])}


def _in_grams(found: dict[str, str | None], least_g: float = SMALLEST_G) -> str:
    figure, unit = found["figure"] or "0", found.get("unit")
    if not unit and float(figure) < least_g:
        return ""
    return _known(f"{figure} {unit or 'g'} {found['name']}")


def _joined(pieces: Sequence[str]) -> str:
    return ", ".join(text for text, _ in groupby(pieces))
