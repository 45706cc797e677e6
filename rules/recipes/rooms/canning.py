"""What is asked about a recipe for jars that are kept."""

from __future__ import annotations

from rules.book import Rule
from rules.recipes import canning

RULES: tuple[Rule, ...] = (canning.not_converted,)
