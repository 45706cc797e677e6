"""What was tried before, and what became of it: batch against the batch before."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from typing import Literal

from rules.baking.rounding import in_unit
from rules.mending.causes import Cause

Outcome = Literal["helped", "hurt", "same"]
WORDS = "method"
OPPOSITE = {
    "less": "more", "more": "less", "hotter": "cooler", "cooler": "hotter", "shorter": "longer", "longer": "shorter",
}  # fmt: skip


@dataclass(frozen=True, slots=True, kw_only=True)
class Tried:
    """A change that was made to a batch, as it is kept in the batch log.

    rule: "mending.<cause>" where it was suggested here, else ""; item: what was changed, in the cook's words
    from_value, to_value: in from_unit and to_unit; None where there was no figure
    """

    what: str
    way: str
    rule: str = ""
    item: str = ""
    from_value: float | None = None
    from_unit: str | None = None
    to_value: float | None = None
    to_unit: str | None = None

    def is_of(self, cause: Cause) -> bool:
        """Whether this change is the one that mends a cause."""
        return self.rule == cause.rule or (self.what == cause.what != WORDS and self.way == cause.way)

    @property
    def ratio(self) -> float | None:
        """How many times the amount it was before; None where that is not known."""
        if self.from_value is None or self.to_value is None or not self.from_value:
            return None
        to = in_unit(self.to_value, self.to_unit, self.from_unit)
        return None if to is None else to / self.from_value


@dataclass(frozen=True, slots=True, kw_only=True)
class Trial:
    """One earlier batch: what was changed against the batch before it, what went wrong with it, its rating 1 to 5.

    told: what became of it as the cook says; None where that is to be told from the rest
    """

    changes: tuple[Tried, ...] = ()
    symptoms: tuple[str, ...] = ()
    rating: int | None = None
    told: Outcome | None = None


@dataclass(frozen=True)
class Log:
    """The earlier batches of one recipe, oldest first."""

    trials: tuple[Trial, ...] = ()

    def outcome(self, index: int) -> Outcome:
        """What became of a batch: as was told, by the ratings where both have one, else by how much is still wrong."""
        trial = self.trials[index]
        if index and trial.told:
            return trial.told
        if index == 0:
            return "same" if trial.symptoms else "helped"
        before = self.trials[index - 1]
        if trial.rating is not None and before.rating is not None and trial.rating != before.rating:
            return "helped" if trial.rating > before.rating else "hurt"
        if len(trial.symptoms) == len(before.symptoms):
            return "same"
        return "helped" if len(trial.symptoms) < len(before.symptoms) else "hurt"

    @property
    def last_outcome(self) -> Outcome | None:
        """What became of the last batch; None where nothing was changed in it."""
        return self.outcome(len(self.trials) - 1) if self.last_changes else None

    @property
    def has_turned(self) -> bool:
        """Whether the faults of the last batch are none of those of the one before, and nobody said which is worse."""
        if len(self.trials) < 2:
            return False
        before, last = self.trials[-2:]
        rated = last.told or (last.rating is not None and before.rating is not None and last.rating != before.rating)
        return not rated and bool(before.symptoms and last.symptoms) and not set(before.symptoms) & set(last.symptoms)

    @property
    def last_changes(self) -> tuple[Tried, ...]:
        """What was changed in the last batch."""
        return self.trials[-1].changes if self.trials else ()

    @cached_property
    def steps(self) -> tuple[tuple[int, Tried], ...]:
        """Every change with the number of its batch, oldest first."""
        return tuple((i, tried) for i, trial in enumerate(self.trials) for tried in trial.changes)

    def last_try(self, cause: Cause) -> int | None:
        """The number of the last batch in which the change of a cause was made; None where it never was."""
        return max((i for i, tried in self.steps if tried.is_of(cause)), default=None)

    def times_tried(self, cause: Cause) -> int:
        """How many batches had the change of a cause."""
        return len({i for i, tried in self.steps if tried.is_of(cause)})

    def is_way_back(self, tried: Tried) -> bool:
        """Whether a change of the last batch undoes what was done to the same thing before."""
        earlier = [t for i, t in self.steps if i < len(self.trials) - 1 and t.what == tried.what != WORDS]
        return bool(earlier) and earlier[-1].way == OPPOSITE.get(tried.way)

    def moved(self, what: str) -> float:
        """How many times the recipe's own amount of something is used by now; changes without figures not counted."""
        ratio = 1.0
        for _, tried in self.steps:
            if tried.what == what:
                ratio *= tried.ratio or 1.0
        return ratio

    def first(self, what: str) -> Tried | None:
        """The first change of something that names its amount: where the recipe stood."""
        return next((t for _, t in self.steps if t.what == what and t.ratio is not None), None)
