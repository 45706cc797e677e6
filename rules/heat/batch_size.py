"""What more or less of a dish changes, and what it does not: one rule, added to any method once an amount is said."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

from rules.book import Case, Part, rule
from rules.foods.methods import methods
from rules.model import Request
from rules.said import Words, bulk, number, sentences, yes
from rules.said import liquid as poured
from rules.tables import read_toml

CATALOGUE = "lexicon/amounts.toml"
# the unit of "double it" where the cook never said how much it was
BATCH = "batch"
# liquid that is told beside what it is for; water that is poured away is as the pot has room
POURED_WITH = ("absorbed", "covers")
say = sentences("heat/batch_size")


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


def for_guests(request: Request) -> Words:
    """What so many people take of the dish, dry or raw, and its liquid here; empty where nobody is counted."""
    if not request.portions or request.quantity or request.dish_class is None:
        return ""
    from rules.amounts import liquid, portion

    one = portion.head(request)
    raw_g = one.raw_g * request.portions * portion.over(one.way)
    wet = liquid.needed(Case(request)) if request.elevation_m is not None else None
    poured_too = wet is not None and wet.ratio.way in POURED_WITH
    return say(
        "for-guests",
        guests=number(request.portions, 0),
        raw=bulk(raw_g),
        food=request.dish or request.dish_class,
        state=portion.portion(request.dish, request.dish_class).state,
        wet=yes(poured_too),
        water=poured(wet.here_ml) if wet else "",
        liquid=wet.ratio.liquid if wet else "",
    )


def gist(request: Request) -> str:
    """What the amount does to the time; empty where none is said, or nothing is known of the method.

    >>> gist(Request(method="fry", portions=60))
    'That is for one load; more food is more loads, not a fuller fryer.'
    >>> gist(Request(method="fry"))
    ''
    """
    row = amounts().get(request.method or "")
    return row.gist if row and (request.portions or request.quantity) else ""


@rule("amount.note", "common-practice")
def note(case: Case) -> Part | None:
    """What does and does not change with the amount."""
    if not gist(case.request):
        return None
    row = amounts()[case.request.method or ""]
    return Part(because=row.why, steps=(row.step,))
