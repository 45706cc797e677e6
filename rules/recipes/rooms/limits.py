"""What is asked about a time that another rule would move: whether it stays for safety's sake."""

from __future__ import annotations

from rules.book import Rule
from rules.recipes import keeping

RULES: tuple[Rule, ...] = (keeping.never_shorter,)
