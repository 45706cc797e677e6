"""The menu of a command that takes one: a file, a folder of recipes or standard input."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import TYPE_CHECKING

from assistant.cli import exits

if TYPE_CHECKING:
    from assistant.planning.menu import Menu

STDIN = "-"
MOST_COVERS = 100_000


def menu_of(name: str | None, *, command: str) -> Menu:
    """The menu of a file, of a folder of recipes or of standard input; leaves with code 2 or 1 where there is none."""
    from assistant.planning import menu

    if name is None and sys.stdin.isatty():
        exits.leave(f"{command} for which menu? For example: simmerline {command} saturday.txt --at 7000ft --covers 90")
    if name in (None, STDIN):
        return menu.read_menu(sys.stdin.buffer.read(menu.MOST_BYTES + 1))
    path = Path(name or "")
    if path.is_dir():
        files = sorted(p for p in path.rglob("*") if p.is_file() and p.suffix.lower() in menu.RECIPES)
        if not files:
            exits.leave(f"there are no recipes in {name}")
        return menu.of_folder(files, path.name)
    return menu.read_menu(content_of(path, menu.MOST_BYTES + 1), path.parent)


def content_of(path: Path, most: int) -> bytes:
    """The first bytes of a file; leaves with code 1 where it cannot be read."""
    try:
        with path.open("rb") as file:
            return file.read(most)
    except (OSError, ValueError) as error:
        exits.leave(
            f"cannot read {path}: {(getattr(error, 'strerror', None) or 'that is no name of a file').lower()}",
            exits.FAILED,
        )
