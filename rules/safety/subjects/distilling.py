"""Distilling spirits: refused."""

from __future__ import annotations

from rules.book import Case, Part, rule


@rule("safety.distilling", "common-practice")
def distilling(case: Case) -> Part:
    """No help with distilling spirits."""
    return Part(
        headline="I do not help with distilling spirits: it needs a licence, and vapour, fire and methanol kill."
    )


NEEDS: tuple[str, ...] = ()
RULES = (distilling,)
