"""Find and read the data: tables as CSV, lists as TOML, the bibliography."""

from __future__ import annotations

import csv
from dataclasses import dataclass
from functools import cache
from importlib import resources
from importlib.resources.abc import Traversable
from pathlib import Path
from typing import Any

import tomli

from rules.errors import RulesError, UnknownWord
from rules.kept import kept

BASES = ("published", "published, read in a reprint", "worked out", "common practice", "from memory")


class BadTable(RulesError, ValueError):
    """A data file that does not say what it must; the message names file and fault."""


@dataclass(frozen=True)
class Table:
    """One published table.

    source: id in data/sources.toml
    edition: edition or page, in words
    units: column name -> unit, for every column that holds a figure
    rows: one dictionary a row, column name -> text as printed
    """

    source: str
    edition: str
    units: dict[str, str]
    rows: tuple[dict[str, str], ...]


@dataclass(frozen=True)
class Source:
    """Where a figure comes from; `basis` is one of BASES, `short` the citation for the foot of a reply."""

    id: str
    title: str
    short: str
    publisher: str
    year: str
    where: str
    basis: str

    def __post_init__(self) -> None:
        if self.basis not in BASES:
            raise BadTable(f'data/sources.toml: {self.id}: basis "{self.basis}" is none of: {"; ".join(BASES)}')


@cache
def _root() -> Traversable:
    shipped = resources.files("rules") / "_data"
    return shipped if shipped.is_dir() else Path(__file__).resolve().parent.parent / "data"


def data_path(relative: str) -> Traversable:
    """A file or folder of the data, in an install or in a checkout.

    relative: path below `data/`, with forward slashes
    returns: the file or folder, whether or not it exists

    >>> data_path("sources.toml").is_file()
    True
    """
    return _root().joinpath(*relative.split("/"))


def _text(relative: str) -> str:
    path = data_path(relative)
    if not path.is_file():
        raise BadTable(f"data/{relative}: no such file")
    return path.read_text(encoding="utf-8")


def _pairs(text: str) -> dict[str, str]:
    return {key.strip(): value.strip() for key, _, value in (item.partition("=") for item in text.split(",")) if key}


@kept
def read_csv(relative: str) -> Table:
    """A table with its leading `# source:`, `# edition:` and `# units:` lines.

    relative: path below `data/`
    raises: BadTable when the file or its source line is missing, or a row has too few or too many cells

    >>> read_csv("tables/sucrose_boiling_browne-1912-sucrose.csv").units["elevation_k"]
    'K'
    """
    lines = _text(relative).splitlines()
    notes = [line.lstrip("# ") for line in lines if line.startswith("#")]
    head = {key.strip(): value.strip() for key, colon, value in (note.partition(":") for note in notes) if colon}
    if "source" not in head:
        raise BadTable(f'data/{relative}: write a first line "# source: <id of data/sources.toml>"')
    rows = tuple(csv.DictReader([line for line in lines if line.strip() and not line.startswith("#")], strict=True))
    for number, row in enumerate(rows, start=1):
        if None in row or None in row.values():
            raise BadTable(f"data/{relative}: row {number}: wrong number of cells: {list(row.values())}")
    return Table(head["source"], head.get("edition", ""), _pairs(head.get("units", "")), rows)


@kept
def read_toml(relative: str) -> dict[str, Any]:
    """A TOML file below `data/`; treat the result as read-only, it is shared.

    raises: BadTable when the file is missing or is not TOML

    >>> "source" in read_toml("sources.toml")
    True
    """
    try:
        return tomli.loads(_text(relative))
    except tomli.TOMLDecodeError as fault:
        raise BadTable(f"data/{relative}: {fault}") from fault


@cache
def sources() -> dict[str, Source]:
    """The bibliography, id -> Source.

    raises: BadTable when an entry lacks a field, has an unknown one, or repeats an id

    >>> sources()["iapws-r7-97"].year
    '2012'
    """
    found: dict[str, Source] = {}
    for entry in read_toml("sources.toml")["source"]:
        try:
            source = Source(**{key: str(value) for key, value in entry.items()})
        except TypeError as fault:
            raise BadTable(f"data/sources.toml: {entry.get('id', entry)}: {fault}") from fault
        if source.id in found:
            raise BadTable(f"data/sources.toml: {source.id} stands there twice")
        found[source.id] = source
    return found


def source(id: str) -> Source:
    """One entry of the bibliography.

    raises: UnknownWord when there is none, with near ids as suggestions
    """
    try:
        return sources()[id]
    except KeyError:
        raise UnknownWord.among("source", id, sources()) from None
