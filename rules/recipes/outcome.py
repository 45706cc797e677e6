"""What came of converting a recipe: what the rules that caution are asked about."""

from __future__ import annotations

from dataclasses import dataclass

from rules.baking.batch import Batch
from rules.baking.change import Change
from rules.recipes.lines import LineTo


@dataclass(frozen=True, slots=True)
class Outcome:
    """A recipe with its changes and its lines as they are now."""

    batch: Batch
    changes: tuple[Change, ...]
    lines: tuple[LineTo, ...]

    @property
    def touched(self) -> set[str]:
        """What of the recipe changes: `leavening`, `oven`."""
        return {change.what for change in self.changes if change.way != "same"}
