"""The forms an order is written in: a module here each, named as `--format` names it, that holds FORM.

A form is imported when it is asked for, so that an order pays for one form only; XLSX loads openpyxl.
"""

from __future__ import annotations

import importlib
from collections.abc import Callable
from dataclasses import dataclass
from typing import TYPE_CHECKING

from rules.modules import module_names

if TYPE_CHECKING:
    from assistant.planning.order_sheet import Sheet
    from rules.model import Units

# what a spreadsheet takes for a formula, and would work out rather than show
WORKED_OUT = ("=", "+", "-", "@")


@dataclass(frozen=True, slots=True, kw_only=True)
class Form:
    """One form.

    ending: what its files end with, with the dot
    write: the order in it; units: which system it is in
    show: prints it as wide as the screen, for a form that is for screens
    """

    ending: str
    write: Callable[[Sheet, Units], bytes]
    show: Callable[[Sheet, Units], None] | None = None


def names() -> tuple[str, ...]:
    """The forms there are, by name."""
    return module_names(__name__)


def form(name: str) -> Form:
    """The form of a name, which is one of `names`."""
    found: Form = importlib.import_module(f"{__name__}.{name}").FORM
    return found


def cell(text: str) -> str:
    """The text on one line, with a quotation mark before it where a spreadsheet would work it out.

    >>> cell("=1+1"), cell("short\\nribs")
    ("'=1+1", 'short ribs')
    """
    shown = " ".join(text.split())
    return f"'{shown}" if shown.startswith(WORKED_OUT) else shown
