"""Sugarwork: syrup boiled to a stage, from thread to caramel."""

from __future__ import annotations

from rules.foods.sugar import RULES

__all__ = ["NEEDS", "RULES"]

NEEDS = ("elevation",)
