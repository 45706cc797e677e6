"""How long raw food keeps cold."""

from __future__ import annotations

from rules.book import Case, Part, rule
from rules.model import Caution
from rules.safety.local_code import local_code
from rules.safety.subjects.kept_cold import kept
from rules.said import sentences

say = sentences("safety/subjects/kept_cold")


@rule("safety.kept_cold_raw", "foodsafety-cold-storage")
def kept_cold_raw(case: Case) -> Part:
    """How long raw food keeps."""
    return kept(case, "raw")


@rule("safety.kept_cold_raw_care", "common-practice", "fda-food-code-2022")
def care(case: Case) -> Part:
    """Where it stands, and what is thrown away."""
    doubtful = Caution("warn", say("doubtful"), ("fda-food-code-2022",))
    return Part(steps=(say("cold-raw"),), cautions=(doubtful,))


NEEDS: tuple[str, ...] = ()
RULES = (kept_cold_raw, care, local_code)
