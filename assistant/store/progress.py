"""Progress of trainees in the drill, by name."""

from __future__ import annotations

from dataclasses import asdict, dataclass
from datetime import datetime
from typing import Any

from sqlalchemy import Row, insert, select

from assistant.store import rows
from assistant.store.database import Store
from assistant.store.owners import key_of
from assistant.store.schema import drill_answers as table


@dataclass(frozen=True, slots=True)
class DrillAnswer:
    """One question answered. seed: of the set it came from; question: its id."""

    name: str
    seed: int
    question: str
    right: bool
    answered_at: datetime


def record(store: Store, answer: DrillAnswer) -> None:
    """Keep an answer.

    raises: StoreError
    """
    with store.write() as connection:
        connection.execute(insert(table).values(key=key_of(answer.name), **asdict(answer)))


def of_trainee(store: Store, name: str) -> tuple[DrillAnswer, ...]:
    """What a trainee has answered, oldest first; the name in any case.

    raises: StoreError
    """
    columns = (table.c.name, table.c.seed, table.c.question, table.c.right, table.c.answered_at)
    query = select(*columns).where(table.c.key == key_of(name)).order_by(table.c.id)
    with store.read() as connection:
        return tuple(rows.whole(connection.execute(query), answer_of, "an answer of a drill"))


def answer_of(row: Row[Any]) -> DrillAnswer:
    """An answer from its row.

    raises: TypeError where it is damaged
    """
    if not isinstance(row.answered_at, datetime):
        raise TypeError("no moment")
    return DrillAnswer(**row._mapping)
