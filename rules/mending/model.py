"""What mending gives back: causes in the order in which to try their changes."""

from __future__ import annotations

from dataclasses import dataclass

from rules.baking.change import Change
from rules.mending.causes import Cause
from rules.mending.failed_dish import Bench
from rules.mending.symptoms import Symptom
from rules.said import Words


@dataclass(frozen=True, slots=True)
class Ranked:
    """A cause with its score [points], the change that mends it, and the sentence that says the change."""

    cause: Cause
    points: float
    change: Change
    line: Words


@dataclass(frozen=True, slots=True)
class Mending:
    """What to do about a dish that failed.

    symptoms: as they are meant of this dish; causes: the next change first, then the runners-up
    bench: what the sizes were worked out for; note: what the log has to do with it, "" where there is no log
    """

    symptoms: tuple[Symptom, ...]
    causes: tuple[Ranked, ...]
    bench: Bench
    note: Words = ""

    @property
    def next(self) -> Ranked | None:
        """The one change to make next; None where nothing is wrong."""
        return self.causes[0] if self.causes else None
