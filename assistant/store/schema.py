"""The tables as they are today. A change here needs a step in migrate.STEPS that brings an older database to it."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime
from typing import Any

from sqlalchemy import (
    JSON,
    BigInteger,
    Boolean,
    Column,
    Date,
    DateTime,
    Dialect,
    Float,
    ForeignKey,
    Index,
    Integer,
    LargeBinary,
    MetaData,
    String,
    Table,
    Text,
    TypeDecorator,
)
from sqlalchemy.types import TypeEngine

metadata = MetaData()


class Lenient(TypeDecorator[Any]):
    """A value that is read as nothing where the database holds none of its type, for its row to be told."""

    impl: type[TypeEngine[Any]] = JSON
    cache_ok = True

    def result_processor(self, dialect: Dialect, coltype: object) -> Callable[[Any], Any] | None:
        """Out of the database."""
        read = super().result_processor(dialect, coltype)
        if read is None:
            return None

        def leniently(value: Any) -> Any:
            try:
                return read(value)
            except (ValueError, TypeError, AttributeError):
                return None

        return leniently


class Day(Lenient):
    """A date."""

    impl = Date
    cache_ok = True


class Moment(Lenient):
    """A moment with its time zone. Kept in UTC, since SQLite knows no zones."""

    impl = DateTime
    cache_ok = True

    def process_bind_param(self, value: datetime | None, dialect: Dialect) -> datetime | None:
        """Into the database: UTC without its zone; a moment without a zone is refused."""
        if value is None:
            return None
        if value.tzinfo is None:
            raise ValueError(f"{value} lacks a time zone")
        return value.astimezone(UTC).replace(tzinfo=None)

    def process_result_value(self, value: datetime | None, dialect: Dialect) -> datetime | None:
        """Out of the database."""
        return None if value is None else value.replace(tzinfo=UTC)


def kept_as(value: str) -> str:
    """Text as people and pipes send it: what no database can keep (NUL, lone surrogates) becomes a question mark."""
    return value.replace("\0", "?").encode("utf-8", "replace").decode("utf-8")


class Words(TypeDecorator[str]):
    """Text of people."""

    impl = Text
    cache_ok = True

    def process_bind_param(self, value: str | None, dialect: Dialect) -> str | None:
        """Into the database."""
        return None if value is None else kept_as(value)


class Key(TypeDecorator[str]):
    """What something is found by, which people and programs name."""

    impl = String(200)
    cache_ok = True

    def process_bind_param(self, value: str | None, dialect: Dialect) -> str | None:
        """Into the database."""
        return None if value is None else kept_as(value)


schema_version = Table("schema_version", metadata, Column("version", Integer, nullable=False))

kitchens = Table(
    "kitchens",
    metadata,
    Column("id", Integer, primary_key=True),
    Column("key", Key, nullable=False, unique=True),
    Column("name", Words, nullable=False),
    Column("elevation_m", Float),
    Column("place", Words, nullable=False),
    Column("units", String(10), nullable=False),
    Column("equipment", Lenient, nullable=False),
    Column("barometer_offset_pa", Float, nullable=False),
    Column("thermometer_offset_c", Float, nullable=False),
    Column("in_use", Boolean, nullable=False),
)
Index(
    "one_kitchen_in_use",
    kitchens.c.in_use,
    unique=True,
    sqlite_where=kitchens.c.in_use,
    postgresql_where=kitchens.c.in_use,
)

conversations = Table(
    "conversations",
    metadata,
    Column("id", Key, primary_key=True),
    Column("front_end", String(40), nullable=False),
    Column("started_at", Moment, nullable=False),
)

utterances = Table(
    "utterances",
    metadata,
    Column("id", Integer, primary_key=True),
    Column(
        "conversation_id",
        Key,
        ForeignKey("conversations.id", ondelete="CASCADE"),
        nullable=False,
        index=True,
    ),
    Column("who", String(10), nullable=False),
    Column("text", Words, nullable=False),
    Column("said_at", Moment, nullable=False),
    Column("request", Lenient(none_as_null=True)),
)

batches = Table(
    "batches",
    metadata,
    Column("id", Integer, primary_key=True),
    Column("recipe", Words, nullable=False),
    Column("recipe_key", Key, nullable=False, index=True),
    Column("style", String(40), nullable=False),
    Column("kitchen", Words, nullable=False),
    Column("elevation_m", Float),
    Column("from_elevation_m", Float),
    Column("made_on", Day, nullable=False),
    Column("symptoms", Lenient, nullable=False),
    Column("changes", Lenient, nullable=False),
    Column("rating", Integer),
    Column("note", Words, nullable=False),
    Column("compared", String(10)),
    Column("formula", Words),
)

timers = Table(
    "timers",
    metadata,
    Column("id", Integer, primary_key=True),
    Column("name", Words, nullable=False),
    Column("dish", Words),
    Column("conversation", Key, nullable=False, index=True),
    Column("starts_at", Moment, nullable=False),
    Column("ends_at", Moment, nullable=False),
    Column("rang", Boolean, nullable=False),
)

keys = Table(
    "keys",
    metadata,
    Column("name", String(40), primary_key=True),
    Column("value", LargeBinary, nullable=False),
)

drill_answers = Table(
    "drill_answers",
    metadata,
    Column("id", Integer, primary_key=True),
    Column("key", Key, nullable=False, index=True),
    Column("name", Words, nullable=False),
    Column("seed", BigInteger, nullable=False),
    Column("question", Words, nullable=False),
    Column("right", Boolean, nullable=False),
    Column("answered_at", Moment, nullable=False),
)
