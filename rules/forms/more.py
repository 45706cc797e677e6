"""How much more or less: the same as whether anything changes, without yes or no."""

from __future__ import annotations

from rules.forms.changes import RULES

__all__ = ["RULES"]
