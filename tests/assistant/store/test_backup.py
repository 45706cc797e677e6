"""All that is kept, written down and put back, from either kind of database into either."""

from __future__ import annotations

import json
import stat
from collections.abc import Callable
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

import pytest
from sqlalchemy import text
from typer.testing import CliRunner

from assistant.cli.app import create_app
from assistant.dialogue.timer import Timer
from assistant.store import StoreError, batches, conversations, kitchens, open_store, progress, timers
from assistant.store.backup import LAYOUT, TABLES, BadBackup, StoreNotEmpty, backup, restore
from assistant.store.batches import Batch
from assistant.store.conversations import Utterance
from assistant.store.database import Store
from assistant.store.kitchens import SavedKitchen
from assistant.store.progress import DrillAnswer

NOON = datetime(2026, 3, 7, 12, 0, 0, 123456, tzinfo=UTC)
FEW = 5
LODGE = SavedKitchen(name="Timberfold Lodge", elevation_m=2133.6, units="metric", equipment=("pressure_cooker",))


@pytest.fixture(autouse=True)
def few_at_once(monkeypatch: pytest.MonkeyPatch) -> None:
    """Rows are put back in several goes."""
    monkeypatch.setattr("assistant.store.backup.AT_ONCE", FEW)


def filled(store: Store) -> Store:
    """The store with something in each of its tables, and words that files and databases stumble over."""
    kitchens.add(store, LODGE)
    kitchens.add(store, SavedKitchen(name="Bäckerei »Höhe«", place="a\nb\tc\u2028\\\"'"), owner="somebody")
    conversations.begin(store, "web-somebody", "web", NOON)
    for n in range(2 * FEW + 1):
        conversations.say(store, "web-somebody", Utterance("cook", f"{n} 🥘", NOON + timedelta(seconds=n), {"n": [n]}))
    batch = Batch(recipe="butter cake", made_on=date(2026, 3, 7), style="layer_cake", kitchen="", elevation_m=None,
                  symptoms=("sank",), note="", changes=())  # fmt: skip
    batches.add(store, batch)
    timers.add(
        store, Timer(name="beans", conversation="web-somebody", starts_at=NOON, ends_at=NOON + timedelta(hours=1))
    )
    progress.record(store, DrillAnswer("Anna", 2**40, "boil", True, NOON))
    return store


@pytest.fixture
def other(tmp_path: Path) -> Store:
    """An empty SQLite store beside the first."""
    return open_store(f"sqlite:///{tmp_path}/other.db")


def test_what_was_kept_comes_back_to_the_last_letter(store: Store, other: Store) -> None:
    lines = list(backup(filled(store)))
    counts = restore(other, lines)
    assert list(backup(other)) == lines
    assert set(counts) == {table.name for table in TABLES}
    assert kitchens.in_use(other) == kitchens.in_use(store)
    assert conversations.said(other, "web-somebody") == conversations.said(store, "web-somebody")
    assert batches.every(other) == batches.every(store)
    # and the other way round, into whichever database the first one is
    restore(store, backup(other), replacing=True)
    assert list(backup(store)) == lines


def test_rows_that_come_after_get_numbers_of_their_own(store: Store, other: Store) -> None:
    restore(store, list(backup(filled(other))))
    kitchens.add(store, SavedKitchen(name="Bakery"))
    conversations.say(store, "web-somebody", Utterance("cook", "and more", NOON))
    assert kitchens.named(store, "bakery").name == "Bakery"
    restore(store, list(backup(open_store("sqlite://"))), replacing=True)
    kitchens.add(store, SavedKitchen(name="Bakery"))
    assert [k.name for k in kitchens.every(store)] == ["Bakery"]


def test_a_backup_is_of_one_moment(store: Store) -> None:
    lines = backup(filled(store))
    begun = [next(lines), next(lines)]
    progress.record(store, DrillAnswer("Late", 1, "boil", True, NOON))
    conversations.begin(store, "late", "web", NOON)
    whole = [*begun, *lines]
    assert "Late" not in "".join(whole)
    assert json.loads(whole[-1]) == {"rows": len(whole) - 2}


def test_a_store_that_holds_something_is_not_written_over(store: Store, other: Store) -> None:
    lines = list(backup(filled(other)))
    kitchens.add(store, SavedKitchen(name="Bakery"))
    with pytest.raises(StoreNotEmpty, match="kitchens: 1"):
        restore(store, lines)
    assert [k.name for k in kitchens.every(store)] == ["Bakery"]
    restore(store, lines, replacing=True)
    assert [k.name for k in kitchens.every(store)] == ["Timberfold Lodge"]


def cut_off(lines: list[str]) -> list[str]:
    return lines[:-1]


def one_row_lost(lines: list[str]) -> list[str]:
    return [line for line in lines if '"table":"timers"' not in line]


def torn(lines: list[str]) -> list[str]:
    return [*lines[:-2], lines[-2][:20], lines[-1]]


def twice(lines: list[str]) -> list[str]:
    return [*lines[:2], lines[1], *lines[2:-1], json.dumps({"rows": len(lines) - 1})]


