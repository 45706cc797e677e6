"""Rows as they were kept: one that something has damaged is told, and keeps no other from being read."""

from __future__ import annotations

import warnings
from collections.abc import Callable, Iterable, Iterator
from typing import Any, TypeVar

from sqlalchemy import Row

from assistant.errors import Noted

T = TypeVar("T")
# what values of another kind than were kept raise where a row is read; OutOfRange is a ValueError
FAULTS = (ValueError, TypeError, AttributeError, LookupError)


class DamagedRow(Noted):
    """A row of the store that cannot be read as it was kept."""


def whole(rows: Iterable[Row[Any]], made: Callable[[Row[Any]], T], what: str) -> Iterator[T]:
    """What the rows hold; those that are damaged are told and left out. what: what a row is called"""
    for row in rows:
        try:
            found = made(row)
        except FAULTS:
            tell(f"{what} {row._mapping.get('id', '')}".strip(), "it is left out")
            continue
        yield found


def tell(what: str, so: str) -> None:
    """Note that a row is damaged. so: what is done about it"""
    warnings.warn(f"{what} is damaged in the database; {so}", DamagedRow, stacklevel=3)
