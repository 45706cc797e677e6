"""The rule that food safety ends with: somebody else has the last word."""

from __future__ import annotations

from rules.book import Case, Part, rule
from rules.model import Caution


@rule("safety.local_code", "fda-food-code-2022")
def local_code(case: Case) -> Part:
    """The local food code and the person in charge come first."""
    text = "Your local food code and the person in charge come before anything said here."
    return Part(cautions=(Caution("note", text, ("fda-food-code-2022",)),))
