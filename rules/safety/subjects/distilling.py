"""Distilling spirits: refused."""

from __future__ import annotations

from rules.book import Case, Part, rule
from rules.said import sentences

say = sentences("safety/subjects/distilling")


@rule("safety.distilling", "common-practice")
def distilling(case: Case) -> Part:
    """No help with distilling spirits."""
    return Part(headline=say("headline"))


NEEDS: tuple[str, ...] = ()
RULES = (distilling,)
