"""All that the store keeps, written down and put back, whatever database it is in.

A backup is JSON Lines in ASCII. The first line names the format, its version and the layout of the tables; then comes
a row a line, with moments in ISO 8601; the last line counts the rows, so that a file that was cut off is known for one.
"""

from __future__ import annotations

import json
from collections import Counter
from collections.abc import Iterable, Iterator, Mapping
from contextlib import contextmanager
from datetime import date, datetime
from itertools import groupby, islice
from typing import Any

from sqlalchemy import (
    JSON,
    Boolean,
    Column,
    Connection,
    Date,
    Float,
    Integer,
    Table,
    TypeDecorator,
    delete,
    func,
    insert,
    select,
    text,
)
from sqlalchemy.exc import IntegrityError

from assistant.errors import AssistantError
from assistant.store.database import Store
from assistant.store.errors import StoreError
from assistant.store.migrate import STEPS
from assistant.store.schema import Moment, keys, metadata, schema_version

FORMAT, VERSION = "simmerline store", 1
LAYOUT = 1 + len(STEPS)
# parents before what refers to them; secrets of servers are made anew
TABLES = tuple(table for table in metadata.sorted_tables if table not in (schema_version, keys))
AT_ONCE = 500
Row = dict[str, Any]


class BadBackup(AssistantError, ValueError):
    """A backup that cannot be put back. line: where it stands, from 1; why: what is wrong with it"""

    def __init__(self, line: int, why: str) -> None:
        super().__init__(line, why)
        self.line, self.why = line, why

    def __str__(self) -> str:
        return f"line {self.line} of the backup {self.why}; nothing was put back"


class StoreNotEmpty(AssistantError, ValueError):
    """A store that holds something already. held: how many rows of each table"""

    def __init__(self, held: Mapping[str, int]) -> None:
        super().__init__(dict(held))
        self.held = held

    def __str__(self) -> str:
        return f"the store is not empty, it holds {told(self.held)}; nothing was put back"


def backup(store: Store) -> Iterator[str]:
    """The lines of a backup, without their ends, all of one moment; nothing of it waits in memory.

    raises: StoreError
    """
    rows = 0
    with store.read() as connection:
        if connection.dialect.name == "postgresql":
            connection.execution_options(isolation_level="REPEATABLE READ")
        yield _line({"format": FORMAT, "version": VERSION, "layout": LAYOUT})
        for table in TABLES:
            query = select(table).order_by(*table.primary_key).execution_options(yield_per=AT_ONCE)
            with _readable(table):
                for row in connection.execute(query).mappings():
                    rows += 1
                    yield _line({"table": table.name, "row": _whole(table, dict(row))})
    yield _line({"rows": rows})


def restore(store: Store, lines: Iterable[str], *, replacing: bool = False) -> Counter[str]:
    """Put a backup back, whole or not at all, and count its rows by table.

    lines: of the backup; replacing: what the store holds now makes way
    raises: BadBackup, StoreNotEmpty, StoreError
    """
    done: Counter[str] = Counter()
    with store.write() as connection:
        held = Counter({table.name: _count(connection, table) for table in TABLES})
        if held.total() and not replacing:
            raise StoreNotEmpty(+held)
        for table in reversed(TABLES):
            connection.execute(delete(table))
        for name, rows in groupby(_rows(lines), key=lambda found: found[0]):
            while some := [row for _, row in islice(rows, AT_ONCE)]:
                done[name] += len(some)
                _put(connection, metadata.tables[name], some, 1 + done.total())
        _count_on(connection)
    return done


def told(counts: Mapping[str, int]) -> str:
    """Rows counted by table, in words.

    >>> told({"kitchens": 2, "drill_answers": 40})
    'kitchens: 2, drill answers: 40'
    """
    found = [f"{name.replace('_', ' ')}: {count}" for name, count in counts.items() if count]
    return ", ".join(found) or "nothing"


@contextmanager
def _readable(table: Table) -> Iterator[None]:
    try:
        yield
    except ValueError as fault:
        raise StoreError("corrupt", f"A row of {table.name} in the database cannot be read.") from fault


def _whole(table: Table, row: Row) -> Row:
    """A row of which everything could be read.

    raises: ValueError where a value that has to be there was not
    """
    torn = [column.name for column in table.c if row[column.name] is None and not column.nullable]
    if torn:
        raise ValueError(", ".join(torn))
    return row


def _line(content: Row) -> str:
    return json.dumps(content, separators=(",", ":"), default=_written)


