"""The layout of the database, from one version to the next."""

import subprocess
import sys
from pathlib import Path

import pytest
from sqlalchemy import Connection, inspect, select, text

from assistant.store import StoreError, kitchens, open_store
from assistant.store.database import Store, connect
from assistant.store.kitchens import SavedKitchen
from assistant.store.migrate import STEPS, is_current, migrate, version_of
from assistant.store.schema import metadata, schema_version

TODAY = 1 + len(STEPS)


def add_colour(connection: Connection) -> None:
    connection.execute(text("ALTER TABLE kitchens ADD COLUMN colour TEXT"))


def add_size(connection: Connection) -> None:
    connection.execute(text("ALTER TABLE kitchens ADD COLUMN size TEXT"))


def columns(store: Store) -> set[str]:
    return {column["name"] for column in inspect(store.engine).get_columns("kitchens")}


def test_a_new_database_gets_all_tables_and_its_version(store: Store) -> None:
    assert set(inspect(store.engine).get_table_names()) == set(metadata.tables)
    with store.read() as connection:
        assert connection.scalars(select(schema_version.c.version)).all() == [TODAY]


def test_a_database_of_the_first_version_learns_where_recipes_were_written_for(tmp_path: Path) -> None:
    import sqlite3

    file = tmp_path / "first.db"
    open_store(f"sqlite:///{file}").close()
    with sqlite3.connect(file) as old:
        for column in ("from_elevation_m", "compared", "formula"):
            old.execute(f"ALTER TABLE batches DROP COLUMN {column}")
        old.execute("DROP TABLE keys")
        old.execute("UPDATE schema_version SET version = 1")
    store = open_store(f"sqlite:///{file}")
    found = {c["name"] for c in inspect(store.engine).get_columns("batches")}
    assert found >= {"from_elevation_m", "compared", "formula"}
    store.close()


def test_an_older_database_takes_only_the_steps_it_lacks(store: Store) -> None:
    kitchens.add(store, SavedKitchen(name="Lodge", elevation_m=2133.6))
    with store.write() as connection:
        migrate(connection, (*STEPS, add_colour))
    with store.write() as connection:
        migrate(connection, (*STEPS, add_colour, add_size))
        assert version_of(connection) == TODAY + 2
    assert {"colour", "size"} <= columns(store)
    with store.write() as connection:
        migrate(connection, (*STEPS, add_colour, add_size))
        assert connection.scalars(text("SELECT name FROM kitchens")).all() == ["Lodge"]


def test_a_step_that_fails_leaves_the_database_as_it_was(store: Store) -> None:
    def fails(connection: Connection) -> None:
        raise RuntimeError("power cut")

    with pytest.raises(RuntimeError, match="power cut"), store.write() as connection:
        migrate(connection, (*STEPS, add_colour, fails))
    assert "colour" not in columns(store)
    with store.read() as connection:
        assert version_of(connection) == TODAY


def test_a_database_of_a_newer_program_is_left_alone(store: Store) -> None:
    with store.write() as connection:
        migrate(connection, (*STEPS, add_colour))
    told = f"its layout is version {TODAY + 1}, and this one knows version {TODAY}"
    with pytest.raises(StoreError, match=told) as hit:
        open_store(store.engine.url.render_as_string())
    assert hit.value.kind == "newer"


def test_tables_of_another_program_are_left_alone(tmp_path: Path) -> None:
    import sqlite3

    file = tmp_path / "other.db"
    with sqlite3.connect(file) as other:
        other.execute("CREATE TABLE timers (lap INTEGER)")
    with pytest.raises(StoreError, match="not laid out as simmerline's") as hit:
        connect(f"sqlite:///{file}")
    assert hit.value.kind == "foreign"
    with sqlite3.connect(file) as other:
        assert other.execute("SELECT name FROM sqlite_master").fetchall() == [("timers",)]


def test_processes_that_start_together_make_one_layout(tmp_path: Path) -> None:
    url = f"sqlite:///{tmp_path}/simmerline.db"
    code = (
        "import sys; from assistant.store import open_store, kitchens; s = open_store(sys.argv[1]);"
        "kitchens.add(s, kitchens.SavedKitchen(name=sys.argv[2]))"
    )
    running = [subprocess.Popen([sys.executable, "-c", code, url, f"k{n}"], stderr=subprocess.PIPE) for n in range(4)]
    assert [(p.communicate()[1], p.returncode) for p in running] == [(b"", 0)] * 4
    store = open_store(url)
    assert [k.name for k in kitchens.every(store)] == ["k0", "k1", "k2", "k3"]
    with store.read() as connection:
        assert is_current(connection)
    assert sum(k.in_use for k in kitchens.every(store)) == 1
