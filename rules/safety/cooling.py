"""Cooling cooked food in two stages."""

from __future__ import annotations

from rules import holding
from rules.local_code import local_code
from rules.methods import chill

NEEDS: tuple[str, ...] = ()
RULES = (chill.limits, holding.same_everywhere, chill.thin_air, chill.rice, local_code)
