"""Preserve: canning, jam and pickles; the rules are those of rules/preserving."""

from __future__ import annotations

from rules.preserving.room import needs, rules_for

__all__ = ["needs", "rules_for"]
