"""The forms a lesson is written in: a module here each, named as the ending of its files, that holds FORM.

A form is imported when it is asked for, and what it needs when it writes.
"""

from __future__ import annotations

import importlib
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from assistant.errors import AssistantError
from rules.modules import module_names

if TYPE_CHECKING:
    from assistant.printing.lesson.blocks import Sheet

PAPERS_MM = {"letter": (215.9, 279.4), "a4": (210.0, 297.0)}


@dataclass(frozen=True, slots=True)
class Form:
    """One form. write: the files of a sheet, by their paths; paper: one of PAPERS_MM"""

    write: Callable[[Sheet, Path, str], dict[Path, bytes]]


class BadForm(AssistantError, ValueError):
    """A file name whose ending is no form. path: the name"""

    def __init__(self, path: Path) -> None:
        super().__init__(path)
        self.path = path

    def __str__(self) -> str:
        return f"{self.path} has no ending a lesson is written in; name it .pdf, .html or .md"


def endings() -> tuple[str, ...]:
    """The endings of files that there are forms for, without their dots."""
    return module_names(__name__)


def form_of(path: Path) -> Form:
    """The form of a file by its ending.

    raises: BadForm for any other ending
    """
    ending = path.suffix.lower().lstrip(".")
    if ending not in endings():
        raise BadForm(path)
    found: Form = importlib.import_module(f"{__name__}.{ending}").FORM
    return found
