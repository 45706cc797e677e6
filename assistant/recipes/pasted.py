"""A recipe pasted into a question -> the question and the recipe, apart."""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import cache

from assistant.recipes.lines import any_of, read_line
from assistant.recipes.read import MOST_TEXT

FEWEST_INGREDIENTS = 2
_REQUEST = re.compile(
    r"\b(?:convert|adjust|adapt|translate|rework|rewrite|recalculate|change|take|bring|move)\w*\b"
    r"|\b(?:please|can you|could you|help|altitude|elevation|sea level)\b|\d\s*(?:k|ft|feet|m|metres|meters)\b",
    re.IGNORECASE,
)
_BULLETS = " \t-*•·–—▢☐"
# a comma between two digits belongs to a number
_LISTED = re.compile(r"\s*(?:,(?!(?<=\d,)\d)|[;\n])\s*")
# where a line ends in a recipe told in one: at a semicolon, before the next amount, after a sentence
_LINE_END = re.compile(
    r"""\s*;\s*
    |\s*,(?!(?<=\d,)\d)\s*(?=[\d½¼¾⅓⅔⅛]|(?:an?|one|two|three|half)\s)
    |(?:(?<=[a-z)\d])|(?<=\d\d[ ][FC])|(?<=\d[°\d][FC]))  # the end of a sentence, or 350 F
     (?<!\b[Tt]sp)(?<!\b[Tt]bsp)(?<!\blb)(?<!\boz)          # but no abbreviation
     \.\s+(?=[A-Z])""",
    re.VERBOSE,
)
_MACHINE_MADE = re.compile(r"[{\[]\s*[{\"]|<(?:!doctype|html|script)\b", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class Pasted:
    """question: what was said around the recipe, "" for nothing; recipe: the recipe as it came."""

    question: str
    recipe: str


def pasted(text: str) -> Pasted | None:
    """The recipe in a text, or None where it holds none.

    A recipe is JSON-LD or a page, several lines of which two at least are measured ingredients that are known, or
    such a list behind a colon.

    >>> pasted("Convert for 6,500 ft: 2 cups flour, 1 cup sugar, 2 eggs").recipe
    '2 cups flour\\n1 cup sugar\\n2 eggs'
    >>> pasted("how long to boil 2 lb potatoes and 1 lb carrots") is None
    True
    """
    if not 0 < len(text) <= MOST_TEXT:
        return None
    if (made := _MACHINE_MADE.search(text)) and "recipe" in text.lower():
        return Pasted(text[: made.start()].strip(), text[made.start() :].strip())
    lines = [line for line in text.splitlines() if line.strip()]
    return _several_lines(lines) if len(lines) > 1 else _behind_colon(text)


def _several_lines(lines: list[str]) -> Pasted | None:
    asked = [i for i in {0, len(lines) - 1} if _asks(lines[i])]
    recipe = [line for i, line in enumerate(lines) if i not in asked]
    head, colon, rest = lines[0].partition(":")
    if 0 in asked and colon and _ingredients(rest):
        recipe = [rest.strip(), *recipe]
        lines = [head, *lines[1:]]
    if sum(_ingredients(line) for line in recipe) < FEWEST_INGREDIENTS:
        return None
    return Pasted(" ".join(lines[i].strip(" :") for i in sorted(asked)), "\n".join(recipe))


def _asks(line: str) -> bool:
    """Whether a line speaks about the recipe rather than belonging to it."""
    return bool(_REQUEST.search(line)) and not _ingredients(line.partition(":")[0]) and not _step().match(line)


@cache
def _step() -> re.Pattern[str]:
    return re.compile(
        rf"^\W*(?:\d+[.)]\s*)?(?!(?:adjust|change|take|bring|move)\b){any_of('steps', 'verbs')}", re.IGNORECASE
    )


def _behind_colon(text: str) -> Pasted | None:
    question, _, told = text.partition(":")
    recipe = listed(told)
    return Pasted(question.strip(), recipe) if recipe else None


def listed(text: str) -> str:
    """A recipe told in one line, line by line; empty where fewer than two known ingredients are measured in it.

    >>> listed("2 cups flour, 1 cup sugar; 2 eggs")
    '2 cups flour\\n1 cup sugar\\n2 eggs'
    """
    if not 0 < len(text) <= MOST_TEXT or _ingredients(text) < FEWEST_INGREDIENTS:
        return ""
    return "\n".join(line for line in _LINE_END.split(text.strip()) if line)


def _ingredients(text: str) -> int:
    """How many measured ingredients that are known a text lists."""
    read = (read_line(part) for part in _LISTED.split(text.lstrip(_BULLETS))[:40])
    return sum(line is not None and line.known and line.amount is not None for line in read)
