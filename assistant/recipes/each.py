"""One amount of each of several ingredients, in one line -> a line for each of them."""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import groupby

from assistant.recipes.lines import measure_at, read_line
from assistant.recipes.pantry import find
from rules.recipe import IngredientLine

LONGEST, MOST_NAMES = 300, 8
_EACH = re.compile(
    r"^(?:(?P<before>.{1,40}?)[ ,]+each(?:[ ,:]+of)?|each(?:[ ,:]+of)?)(?:\s+the\s+following)?\s*:?\s+(?P<names>.+)$"
    r"|^(?P<names_before>.+?)(?:,|\s[-–—]|:)?\s+(?P<behind>.{1,40}?)\s+each\.?$",
    re.IGNORECASE,
)
_AND = re.compile(r"\s*(?:,\s*(?:and|&|\+)?|\band\b|&|\+)\s*", re.IGNORECASE)
_WHOLE = re.compile(r"\s*\.?\s*")


def each_of(line: str) -> tuple[str, ...]:
    """The ingredients of which a line takes the same amount each, a line for each; the line itself where it does not.

    "Salt and pepper" without "each" is one line, and so is what weighs so much each: "2 cans, 400 g each".

    >>> each_of("1/2 tsp each: ground cumin and salt"), each_of("2 chicken breasts (200 g each)")
    (('1/2 tsp ground cumin', '1/2 tsp salt'), ('2 chicken breasts (200 g each)',))
    """
    found = _EACH.match(line.strip()) if len(line) <= LONGEST else None
    if not found:
        return (line,)
    amount = (found["before"] or found["behind"] or "").strip(" ,:")
    told = (found["names"] or found["names_before"] or "").strip(" .")
    head, _, tail = told.partition(" (") if told.endswith(")") else (told, "", "")
    names = [name for name in _AND.split(head) if name]
    if not 1 < len(names) <= MOST_NAMES or not _is_whole(amount) or not all(map(_is_named, names)):
        return (line,)
    # where the amount goes without saying, it is of each alike: EACH garlic powder AND paprika
    lines = tuple(" ".join(filter(None, (amount, name))) for name in names)
    return (*lines[:-1], f"{lines[-1]} ({tail}") if tail else lines


def as_written(before: Sequence[IngredientLine], after: Sequence[IngredientLine]) -> list[tuple[str, str]]:
    """Every line as the recipe has it, and what it becomes; one that told of several is one again."""
    found: list[tuple[str, str]] = []
    told = groupby(zip(before, after, strict=False), key=lambda pair: pair[0].written or id(pair[0]))
    for pairs in (list(group) for _, group in told):
        was, becomes = [one.line for one, _ in pairs], [one.line for _, one in pairs]
        written = pairs[0][0].written
        found.append((written, written if was == becomes else ", ".join(becomes)) if written else (was[0], becomes[0]))
    return found


def _is_whole(amount: str) -> bool:
    """Whether a text is an amount and nothing else; no text at all is one as well."""
    measure = measure_at(amount, 0, spelled=True) if amount else None
    return not amount or (measure is not None and bool(_WHOLE.fullmatch(amount, measure.end)))


def _is_named(name: str) -> bool:
    """Whether a name is an ingredient without an amount of its own."""
    read = read_line(name)
    return read is not None and read.amount is None and (find(name) is not None or len(name.split()) <= 3)
