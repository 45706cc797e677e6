"""The rows of data/lexicon/methods.toml, which are the only list of what is true of a method."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from functools import cache
from typing import Any, Literal, get_args

from rules.tables import read_toml

METHODS = "lexicon/methods.toml"
DISH = "*"

# the head of the file says what each means
Mark = Literal["leading", "hot", "untimed", "oven_or_hob"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Method:
    """A row; the head of the file says what each column holds. core_below_c: [degC], 0 where no rule asks."""

    id: str
    label: str
    gerund: str
    heard_as: tuple[str, ...]
    amount: str
    description: str
    usual_class: str | None = None
    temperature_of: str | None = None
    core_below_c: float = 0.0
    equipment: tuple[str, ...] = ()
    begun_by: tuple[str, ...] = ()
    marks: tuple[Mark, ...] = ()

    @property
    def around_dish(self) -> tuple[str, str]:
        """The words of the gerund before and after the dish."""
        before, _, after = self.gerund.partition(DISH)
        return before.strip(), after.strip()

    @property
    def doing(self) -> str:
        """The gerund where no dish is named."""
        return " ".join(word for word in self.around_dish if word)

    def doing_to(self, dish: str) -> str:
        """The gerund with a dish in its place."""
        before, after = self.around_dish
        return " ".join(word for word in (before, dish, after) if word)


@cache
def methods() -> Mapping[str, Method]:
    """Every method by its id, in the order of the file.

    raises: TypeError where a row has a column that no method has, or lacks one

    >>> methods()["sous_vide"].doing_to("steak"), methods()["sous_vide"].doing, methods()["boil"].doing_to("eggs")
    ('cooking steak sous vide', 'cooking sous vide', 'boiling eggs')
    """
    rows: Iterable[dict[str, Any]] = (
        {name: tuple(value) if isinstance(value, list) else value for name, value in row.items()}
        for row in read_toml(METHODS)["method"]
    )
    return {str(row["id"]): Method(**row) for row in rows}


def marked(mark: Mark) -> frozenset[str]:
    """The methods that have a mark.

    >>> "microwave" in marked("leading"), "boil" in marked("hot")
    (True, False)
    """
    return _by_mark()[mark]


@cache
def _by_mark() -> Mapping[Mark, frozenset[str]]:
    every = methods().values()
    return {mark: frozenset(method.id for method in every if mark in method.marks) for mark in get_args(Mark)}


def usual_class(method: str | None) -> str | None:
    """The class of dish that is meant where a method is named and no dish; None where a method is for many.

    >>> usual_class("braise"), usual_class("boil")
    ('collagen_cut', None)
    """
    row = methods().get(method or "")
    return row.usual_class if row else None
