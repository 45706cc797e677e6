"""What is asked about one temperature of a step; the first rule that speaks moves it."""

from __future__ import annotations

from rules.baking import frying, inside, oven, syrup, yeast
from rules.book import Rule

RULES: tuple[Rule, ...] = (
    oven.setting,
    syrup.stage,
    inside.liquid,
    yeast.proof_temperature,
    frying.fat,
)
