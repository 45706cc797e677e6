"""What somebody typed, made safe to show: on one line, for a screen, a page or a cell of a spreadsheet."""

from __future__ import annotations

import re

_UNPRINTABLE = re.compile(r"[\x00-\x08\x0b-\x1f\x7f-\x9f\u200e\u200f\u202a-\u202e\u2066-\u2069]")
# what a spreadsheet takes for a formula, and would work out rather than show
_WORKED_OUT = ("=", "+", "-", "@")


def clean(text: str) -> str:
    """The text without control characters, on one line.

    >>> clean("2 eggs\\x1b[31m,\\nbeaten")
    '2 eggs[31m, beaten'
    """
    return " ".join(_UNPRINTABLE.sub("", text).split())


def cell(text: str) -> str:
    """The same, with a quotation mark before it where a spreadsheet would work it out.

    >>> cell("=1+1"), cell("2 cups\\nflour")
    ("'=1+1", '2 cups flour')
    """
    shown = clean(text)
    return f"'{shown}" if shown.startswith(_WORKED_OUT) else shown
