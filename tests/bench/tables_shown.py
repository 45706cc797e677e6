"""What the speed tables share: processor time, rows as Markdown, and kind words where a library is missing."""

from __future__ import annotations

import time
from collections.abc import Callable, Sequence
from importlib import import_module
from types import ModuleType

Row = Sequence[object]


def library(name: str, package: str) -> ModuleType | None:
    """A library to compare with, or None and a line that says how to get it."""
    try:
        return import_module(name)
    except ImportError:
        print(
            f"Skipped: needs {package}, which nothing else here does: pip install {package}, best in an\n"
            "environment of its own.\n"
        )
        return None


def cpu_s(work: Callable[[], object], rounds: int) -> float:
    """The shortest processor time of a piece of work among some rounds [s]."""
    times = []
    for _ in range(rounds):
        start = time.process_time()
        work()
        times.append(time.process_time() - start)
    return min(times)


def show(title: str, head: Row, rows: Sequence[Row], note: str = "") -> None:
    """Print a table."""
    print(f"## {title}\n")
    for row in (head, ["---"] * len(head), *rows):
        print("| " + " | ".join(str(cell) for cell in row) + " |")
    print(f"\n{note}\n" if note else "")
