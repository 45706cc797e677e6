"""Which parts are done: a line of JSON for each, added when its file has its name."""

from __future__ import annotations

import fcntl
import json
import os
from collections.abc import Iterable, Iterator
from dataclasses import asdict
from pathlib import Path
from typing import Any

from assistant.bulk.faults import Fault
from assistant.bulk.parts import Finished, Part
from assistant.errors import AssistantError

NAME = "manifest.jsonl"
ENDING, UNFINISHED = ".parquet", ".tmp"


class Taken(AssistantError):
    """A folder that another run is writing to."""


class Manifest:
    """The parts that are done in a folder, and the one run that may add to them."""

    def __init__(self, folder: Path, results: Path) -> None:
        self.results = results
        self._path = folder / NAME
        self._file = self._path.open("a", encoding="utf-8")
        try:
            fcntl.flock(self._file, fcntl.LOCK_EX | fcntl.LOCK_NB)
        except OSError:
            self._file.close()
            raise Taken(f"another run is writing to {folder}; wait for it, or name another folder") from None
        self._done = dict(self._read())

    def finished(self, part: Part) -> Finished | None:
        """What came of a part that is done with just these recipes, kitchens, options and data; None for any other."""
        told = self._done.get(part.name)
        if told is None or told["key"] != part.key or not self._file_of(part.name).exists():
            return None
        return Finished(rows=told["rows"], faults=tuple(Fault(**fault) for fault in told["faults"]))

    def add(self, part: Part, found: Finished) -> None:
        """Note that a part is done."""
        told = {"part": part.name, "key": part.key, "rows": found.rows, "faults": [asdict(f) for f in found.faults]}
        self._file.write(json.dumps(told) + "\n")
        self._file.flush()
        os.fsync(self._file.fileno())
        self._done[part.name] = told

    def clear(self, parts: Iterable[Part]) -> int:
        """Take away the files of parts that are no part of this run, and how many; a file of anybody else stays."""
        kept = {part.name for part in parts if self.finished(part)}
        old = [name for name in self._done if name not in kept and self._file_of(name).exists()]
        for name in old:
            self._file_of(name).unlink()
        self._sweep()
        return len(old)

    def close(self) -> None:
        """Let another run write."""
        self._sweep()
        self._file.close()

    def _sweep(self) -> None:
        """Take away what was begun by somebody who was killed."""
        for begun in self.results.glob(f".part-*{UNFINISHED}"):
            begun.unlink(missing_ok=True)

    def _file_of(self, name: str) -> Path:
        return self.results / f"{name}{ENDING}"

    def _read(self) -> Iterator[tuple[str, dict[str, Any]]]:
        for line in self._path.read_text(encoding="utf-8").splitlines():
            try:
                told = json.loads(line)
            except json.JSONDecodeError:
                continue  # of a run that was killed while it wrote
            yield told["part"], told
