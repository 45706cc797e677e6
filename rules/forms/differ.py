"""How two things differ: as which of the two."""

from __future__ import annotations

from rules.forms.which import RULES

__all__ = ["RULES"]
