"""What a method is usually for: facts of data/lexicon/methods.toml."""

from __future__ import annotations

from functools import cache

from rules.tables import read_toml

METHODS = "lexicon/methods.toml"


def usual_class(method: str | None) -> str | None:
    """The class of dish that is meant where a method is named and no dish; None where a method is for many.

    >>> usual_class("braise"), usual_class("boil")
    ('collagen_cut', None)
    """
    return _usual().get(method or "")


@cache
def _usual() -> dict[str, str]:
    rows = read_toml(METHODS)["method"]
    return {row["id"]: row["usual_class"] for row in rows if "usual_class" in row}
