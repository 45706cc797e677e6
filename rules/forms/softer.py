"""A dish wanted softer than it was told: the late end of its time."""

from __future__ import annotations

from rules.book import Part, rule
from rules.forms import Asked
from rules.forms.firmer import at_end


@rule("softer.late", "common-practice")
def softer(asked: Asked) -> Part | None:
    """The late end of the time."""
    return at_end(asked, "softer")


RULES = (softer,)
