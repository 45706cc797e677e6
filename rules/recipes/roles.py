"""Which roles of a figure conversion may rewrite: data/lexicon/recipe_roles.toml says."""

from __future__ import annotations

from functools import cache

from rules.tables import read_toml

ROLES = "lexicon/recipe_roles.toml"


@cache
def moving(kind: str) -> frozenset[str]:
    """The roles that may move. kind: "time" or "temperature".

    >>> "oven" in moving("temperature"), "food" in moving("temperature"), "rest" in moving("time")
    (True, False, False)
    """
    return frozenset(row["id"] for row in read_toml(ROLES)[kind] if row["moves"])


@cache
def apparatus_words(id: str) -> tuple[str, ...]:
    """The phrases that name an apparatus."""
    return next((tuple(row["words"]) for row in read_toml(ROLES)["apparatus"] if row["id"] == id), ())
