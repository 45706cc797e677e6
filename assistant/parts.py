"""What simmerline can do here: its parts, which of them are installed, and the command that adds one that is not."""

from __future__ import annotations

import shutil
from collections.abc import Iterator
from dataclasses import dataclass
from importlib.metadata import PackageNotFoundError, version
from importlib.util import find_spec


@dataclass(frozen=True, slots=True, kw_only=True)
class Part:
    """A part that can be left out.

    does: what it is for; modules, programs: all that it needs; get: the command that installs it
    """

    id: str
    does: str
    get: str
    modules: tuple[str, ...] = ()
    programs: tuple[str, ...] = ()


PARTS = (
    Part(
        id="print",
        does="draws the wall card and plots, and sets lessons as PDF",
        get='pip install "simmerline[print]"',
        modules=("matplotlib", "reportlab"),
    ),
    Part(
        id="plan",
        does="finds the schedule of least waiting where dishes want the same thing",
        get='pip install "simmerline[plan]"',
        modules=("scipy",),
    ),
    Part(
        id="bulk",
        does="converts many recipes for many kitchens at once, here or on a Dask cluster",
        get='pip install "simmerline[bulk]"',
        modules=("pyarrow", "dask", "distributed"),
    ),
    Part(
        id="voice",
        does="understands what is said aloud, offline",
        get='pip install "simmerline[voice]"',
        modules=("moonshine_voice",),
    ),
    Part(
        id="speech",
        does="reads answers aloud by itself; a browser has a voice of its own",
        get="sudo apt-get install espeak-ng",
        programs=("espeak-ng",),
    ),
)


def part(id: str) -> Part:
    """The part of an id."""
    return next(part for part in PARTS if part.id == id)


def is_there(id: str) -> bool:
    """Whether a part is installed."""
    return not lacks(part(id))


def lacks(part: Part) -> tuple[str, ...]:
    """What a part needs and is not installed."""
    modules = (name for name in part.modules if not _importable(name))
    return (*modules, *(name for name in part.programs if shutil.which(name) is None))


def _importable(name: str) -> bool:
    try:
        return find_spec(name) is not None
    except ModuleNotFoundError:
        return False


def versions() -> Iterator[tuple[str, str]]:
    """The libraries that answers come from, each with its version."""
    for name in ("simmerline", "spacy", "sqlalchemy", "rasa-sdk", "sanic", "sanic-ext"):
        try:
            yield name, version(name)
        except PackageNotFoundError:
            yield name, ""
