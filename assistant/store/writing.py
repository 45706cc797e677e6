"""Rows that may be there already, since another server was a moment quicker."""

from __future__ import annotations

from typing import Any

from sqlalchemy import Connection, Table, insert
from sqlalchemy.exc import IntegrityError


def add_new(connection: Connection, table: Table, **values: Any) -> None:
    """Insert a row; one of the same key is left as it is."""
    try:
        with connection.begin_nested():
            connection.execute(insert(table).values(**values))
    except IntegrityError:
        return