def changed(find: str, put: str) -> Callable[[list[str]], list[str]]:
    return lambda lines: [line.replace(find, put) for line in lines]


@pytest.mark.parametrize(
    ("spoil", "says"),
    [
        (lambda _: [], "the file is empty"),
        (lambda _: ["a shopping list", "eggs"], "line 1 of the backup is no JSON object"),
        (lambda _: ['{"name": "cake"}'], "does not begin a backup of ours"),
        (cut_off, "the file was cut off"),
        (one_row_lost, "rows, and there are"),
        (torn, "is no JSON object"),
        (twice, "contradicts another"),
        (lambda lines: [*lines, "{}"], "stands behind its end"),
        (changed(f'"layout":{LAYOUT}', f'"layout":{LAYOUT + 1}'), "of a newer simmerline"),
        (changed('"version":1', '"version":2'), "of a newer simmerline"),
        (changed('"table":"timers"', '"table":"clocks"'), "no row of a table"),
        (changed('"table":"timers","row":{', '"table":"timers","row":{"lap":1,'), "timers has not: lap"),
        (changed('"rang":false', '"rang":0'), "has no bool for rang"),
        (changed('"elevation_m":2133.6', '"elevation_m":"high"'), "has no int or float for elevation_m"),
        (changed('"made_on":"2026-03-07"', '"made_on":"Saturday"'), "has no moment for made_on"),
        (changed('"seed":1099511627776', '"seed":true'), "has no int for seed"),
        (changed("+00:00", ""), "has no moment for"),
        (changed('"who":"cook"', '"who":null'), "has no str for who"),
        (changed('"conversation_id":"web-somebody"', '"conversation_id":"nobody"'), "contradicts another"),
    ],
)  # fmt: skip
def test_what_is_no_whole_backup_changes_nothing(
    spoil: Callable[[list[str]], list[str]], says: str, store: Store, other: Store
) -> None:
    lines = spoil(list(backup(filled(other))))
    kitchens.add(store, SavedKitchen(name="Bakery"))
    before = list(backup(store))
    with pytest.raises(BadBackup, match=says):
        restore(store, lines, replacing=True)
    assert list(backup(store)) == before


def test_a_backup_of_an_older_layout_is_taken(other: Store, store: Store) -> None:
    lines = list(backup(filled(other)))
    older = []
    for line in lines:
        content = json.loads(line)
        for column in ("from_elevation_m", "compared", "formula"):
            content.get("row", {}).pop(column, None)
        older.append(json.dumps({**content, "layout": 1} if "layout" in content else content))
    restore(store, older)
    assert batches.every(store) == batches.every(other)


def test_a_row_that_cannot_be_read_is_told(other: Store) -> None:
    kitchens.add(other, LODGE)
    with other.write() as connection:
        connection.execute(text("UPDATE kitchens SET equipment = 'no list'"))
    with pytest.raises(StoreError, match="kitchens in the database cannot be read"):
        list(backup(other))


def run(*arguments: str, given: str | None = None) -> tuple[int, str]:
    done = CliRunner().invoke(create_app(["store"]), ["store", *arguments], input=given)
    return done.exit_code, done.stdout + done.stderr


@pytest.mark.usefixtures("database")
def test_by_command(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    file = tmp_path / "lodge.jsonl"
    kitchens.add(open_store(), LODGE)
    assert run("backup", str(file)) == (0, f"Written: {file} (3 lines)\n")
    assert stat.S_IMODE(file.stat().st_mode) == 0o600
    assert run("backup", "-") == (0, file.read_text())
    code, said = run("backup", str(file))
    assert (code, "is there already; --force writes over it" in said) == (1, True)
    assert run("backup", str(file), "--force")[0] == 0
    code, said = run("restore", str(file))
    assert (code, "--force puts the backup in its place" in said) == (1, True)
    monkeypatch.setenv("SIMMERLINE_DB", f"sqlite:///{tmp_path}/new.db")
    assert run("restore", str(file)) == (0, "Put back: kitchens: 1\n")
    assert run("restore", "-", "--force", given=file.read_text()) == (0, "Put back: kitchens: 1\n")
    assert kitchens.in_use(open_store()) is not None
    (tmp_path / "photo.jpg").write_bytes(b"\xff\xd8\xff")
    code, said = run("restore", str(tmp_path / "photo.jpg"), "--force")
    assert (code, "line 1 of the backup is no text" in said) == (1, True)
    assert run("restore", str(tmp_path / "nowhere"))[0] == 1
    assert sorted(path.name for path in tmp_path.glob(".*")) == []


@pytest.mark.usefixtures("database")
def test_a_backup_never_writes_through_a_link(tmp_path: Path) -> None:
    (tmp_path / "precious.txt").write_text("mine")
    (tmp_path / "link").symlink_to(tmp_path / "precious.txt")
    code, said = run("backup", str(tmp_path / "link"), "--force")
    assert (code, "is a link" in said) == (1, True)
    assert (tmp_path / "precious.txt").read_text() == "mine"
