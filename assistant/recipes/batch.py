"""One batch of a recipe, as the log keeps it."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from typing import Any, Literal, Protocol

from rules.errors import within

Compared = Literal["", "better", "worse", "same"]


class Logged(Protocol):
    """What of a batch tells the next change."""

    @property
    def style(self) -> str: ...
    @property
    def elevation_m(self) -> float | None: ...
    @property
    def from_elevation_m(self) -> float | None: ...
    @property
    def symptoms(self) -> tuple[str, ...]: ...
    @property
    def changes(self) -> tuple[dict[str, Any], ...]: ...
    @property
    def rating(self) -> int | None: ...
    @property
    def compared(self) -> str: ...
    @property
    def formula(self) -> str: ...


@dataclass(frozen=True, slots=True, kw_only=True)
class Batch:
    """One batch of a recipe.

    kitchen: its name as it was then; elevation_m: where it was made, from_elevation_m: where its recipe is right [m],
        None where nobody said so; symptoms: ids of data/lexicon/symptoms.toml
    changes: what was changed against the batch before, in the shape of the changes of a converted recipe
    rating: 1 poor to 5 excellent; compared: against the batch before, as the cook said: better, worse, same, or ""
    formula: the recipe that the batches began from, as text, "" where it is not kept; id: 0 until it is kept
    raises: ValueError for an empty title; OutOfRange for a rating outside 1 to 5
    """

    recipe: str
    made_on: date
    style: str = ""
    kitchen: str = ""
    elevation_m: float | None = None
    from_elevation_m: float | None = None
    symptoms: tuple[str, ...] = ()
    changes: tuple[dict[str, Any], ...] = ()
    rating: int | None = None
    note: str = ""
    compared: str = ""
    formula: str = ""
    id: int = 0

    def __post_init__(self) -> None:
        if not self.recipe.strip():
            raise ValueError("a batch needs the title of its recipe")
        if self.rating is not None:
            within("rating", self.rating, 1, 5, "")
