"""What could not be done, for the table of errors."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal


@dataclass(frozen=True, slots=True, kw_only=True)
class Fault:
    """A kitchen, a recipe, or one recipe for one kitchen of which there is no conversion.

    line: of the table of kitchens; tries: how often it was tried; problem: what is wrong, and what to do about it
    """

    kind: Literal["kitchen", "recipe", "pair"]
    problem: str
    recipe: str = ""
    kitchen: str = ""
    line: int | None = None
    tries: int = 1

    def __str__(self) -> str:
        return self.problem
