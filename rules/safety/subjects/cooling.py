"""Cooling cooked food in two stages."""

from __future__ import annotations

from rules.methods import chill
from rules.safety import holding_limits
from rules.safety.local_code import local_code

NEEDS: tuple[str, ...] = ()
RULES = (chill.limits, holding_limits.same_everywhere, chill.thin_air, chill.rice, local_code)
