"""The validator's part on cooking methods: rows that are whole, name what there is, and read like English."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from typing import Any, get_args

from rules import book, tables
from rules.foods.methods import DISH, METHODS, Mark

Problem = tuple[str, str, str]

# stands wherever a scaffold leaves words to a person
TO_WRITE = "TO WRITE"
PREPOSITIONS = frozenset({"at", "by", "in", "inside", "into", "on", "over", "under", "with", "without"})


def problems() -> Iterator[Problem]:
    """File, row and what is wrong with it, for every fault."""
    rows = tables.read_toml(METHODS)["method"]
    for row in rows:
        yield from ((METHODS, str(row.get("id")), fault) for fault in row_faults(row))
    for room in set(book.names("methods")) ^ {str(row.get("id")) for row in rows}:
        yield METHODS, room, "has a row and no module, or a module and no row"
    yield from unwritten()


def row_faults(row: dict[str, Any]) -> Iterator[str]:
    """What is wrong with one method."""
    known = {
        "usual_class": {of["id"] for of in tables.read_toml("lexicon/classes.toml")["class"]},
        "amount": {of["id"] for of in tables.read_toml("lexicon/amounts.toml")["amount"]},
    }
    for column, ids in known.items():
        if column in row and row[column] not in ids:
            yield f'{column} "{row[column]}" unknown'
    owned = {of["id"] for of in tables.read_toml("lexicon/equipment.toml")["equipment"]}
    yield from (f'equipment "{id}" unknown' for id in row.get("equipment", ()) if id not in owned)
    yield from (f'mark "{mark}" unknown' for mark in row.get("marks", ()) if mark not in get_args(Mark))
    yield from gerund_faults(str(row.get("gerund", "")))


def gerund_faults(gerund: str) -> Iterator[str]:
    """A gerund that does not read like English before a dish.

    >>> list(gerund_faults("pressure cooking")), list(gerund_faults("cooking * sous vide"))
    ([], [])
    >>> list(gerund_faults("cooking in a clay pot"))
    ['cooking in a clay pot: say with * where the dish stands']
    """
    before, *after = gerund.split(DISH)
    words = before.split()
    if not any(word.endswith("ing") for word in words):
        yield f"{gerund}: no word in -ing before the dish"
    elif not after and PREPOSITIONS.intersection(words):
        yield f"{gerund}: say with * where the dish stands"
    if len(after) > 1:
        yield f"{gerund}: the dish stands in it once"


def unwritten(data: Path | None = None) -> Iterator[Problem]:
    """Places in the data where a scaffold left words to a person, and nobody wrote them."""
    data = data or Path(str(tables.data_path("lexicon"))).parent
    for path in sorted(file for file in data.rglob("*.*") if file.suffix in (".toml", ".ftl", ".csv")):
        for number, line in enumerate(path.read_text(encoding="utf-8").splitlines(), start=1):
            if TO_WRITE in line:
                yield str(path.relative_to(data)), f"line {number}", f"still to be written: {line.strip()}"
