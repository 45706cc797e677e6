"""The forms a converted recipe is written in: a module here each, named as `--format` names it, that holds FORM.

A form is imported when it is asked for, so that a recipe pays for one form only.
"""

from __future__ import annotations

import importlib
from collections.abc import Callable
from dataclasses import dataclass
from typing import TYPE_CHECKING

from rules.modules import module_names

if TYPE_CHECKING:
    from rules.model import Units
    from rules.recipes.convert import Converted


@dataclass(frozen=True, slots=True, kw_only=True)
class Form:
    """One form.

    ending: what its files end with, with the dot
    write: the recipe in it, to the line break at its end; units: which system stands first
    show: prints it as wide as the screen, for a form that is for screens; what it writes is for files then
    """

    ending: str
    write: Callable[[Converted, Units], str]
    show: Callable[[Converted, Units], None] | None = None


def names() -> tuple[str, ...]:
    """The forms there are, by name."""
    return module_names(__name__)


def form(name: str) -> Form:
    """The form of a name, which is one of `names`."""
    found: Form = importlib.import_module(f"{__name__}.{name}").FORM
    return found
