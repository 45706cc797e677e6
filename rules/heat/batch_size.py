"""What more or less of a dish changes, and what it does not: one rule, added to any method once an amount is said."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

from rules.book import Case, Part, rule
from rules.foods.methods import methods
from rules.heat.roast_weights import by_weight
from rules.model import Request
from rules.tables import read_toml

CATALOGUE = "lexicon/amounts.toml"
# the unit of "double it" where the cook never said how much it was
BATCH = "batch"


@dataclass(frozen=True, slots=True, kw_only=True)
class Amount:
    """What the amount changes in some methods. gist: said beside the answer; why: the reason; step: what to do."""

    id: str
    gist: str
    why: str
    step: str


@cache
def amounts() -> dict[str, Amount]:
    """Method -> what the amount changes in it."""
    rows = {row["id"]: Amount(**row) for row in read_toml(CATALOGUE)["amount"]}
    return {id: rows[method.amount] for id, method in methods().items() if method.amount in rows}


def gist(request: Request) -> str:
    """What the amount does to the time; empty where none is said, or nothing is known of the method.

    >>> gist(Request(method="fry", portions=60))
    'That is for one load; more food is more loads, not a fuller fryer.'
    >>> gist(Request(method="fry"))
    ''
    """
    row = amounts().get(request.method or "")
    if row is None or by_weight(request, request.method or ""):
        # the weight of the piece has gone into its time
        return ""
    return row.gist if request.portions or request.quantity else ""


@rule("amount.note", "common-practice")
def note(case: Case) -> Part | None:
    """What does and does not change with the amount."""
    if not gist(case.request):
        return None
    row = amounts()[case.request.method or ""]
    return Part(because=row.why, steps=(row.step,))
