"""What a turn asks to be done beside the conversation, which whoever holds it does: write a file, keep batches."""

from __future__ import annotations

import os
import re
import unicodedata
from contextlib import suppress
from dataclasses import dataclass
from pathlib import Path

from assistant.dialogue.workbench import Run
from assistant.files import AlreadyThere, NotWritten, write_all
from rules.model import Request

# the note of a batch that was taken back
GONE = "\0gone"
LONGEST_NAME, MOST_COPIES = 60, 1000
# names that Windows keeps for devices, whatever ending they have
DEVICES = frozenset({"con", "prn", "aux", "nul"} | {f"{port}{n}" for port in ("com", "lpt") for n in range(10)})


@dataclass(frozen=True, slots=True)
class WriteFile:
    """A text to be written into a new file. name: without a folder, as the cook or the recipe calls it"""

    name: str
    text: str


@dataclass(frozen=True, slots=True)
class Draw:
    """A picture to be drawn into a new file. kind: a plot by its name, or plan; question: what it is of, and where"""

    kind: str
    name: str
    question: Request


@dataclass(frozen=True, slots=True)
class LogRun:
    """The batches of a run to be kept in the log; those that are there already are put right."""

    run: Run
    kitchen: str = ""


Deed = WriteFile | Draw | LogRun


def safe_name(name: str, ending: str = ".txt") -> str:
    """A name that stays in its folder on any system: small letters, figures and hyphens.

    >>> safe_name("../My Aunt's Rolls, 7,000 ft"), safe_name("..."), safe_name("Con: Queso"), safe_name("CON")
    ('my-aunts-rolls-7000-ft.txt', 'recipe.txt', 'con-queso.txt', 'con-recipe.txt')
    """
    plain = unicodedata.normalize("NFKD", name).encode("ascii", "ignore").decode().lower()
    plain = re.sub(r"['’,]", "", plain)
    stem = re.sub(r"[^a-z0-9]+", "-", plain).strip("-")[:LONGEST_NAME].strip("-")
    return f"{f'{stem}-recipe' if stem in DEVICES else stem or 'recipe'}{ending}"


def write_new(folder: Path, name: str, content: bytes) -> Path:
    """Write the content into a new file of the folder; one that is there is never written over.

    raises: NotWritten
    """
    if not folder.is_dir():
        raise NotWritten(folder, "there is no such folder")
    stem, dot, ending = name.rpartition(".")
    for copy in range(1, MOST_COPIES):
        path = folder / (name if copy == 1 else f"{stem}-{copy}{dot}{ending}")
        if os.path.lexists(path):
            continue
        with suppress(AlreadyThere):
            write_all({path: content})
            return path
    raise AlreadyThere(folder / name, "so are a thousand of that name")
