"""Files are written whole or not at all, and what is there stays."""

from __future__ import annotations

import errno
import os
from pathlib import Path

import pytest

from assistant import files
from assistant.files import AlreadyThere, NotWritten, opened, write_all


def names(folder: Path) -> list[str]:
    return sorted(path.name for path in folder.iterdir())


def test_a_file_that_is_there_is_replaced_only_where_that_is_wanted(tmp_path: Path) -> None:
    card, key = tmp_path / "card.txt", tmp_path / "new" / "key.txt"
    card.write_text("kept")
    card.chmod(0o640)
    with pytest.raises(AlreadyThere):
        write_all({key: b"key", card: b"card"})
    assert (names(tmp_path), card.read_text()) == (["card.txt"], "kept")
    write_all({key: b"key", card: b"card"}, over=True)
    assert (card.read_text(), key.read_text(), card.stat().st_mode & 0o777) == ("card", "key", 0o640)
    assert names(tmp_path) == ["card.txt", "new"]


@pytest.mark.parametrize("what", ["link", "hanging link", "folder", "pipe", "file on the way", "long", "nul"])
def test_what_is_no_place_for_a_file_is_refused(what: str, tmp_path: Path) -> None:
    there, out = tmp_path / "there", tmp_path / "out.txt"
    there.write_text("kept")
    match what:
        case "link":
            out.symlink_to(there)
        case "hanging link":
            out.symlink_to(tmp_path / "nowhere")
        case "folder":
            out.mkdir()
        case "pipe":
            os.mkfifo(out)
        case "file on the way":
            out = there / "out.txt"
        case "long":
            out = tmp_path / ("x" * 300)
        case "nul":
            out = tmp_path / "a\0b"
    before = names(tmp_path)
    with pytest.raises(NotWritten):
        write_all({out: b"card"}, over=True)
    assert (names(tmp_path), there.read_text()) == (before, "kept")


@pytest.mark.parametrize("over", [False, True])
def test_a_full_disk_leaves_nothing_behind_and_what_was_there(over, tmp_path, monkeypatch) -> None:
    card = tmp_path / "card.txt"
    card.write_text("kept")

    class Full:
        def __init__(self, file):
            self.file = file

        def __enter__(self):
            return self

        def __exit__(self, *_):
            self.file.close()

        def write(self, content):
            self.file.write(content[:1])
            raise OSError(errno.ENOSPC, "No space left on device")

    opened = Path.open
    monkeypatch.setattr(Path, "open", lambda path, mode: Full(opened(path, mode)))
    out = card if over else tmp_path / "other.txt"
    with pytest.raises(NotWritten, match="the disk is full; make room"):
        write_all({out: b"a whole card"}, over=over)
    monkeypatch.undo()
    assert (names(tmp_path), card.read_text()) == (["card.txt"], "kept")


def test_a_disk_without_links_is_written_too(tmp_path, monkeypatch) -> None:
    def refuse(path, target):
        raise PermissionError(errno.EPERM, "Operation not permitted")

    monkeypatch.setattr(Path, "hardlink_to", refuse)
    write_all({tmp_path / "card.txt": b"card"})
    assert (names(tmp_path), (tmp_path / "card.txt").read_text()) == (["card.txt"], "card")


def test_lines_of_a_pipe_that_nobody_fills_are_not_waited_for(tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "pipe")
    with opened(tmp_path / "pipe") as pipe:
        assert pipe.read(10) == b""


@pytest.mark.parametrize("longest", [3, 5, 100])
def test_no_line_is_read_further_than_shows_that_it_is_long(longest: int, tmp_path: Path) -> None:
    (tmp_path / "asked").write_bytes(b"abcdefgh\nxy\n\nend")
    with files.opened(tmp_path / "asked") as file:
        found = list(files.lines_of(file, longest))
    assert found == [b"abcdefgh\n"[: longest + 1], b"xy\n", b"\n", b"end"]
