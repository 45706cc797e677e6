"""What the commands that take a menu share: the menu, its kitchen, its covers, and the form of what comes of it."""

from __future__ import annotations

import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from types import ModuleType
from typing import TYPE_CHECKING, Any

import typer

from assistant.cli import exits
from assistant.cli.taken_for_granted import Units, kitchen_for
from assistant.files import first_bytes

if TYPE_CHECKING:
    from assistant.planning.forms import Form
    from assistant.planning.menu import Menu
    from rules.model import Kitchen
    from rules.model import Units as System

STDIN = "-"
TEXT, TERMINAL = "text", "terminal"
ASK_ELEVATION = (
    "where will you cook? Say --at 7000ft or a town, or keep your kitchen once: "
    'simmerline kitchen add "Timberfold Lodge" --at 7000ft'
)


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
        return first_bytes(path, most)
    except (OSError, ValueError) as error:
        exits.leave(
            f"cannot read {path}: {(getattr(error, 'strerror', None) or 'that is no name of a file').lower()}",
            exits.FAILED,
        )


def kitchen_of(menu: Menu, at: str | None, name: str | None, units: Units | None) -> Kitchen:
    """Where a menu is cooked: by the options, else as its head says, else in the kitchen in use; leaves with code 3
    where nobody says the elevation."""
    told = at or (menu.at if name is None else None) or None
    kitchen = kitchen_for(told, units, name or (menu.kitchen or None if told is None else None))
    if kitchen.elevation_m is None:
        exits.leave(ASK_ELEVATION, exits.ASKS_BACK)
    return kitchen


@contextmanager
def figures_told() -> Iterator[None]:
    """Leaves with code 2 where an option holds a figure that no kitchen has."""
    from assistant.planning.asked import BadFigure

    try:
        yield
    except BadFigure as fault:
        exits.leave(f"--{fault}")


def form_asked_for(forms: ModuleType, name: str | None, out: Path | None, *, command: str) -> Form[Any]:
    """The form that is asked for, by its name or by the ending of the file; leaves with code 2 where there is none.

    forms: the package that holds a module a form
    """
    if name is None:
        ending = out.suffix.lower() if out else None
        fallback = TERMINAL if out is None and sys.stdout.isatty() else TEXT
        name = next((n for n in forms.names() if n != TERMINAL and forms.form(n).ending == ending), fallback)
    if name not in forms.names():
        exits.leave(f"--format {name} is none of {', '.join(forms.names())}")
    found: Form[Any] = forms.form(name)
    if found.binary and out is None:
        exits.leave(f"--format {name} needs a file: --out {command}{found.ending}")
    return found


def show(made: Any, form: Form[Any], units: System) -> None:
    """Print what was made: on a screen as wide as it is, where the form can."""
    if form.show and sys.stdout.isatty():
        form.show(made, units)
    else:
        typer.echo(form.write(made, units).decode(), nl=False)
