"""A guest with an allergy: what holds it, how it is kept apart, and where it hides."""

from __future__ import annotations

from collections.abc import Sequence

from rules.book import Case, Part, rule
from rules.foods.allergens import Holds, holds
from rules.model import Caution
from rules.said import Said, Words, listed, sentences

# stands for what was not named
ANY = "any"
say = sentences("safety/subjects/allergy")


@rule("safety.allergy", "fda-food-code-2022", "from-memory")
def allergy(case: Case) -> Part:
    """What holds it of what is cooked, its own pan, board and oil, where it hides, and the labels."""
    told = case.request.allergens
    named = tuple(dict.fromkeys((*((case.request.dish,) if case.request.dish else ()), *case.request.dishes)))
    return Part(
        headline=_headline(told, named),
        steps=(say("apart"), *(say("hides", id=id) for id in told), say("labels"), say("unsure")),
        because=say("because"),
        cautions=(Caution("warn", say("reaction"), ("from-memory",)),),
    )


def _headline(told: Sequence[str], named: Sequence[str]) -> Words:
    """Which of the dishes hold it, which may, or what is done where no dish is known."""
    what = listed(say("what", id=id) for id in told or (ANY,))
    sure, maybe = _holding(told, named, "yes"), _holding(told, named, "may")
    if sure:
        return say("holds", foods=listed(sure), what=what, others=_others(maybe))
    if maybe:
        return say("may-hold", foods=listed(maybe), what=what)
    if named:
        return say("none-known", foods=listed(named), what=what)
    return say("none-named", what=what)


def _holding(told: Sequence[str], named: Sequence[str], how: Holds) -> list[str]:
    """The dishes that hold an allergen for sure, or that may and do not for sure."""
    every = {dish: {holds(id, dish) for id in told} for dish in named}
    return [dish for dish, found in every.items() if how in found and (how == "yes" or "yes" not in found)]


def _others(maybe: Sequence[str]) -> Said:
    return say("others", foods=listed(maybe)) if maybe else say("no-others")


NEEDS: tuple[str, ...] = ()
RULES = (allergy,)
