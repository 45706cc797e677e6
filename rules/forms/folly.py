"""Whether something was a mistake: as any question that wants yes or no, whose verdict says the contrary."""

from __future__ import annotations

from rules.forms import is_ok

RULES = (is_ok.which_way,)
