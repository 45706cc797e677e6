"""The short way to the kitchen in use gives what the long way gives."""

import subprocess
import sys
from pathlib import Path

import pytest

from assistant.store import StoreError, kitchens, open_store
from assistant.store.kitchens import SavedKitchen
from assistant.store.quick import kitchen_in_use, through_the_store
from assistant.store.where import database_url, default_file, sqlite_file

LODGE = SavedKitchen(
    name="Timberfold Lodge",
    elevation_m=2133.6,
    units="metric",
    equipment=("pressure_cooker",),
    barometer_offset_pa=150.0,
    thermometer_offset_c=-0.5,
)


def test_without_a_store_there_is_no_kitchen_and_none_is_made(database: str) -> None:
    assert kitchen_in_use() is None
    assert not sqlite_file(database).exists()


@pytest.mark.parametrize("kitchen", [LODGE, SavedKitchen(name="Anywhere")])
def test_both_ways_agree(database: str, kitchen: SavedKitchen) -> None:
    store = open_store()
    assert kitchen_in_use() is None
    kitchens.add(store, kitchen)
    assert kitchen_in_use() == through_the_store() == kitchen.taken_for_granted()
    kitchens.use(store, None)
    assert kitchen_in_use() is None


def test_the_short_way_does_without_sqlalchemy(database: str) -> None:
    kitchens.add(open_store(), LODGE)
    code = (
        "import sys; from assistant.store.quick import kitchen_in_use;"
        "assert kitchen_in_use().name == 'Timberfold Lodge'; print('sqlalchemy' in sys.modules)"
    )
    out = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True).stdout
    assert out.strip() == "False"


def test_a_store_that_cannot_be_read_is_told(database: str) -> None:
    sqlite_file(database).write_text("a shopping list, far longer than the head of a database\n" * 50)
    with pytest.raises(StoreError, match="not a database"):
        kitchen_in_use()


def test_another_kind_of_database_goes_the_long_way(monkeypatch: pytest.MonkeyPatch, postgres: str) -> None:
    monkeypatch.setenv("SIMMERLINE_DB", postgres)
    store = open_store()
    kitchens.add(store, LODGE)
    assert kitchen_in_use() == LODGE.taken_for_granted()
    store.close()


def test_the_default_is_a_file_in_the_data_folder(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    monkeypatch.delenv("SIMMERLINE_DB")
    monkeypatch.setenv("XDG_DATA_HOME", f"{tmp_path}/50% done #1 ß")
    assert default_file().name == "simmerline.db"
    assert sqlite_file(database_url()) == default_file()
    open_store().close()
    assert default_file().is_file()
