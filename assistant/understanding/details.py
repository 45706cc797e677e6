"""Details that change how a dish cooks and are no dish of their own: stuffed, from frozen, cut small, flattened."""

from __future__ import annotations

from collections.abc import Sequence
from functools import cache
from typing import Any

from assistant.understanding.cue_words import said
from rules import tables
from rules.foods.dishes import dishes
from rules.model import Request, Unused
from rules.said import Said

WORDS, SENTENCES = "lexicon/details.toml", "understanding/details"
MOST = 2


def heard(words: Sequence[str], about: Request) -> tuple[Unused, ...]:
    """What is to be said of the details that the words tell of a dish; none where its class is not known for them.

    about: the question about the dish
    """
    found = [row for row in rows() if _fits(row, about) and said(words, row["heard_as"])]
    return tuple(Unused("detail", row["id"], sentence(row)) for row in found[:MOST])


def at_once(words: Sequence[str], about: Request) -> tuple[Unused, ...]:
    """What of it is said in the first question as well: the rows that say so."""
    told = {row["id"] for row in rows() if row.get("at_once")}
    return tuple(detail for detail in heard(words, about) if detail.text in told)


def names(words: Sequence[str], about: Request, dish: str) -> bool:
    """Whether the words for a dish are those of a detail of another one: a turkey with stuffing."""
    told = (phrase for row in rows() if _fits(row, about) for phrase in row["heard_as"] if said(words, (phrase,)))
    return any(dish in phrase for phrase in told)


def sentence(row: dict[str, Any]) -> Said:
    """What is said of a detail."""
    return Said(SENTENCES, row["id"].replace("_", "-"), ())


def _fits(row: dict[str, Any], about: Request) -> bool:
    """Whether a detail is told of such a dish, in such a question."""
    if about.topic not in row["topics"]:
        return False
    if about.method not in row.get("methods", (about.method,)):
        return False
    if about.subject in row.get("subjects", ()):
        return True
    dish = dishes().get(about.dish or "")
    known = {about.dish_class, *(dish.traits if dish else ())}
    return any(kind in known for kind in row["kinds"])


@cache
def rows() -> tuple[dict[str, Any], ...]:
    """Every detail, the more particular before the general."""
    return tuple(tables.read_toml(WORDS)["detail"])
