"""Whether something is safe: what no room says of it, where the cold outside stands in for a refrigerator."""

from __future__ import annotations

from rules.forms.enough import readings

RULES = (readings.outdoors,)