def _written(value: object) -> str:
    if isinstance(value, date | datetime):
        return value.isoformat()
    raise TypeError(type(value).__name__)


def _count(connection: Connection, table: Table) -> int:
    return connection.scalar(select(func.count()).select_from(table)) or 0


def _put(connection: Connection, table: Table, rows: list[Row], line: int) -> None:
    try:
        connection.execute(insert(table), rows)
    except IntegrityError as fault:
        raise BadBackup(line, f"or one shortly before it contradicts another ({table.name})") from fault


def _count_on(connection: Connection) -> None:
    """Let PostgreSQL give new rows the numbers behind those that were put back; SQLite does of itself."""
    if connection.dialect.name != "postgresql":
        return
    for table in TABLES:
        if isinstance(table.c.id.type, Integer):
            highest = f"(SELECT max(id) FROM {table.name})"
            sequence = f"pg_get_serial_sequence('{table.name}', 'id')"
            connection.execute(text(f"SELECT setval({sequence}, coalesce({highest}, 1), {highest} IS NOT NULL)"))


def _rows(lines: Iterable[str]) -> Iterator[tuple[str, Row]]:
    """Table and values of every row of a backup.

    raises: BadBackup
    """
    at, end = 0, None
    for at, line in enumerate(_texts(lines), start=1):
        content = _object(line, at)
        if at == 1:
            _check_head(content)
        elif end is not None:
            raise BadBackup(at, "stands behind its end")
        elif content.keys() == {"rows"}:
            end = content["rows"]
            if end != at - 2:
                raise BadBackup(at, f"counts {end} rows, and there are {at - 2}")
        else:
            yield _row(content, at)
    if end is None:
        raise BadBackup(at + 1, "is missing: the file was cut off" if at else "is missing: the file is empty")


def _texts(lines: Iterable[str]) -> Iterator[str]:
    at = 0
    try:
        for line in lines:
            at += 1
            yield line
    except UnicodeDecodeError:
        raise BadBackup(at + 1, "is no text") from None


def _object(line: str, at: int) -> Row:
    try:
        content = json.loads(line)
    except (ValueError, RecursionError):
        content = None
    if not isinstance(content, dict):
        raise BadBackup(at, "is no JSON object")
    return content


def _check_head(head: Row) -> None:
    version, layout = head.get("version"), head.get("layout")
    if head.get("format") != FORMAT or not isinstance(version, int) or not isinstance(layout, int):
        raise BadBackup(1, f'does not begin a backup of ours: {{"format": "{FORMAT}", ...}}')
    if version > VERSION or layout > LAYOUT:
        raise BadBackup(1, f"is of a newer simmerline (version {version}, layout {layout}); update this one")


def _row(content: Row, at: int) -> tuple[str, Row]:
    table = next((table for table in TABLES if table.name == content.get("table")), None)
    given = content.get("row")
    if table is None or not isinstance(given, dict) or content.keys() != {"table", "row"}:
        raise BadBackup(at, "is no row of a table that is known here")
    if unknown := given.keys() - table.c.keys():
        raise BadBackup(at, f"has what {table.name} has not: {', '.join(sorted(unknown))}")
    return table.name, {column.name: _value(column, given.get(column.name), at) for column in table.c}


def _value(column: Column[Any], value: Any, at: int) -> Any:
    """A value as its column takes it.

    raises: BadBackup
    """
    if value is None and column.nullable:
        return None
    kind: Any = column.type
    if isinstance(kind, TypeDecorator) and not isinstance(kind, Moment):
        kind = kind.impl
    try:
        if isinstance(kind, Moment | Date):
            read = (datetime if isinstance(kind, Moment) else date).fromisoformat(value)
            if isinstance(read, datetime) and read.tzinfo is None:
                raise ValueError
            return read
    except (TypeError, ValueError):
        raise BadBackup(at, f"has no moment for {column.name}") from None
    wanted: tuple[type, ...] = (
        (list, dict) if isinstance(kind, JSON)
        else (bool,) if isinstance(kind, Boolean)
        else (int,) if isinstance(kind, Integer)
        else (int, float) if isinstance(kind, Float)
        else (str,)
    )  # fmt: skip
    if not isinstance(value, wanted) or (isinstance(value, bool) and wanted != (bool,)):
        raise BadBackup(at, f"has no {' or '.join(kind.__name__ for kind in wanted)} for {column.name}")
    return value
