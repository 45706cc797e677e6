"""Conversations, utterance by utterance; each is kept by the time the call returns."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from typing import Any, Literal

from sqlalchemy import Row, delete, func, insert, select

from assistant.store import rows
from assistant.store.database import Store
from assistant.store.schema import conversations, utterances
from assistant.store.writing import add_new

Who = Literal["cook", "assistant"]


@dataclass(frozen=True, slots=True)
class Conversation:
    """A conversation. front_end: where it was held, such as chat, web or speech."""

    id: str
    front_end: str
    started_at: datetime


@dataclass(frozen=True, slots=True)
class Utterance:
    """Something said. request: what was understood, as JSON-able values, where the front end keeps it."""

    who: Who
    text: str
    said_at: datetime
    request: dict[str, Any] | None = None


def begin(store: Store, id: str, front_end: str, now: datetime) -> Conversation:
    """The conversation of this id, begun now where there is none yet.

    raises: StoreError
    """
    with store.write() as connection:
        own = select(conversations).where(conversations.c.id == id)
        if row := connection.execute(own).first():
            return Conversation(*row)
        add_new(connection, conversations, id=id, front_end=front_end, started_at=now)
        return Conversation(*connection.execute(own).one())


def say(store: Store, id: str, *said: Utterance) -> None:
    """Keep what was said in a conversation that has begun; several together are kept all or none.

    raises: StoreError
    """
    if said:
        rows = [
            {"conversation_id": id, "who": u.who, "text": u.text, "said_at": u.said_at, "request": u.request}
            for u in said
        ]
        with store.write() as connection:
            connection.execute(insert(utterances), rows)


def said(store: Store, id: str, last: int | None = None) -> tuple[Utterance, ...]:
    """What was said in a conversation, oldest first; only the last so many where a number is given.

    raises: StoreError
    """
    query = (
        select(utterances.c.who, utterances.c.text, utterances.c.said_at, utterances.c.request)
        .where(utterances.c.conversation_id == id)
        .order_by(utterances.c.id.desc())
        .limit(last)
    )
    with store.read() as connection:
        return tuple(rows.whole(connection.execute(query), utterance_of, "something said in a conversation"))[::-1]


def latest(store: Store, front_end: str) -> Conversation | None:
    """The conversation of a front end in which something was said last, to be resumed; None where there is none.

    raises: StoreError
    """
    query = (
        select(conversations)
        .join(utterances, isouter=True)
        .where(conversations.c.front_end == front_end)
        .group_by(conversations.c.id)
        .order_by(func.max(utterances.c.id).desc().nulls_last(), conversations.c.started_at.desc())
        .limit(1)
    )
    with store.read() as connection:
        row = connection.execute(query).first()
    return Conversation(*row) if row else None


def forget(store: Store, id: str) -> None:
    """Delete a conversation and all that was said in it.

    raises: StoreError
    """
    with store.write() as connection:
        connection.execute(delete(conversations).where(conversations.c.id == id))


def utterance_of(row: Row[Any]) -> Utterance:
    """Something said, from its row.

    raises: TypeError where it is damaged
    """
    if not isinstance(row.text, str) or not isinstance(row.said_at, datetime):
        raise TypeError("nothing said, or at no moment")
    return Utterance(**row._mapping)
