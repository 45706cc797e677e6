"""Whether a thing is true: a time that somebody states, beside the time here."""

from __future__ import annotations

from rules.forms.is_ok import stated_time

RULES = (stated_time,)
