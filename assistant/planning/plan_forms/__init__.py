"""The forms a plan is written in: a module here each, named as `--format` names it, that holds FORM.

A form is imported when it is asked for: the calendar loads icalendar, the pictures matplotlib.
"""

from __future__ import annotations

import importlib
from collections.abc import Callable
from dataclasses import dataclass
from typing import TYPE_CHECKING

from rules.modules import module_names

if TYPE_CHECKING:
    from assistant.planning.plan import Plan
    from rules.model import Units


@dataclass(frozen=True, slots=True, kw_only=True)
class Form:
    """One form.

    ending: what its files end with, with the dot; binary: whether it is for a file only
    write: the plan in it; units: which system it is in
    show: prints it as wide as the screen, for a form that is for screens
    """

    ending: str
    write: Callable[[Plan, Units], bytes]
    binary: bool = False
    show: Callable[[Plan, Units], None] | None = None


def names() -> tuple[str, ...]:
    """The forms there are, by name."""
    return module_names(__name__)


def form(name: str) -> Form:
    """The form of a name, which is one of `names`."""
    found: Form = importlib.import_module(f"{__name__}.{name}").FORM
    return found
