"""Bring a database to today's layout.

A new database gets the tables of schema.py at once. An older one is led there by STEPS, each a small function from one
version to the next; steps are only ever added at the end. All of it happens in one transaction: a kill leaves the
database as it was, and of two processes that start together one waits for the other.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence

from sqlalchemy import Connection, func, insert, inspect, select, text, update

from assistant.store.errors import StoreError
from assistant.store.schema import keys, metadata, schema_version

Step = Callable[[Connection], None]

POSTGRES_LOCK = 7_000


def batches_know_their_baseline(connection: Connection) -> None:
    """Version 2: a batch keeps the elevation its recipe was written for."""
    connection.execute(text("ALTER TABLE batches ADD COLUMN from_elevation_m FLOAT"))


def batches_know_their_formula(connection: Connection) -> None:
    """Version 3: a batch keeps the recipe it began from, and how it came out against the one before."""
    connection.execute(text("ALTER TABLE batches ADD COLUMN compared VARCHAR(10)"))
    connection.execute(text("ALTER TABLE batches ADD COLUMN formula TEXT"))


def servers_share_their_keys(connection: Connection) -> None:
    """Version 4: what several servers of one database have to hold in common."""
    keys.create(connection)


STEPS: tuple[Step, ...] = (batches_know_their_baseline, batches_know_their_formula, servers_share_their_keys)


def version_of(connection: Connection) -> int:
    """The version of the layout in this database; 0 where there is none yet.

    raises: StoreError where the version is none
    """
    if not inspect(connection).has_table(schema_version.name):
        return 0
    version = connection.scalar(select(func.max(schema_version.c.version)))
    if not isinstance(version, int) or version < 1:
        raise StoreError(
            "corrupt",
            f"The database is damaged: the version of its layout is {version!r}. Put a copy of it in its place, or "
            "name another one in SIMMERLINE_DB.",
        )
    return version


def is_current(connection: Connection, steps: Sequence[Step] = STEPS) -> bool:
    """Whether nothing is to be done.

    raises: StoreError where a newer simmerline has been at this database
    """
    version, today = version_of(connection), 1 + len(steps)
    if version > today:
        raise StoreError(
            "newer",
            f"The database was written by a newer simmerline: its layout is version {version}, and this one knows "
            f"version {today}. Update simmerline, or name another database in SIMMERLINE_DB.",
        )
    return version == today


def migrate(connection: Connection, steps: Sequence[Step] = STEPS) -> None:
    """Take the steps that are missing. The connection must be in a transaction that may write.

    raises: StoreError where a newer simmerline has been at this database
    """
    if connection.dialect.name == "postgresql":
        connection.execute(select(func.pg_advisory_xact_lock(POSTGRES_LOCK)))
    if is_current(connection, steps):
        return
    version = version_of(connection)
    if not version:
        metadata.create_all(connection, checkfirst=False)
        connection.execute(insert(schema_version).values(version=1 + len(steps)))
        return
    for step in steps[version - 1 :]:
        step(connection)
    connection.execute(update(schema_version).values(version=1 + len(steps)))
