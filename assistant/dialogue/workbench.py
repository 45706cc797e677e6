"""What a conversation holds of the recipe that is worked on, and of the batches that were baked of one."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from assistant.recipes.sheet import Sheet
from rules.model import Request


@dataclass(frozen=True, slots=True, kw_only=True)
class RecipeTalk:
    """A recipe under way.

    sheet: its lines so far; question: what was said with them, place and units; open: whether further lines are awaited
    portions: for how many it is wanted, where it does not say how many it makes; None where that is not asked
    before: the question before the last change, to undo it
    """

    sheet: Sheet = Sheet()
    question: Request = Request(topic="convert_recipe")
    open: bool = False
    portions: int | None = None
    before: Request | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Baked:
    """A batch as it was told. symptoms: ids of data/lexicon/symptoms.toml; changes: against the batch before

    elevation_m, from_elevation_m: where it was baked, and where its recipe is right [m]; formula: the recipe it began
    from; compared: better, worse or same against the batch before, "" where nobody said; id: 0 until it is kept
    style: the class of the dish; rating: 1 poor to 5 excellent
    """

    symptoms: tuple[str, ...] = ()
    changes: tuple[dict[str, Any], ...] = ()
    elevation_m: float | None = None
    from_elevation_m: float | None = None
    style: str = ""
    formula: str = ""
    compared: str = ""
    rating: int | None = None
    note: str = ""
    id: int = 0


@dataclass(frozen=True, slots=True, kw_only=True)
class Run:
    """The batches of one recipe that a conversation is about.

    title: of the recipe; dish: as the lexicon names it; suggested: the one change that was given last, as it is kept
    pending: what was changed in a batch of which nobody has said yet how it came out
    kept: whether the run goes into the log
    """

    title: str
    dish: str | None = None
    batches: tuple[Baked, ...] = ()
    suggested: dict[str, Any] | None = None
    pending: tuple[dict[str, Any], ...] = ()
    kept: bool = False
