"""The choice between two changes: the causes that either of them is of, first."""

from __future__ import annotations

from collections.abc import Sequence
from functools import cache

from rules.mending.causes import Cause
from rules.mending.model import Ranked
from rules.tables import read_toml

FILE = "lexicon/fault_questions.toml"


@cache
def _named() -> dict[str, tuple[frozenset[str], frozenset[str]]]:
    """What a change can be called: the kinds of change and the causes that it stands for."""
    return {row["id"]: (frozenset(row["whats"]), frozenset(row.get("causes", ()))) for row in read_toml(FILE)["named"]}


def is_of(cause: Cause, name: str) -> bool:
    """Whether a cause is mended by a change of this name."""
    whats, causes = _named().get(name, (frozenset(), frozenset()))
    return cause.what in whats or cause.id in causes


def chosen(causes: Sequence[Ranked], either: Sequence[str]) -> tuple[str, tuple[Ranked, ...]]:
    """The name that is chosen and the causes with it first; "" and the causes as they are where neither helps."""
    first = next((row for row in causes if any(is_of(row.cause, name) for name in either)), None)
    if first is None:
        return "", tuple(causes)
    name = next(name for name in either if is_of(first.cause, name))
    return name, (first, *(row for row in causes if row is not first))
