"""What is kept on disk is what would be worked out, or is not used."""

import os
import pickle
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

import pytest

from rules import kept as module
from rules.kept import keep_in, kept

made: list[str] = []


@dataclass(frozen=True, slots=True)
class Row:
    name: str
    weights: tuple[float, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Checked:
    name: str

    def __post_init__(self) -> None:
        assert self.name


def rows(which: str) -> dict[str, Row | Checked]:
    made.append(which)
    return {"oats": Row("oats", (1.5, 2.0)), "rye": Checked(name="rye")}


@pytest.fixture(autouse=True)
def nothing_kept() -> Iterator[None]:
    made.clear()
    yield
    module._folder = None


def files(folder: Path) -> list[Path]:
    return [path for path in folder.rglob("*") if path.is_file()]


def test_nothing_is_kept_before_it_is_asked_for(tmp_path: Path) -> None:
    kept(rows)("a/b.csv")
    assert files(tmp_path) == []


def test_what_is_kept_is_read_by_the_next_process(tmp_path: Path) -> None:
    keep_in(tmp_path)
    first, second = kept(rows)("a/b.csv"), kept(rows)("a/b.csv")
    assert made == ["a/b.csv"]
    assert first == second
    assert first is not second


def test_another_argument_is_another_thing(tmp_path: Path) -> None:
    keep_in(tmp_path)
    kept(rows)("a")
    kept(rows)("b")
    assert made == ["a", "b"]


@pytest.mark.parametrize("spoilt", [b"", b"short", b"0" * 400])
def test_a_file_that_is_not_as_it_was_written_is_made_again(tmp_path: Path, spoilt: bytes) -> None:
    keep_in(tmp_path)
    whole = kept(rows)("a")
    (file,) = files(tmp_path)
    file.write_bytes(spoilt)
    assert kept(rows)("a") == whole
    assert kept(rows)("a") == whole
    assert made == ["a", "a"]


def test_half_a_file_is_made_again(tmp_path: Path) -> None:
    keep_in(tmp_path)
    whole = kept(rows)("a")
    (file,) = files(tmp_path)
    file.write_bytes(file.read_bytes()[:-3])
    assert kept(rows)("a") == whole
    assert made == ["a", "a"]


def test_a_changed_file_of_data_is_another_stamp(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    (tmp_path / "data").mkdir()
    table = tmp_path / "data" / "table.csv"
    table.write_text("rye,1\n")
    monkeypatch.setattr(module, "PACKAGES", tmp_path)
    before = module.stamp()
    assert module.stamp() == before
    table.write_text("rye,2\n")
    os.utime(table, ns=(1, 1))
    assert module.stamp() != before


def test_what_was_kept_of_another_state_is_thrown_away(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    keep_in(tmp_path)
    kept(rows)("a")
    monkeypatch.setattr(module, "stamp", lambda: "later")
    keep_in(tmp_path)
    assert files(tmp_path) == []
    kept(rows)("a")
    assert [file.parent.name for file in files(tmp_path)] == ["later"]


def test_a_folder_that_others_may_write_to_is_not_used(tmp_path: Path) -> None:
    keep_in(tmp_path)
    kept(rows)("a")
    (file,) = files(tmp_path)
    file.parent.chmod(0o777)
    keep_in(tmp_path)
    assert kept(rows)("a")
    assert made == ["a", "a"]


def test_a_folder_that_cannot_be_made_is_done_without(tmp_path: Path) -> None:
    (tmp_path / "file").write_text("")
    keep_in(tmp_path / "file" / "below")
    assert kept(rows)("a")
    assert made == ["a"]


def test_a_folder_that_cannot_be_written_to_is_done_without(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def full(*_: object, **__: object) -> None:
        raise OSError(28, "No space left on device")

    keep_in(tmp_path)
    monkeypatch.setattr(module.tempfile, "NamedTemporaryFile", full)
    assert kept(rows)("a") == kept(rows)("a")
    assert files(tmp_path) == []


def test_a_class_that_checks_what_it_is_given_checks_it_once(tmp_path: Path) -> None:
    keep_in(tmp_path)
    kept(rows)("a")
    (file,) = files(tmp_path)
    (found,) = pickle.loads(file.read_bytes()[module.DIGEST_BYTES :])
    assert found == {"oats": Row("oats", (1.5, 2.0)), "rye": Checked(name="rye")}
