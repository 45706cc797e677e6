"""The rule that food safety ends with: somebody else has the last word."""

from __future__ import annotations

from rules.book import Case, Part, rule
from rules.model import Caution
from rules.said import sentences

say = sentences("safety/local_code")


@rule("safety.local_code", "fda-food-code-2022")
def local_code(case: Case) -> Part:
    """The local food code and the person in charge come first."""
    return Part(cautions=(Caution("note", say("comes-first"), ("fda-food-code-2022",)),))
