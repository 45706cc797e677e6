"""A question that wants yes or no: about the cook's own figure, or which way something goes."""

from __future__ import annotations

from rules.book import Part, rule
from rules.forms import Asked, changes, enough


@rule("is_ok.changes", "common-practice")
def which_way(asked: Asked) -> Part | None:
    """Whether it goes the way that was asked: longer, hotter, the same."""
    return next((part for item in changes.RULES if (part := item(asked)) is not None), None)


RULES = (*enough.RULES, which_way)
