"""Sugar stage: how hot a stage is here. The subject is the stage's id; without one every stage is given."""

from __future__ import annotations

from rules.foods.sugar import RULES

__all__ = ["RULES"]
