"""The themes of the lessons, rows of data/printing/lessons.toml."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from typing import Any

from rules import tables
from rules.errors import UnknownWord

ROWS = "printing/lessons.toml"
Ask = dict[str, Any]


@dataclass(frozen=True, slots=True)
class TableRow:
    """A row of the table of elevations: the question, the figure of its answer, and how it is shown."""

    id: str
    ask: Ask
    figure: str
    shows: str


@dataclass(frozen=True, slots=True)
class Example:
    """A worked example.

    sums: the rules whose reason and equation are written out; told: whether the reason is
    reckoned: further sums, each with its form and what that needs
    """

    id: str
    ask: Ask
    sums: tuple[str, ...]
    told: bool = True
    reckoned: tuple[dict[str, Any], ...] = ()


@dataclass(frozen=True, slots=True)
class Trial:
    """An experiment. needs: things, and how many a group has; values: what its finding names."""

    id: str
    steps: int
    cautions: int
    values: tuple[str, ...]
    needs: tuple[tuple[str, int], ...]


@dataclass(frozen=True, slots=True)
class Theme:
    """What is on the sheet of a theme. why: explanations; drill: kinds of question."""

    id: str
    why: tuple[str, ...]
    rows: tuple[TableRow, ...]
    examples: tuple[Example, ...]
    experiment: Trial
    drill: tuple[str, ...]


@cache
def catalogue() -> dict[str, Theme]:
    """Every theme by its id, in the order of the file.

    >>> list(catalogue())[:3]
    ['boiling', 'braising', 'baking']
    """
    return {row["id"]: _theme(row) for row in tables.read_toml(ROWS)["lesson"]}


@cache
def always() -> tuple[TableRow, ...]:
    """The rows that stand in every table."""
    return tuple(TableRow(**row) for row in tables.read_toml(ROWS)["always"])


def group_of() -> int:
    """How many of a class share one experiment."""
    size: int = tables.read_toml(ROWS)["group_of"]
    return size


def theme(name: str) -> Theme:
    """The theme of a name.

    raises: UnknownWord
    """
    if name not in catalogue():
        raise UnknownWord.among("lesson", name, catalogue())
    return catalogue()[name]


def _theme(row: dict[str, Any]) -> Theme:
    examples = (
        Example(e["id"], e["ask"], tuple(e["sums"]), e.get("told", True), tuple(e.get("reckoned", ())))
        for e in row["examples"]
    )
    trial = row["experiment"]
    return Theme(
        id=row["id"],
        why=tuple(row["why"]),
        rows=tuple(TableRow(**line) for line in row["rows"]),
        examples=tuple(examples),
        experiment=Trial(
            trial["id"],
            trial["steps"],
            trial["cautions"],
            tuple(trial["values"]),
            tuple((thing, each) for thing, each in trial["needs"]),
        ),
        drill=tuple(row["drill"]),
    )
