"""What is asked about every recipe, wherever it goes: whether it hurts people as it is written."""

from __future__ import annotations

from rules.book import Rule
from rules.recipes import dangers

RULES: tuple[Rule, ...] = (
    dangers.as_written,
    dangers.too_low,
    dangers.low_acid,
)
