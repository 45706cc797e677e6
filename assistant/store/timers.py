"""Timers that outlive the program that set them."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import asdict
from datetime import datetime
from typing import Any

from sqlalchemy import Row, delete, insert, select, update

from assistant.dialogue.timer import Timer
from assistant.store import rows
from assistant.store.database import Store
from assistant.store.schema import timers as table

ROW = "timer"


def add(store: Store, timer: Timer) -> Timer:
    """Keep a timer; the one given back has its id.

    raises: StoreError
    """
    values = {name: value for name, value in asdict(timer).items() if name != "id"}
    with store.write() as connection:
        (id,) = connection.execute(insert(table).values(**values)).inserted_primary_key or (0,)
    return Timer(**values, id=id)


def of_conversation(store: Store, conversation: str) -> tuple[Timer, ...]:
    """The timers of a conversation, the one that ends first before the others.

    raises: StoreError
    """
    query = select(table).where(table.c.conversation == conversation).order_by(table.c.ends_at, table.c.id)
    with store.read() as connection:
        return tuple(rows.whole(connection.execute(query), timer_of, ROW))


def due(store: Store, now: datetime, conversation: str | None = None) -> tuple[Timer, ...]:
    """Timers that have run out and were not yet announced, of one conversation or of all.

    raises: StoreError
    """
    query = select(table).where(table.c.ends_at <= now, ~table.c.rang).order_by(table.c.ends_at, table.c.id)
    if conversation is not None:
        query = query.where(table.c.conversation == conversation)
    with store.read() as connection:
        return tuple(rows.whole(connection.execute(query), timer_of, ROW))


def announce(store: Store, ids: Iterable[int]) -> frozenset[int]:
    """Note that the end of these timers is announced.

    returns: the ids of those that nobody has announced before, be it another server
    raises: StoreError
    """
    ending = update(table).where(~table.c.rang).values(rang=True)
    with store.write() as connection:
        return frozenset(id for id in ids if connection.execute(ending.where(table.c.id == id)).rowcount)


def move_end(store: Store, id: int, ends_at: datetime) -> None:
    """Let a timer end at another moment, and ring again.

    raises: StoreError
    """
    with store.write() as connection:
        connection.execute(update(table).where(table.c.id == id).values(ends_at=ends_at, rang=False))


def remove(store: Store, ids: Iterable[int]) -> None:
    """Stop timers.

    raises: StoreError
    """
    with store.write() as connection:
        connection.execute(delete(table).where(table.c.id.in_(list(ids))))


def timer_of(row: Row[Any]) -> Timer:
    """A timer from its row.

    raises: TypeError where it is damaged
    """
    if not isinstance(row.starts_at, datetime) or not isinstance(row.ends_at, datetime):
        raise TypeError("no moment")
    return Timer(**row._mapping)
