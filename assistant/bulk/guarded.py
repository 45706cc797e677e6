"""Parts done by benches that are watched: what stops or kills one is tried again, and in the end left out and told of.

The same on this machine and on a worker of a Dask cluster, so that a recipe never takes a worker of the cluster along.
"""

from __future__ import annotations

import os
import subprocess
import sys
import threading
from collections import Counter
from dataclasses import replace
from multiprocessing import Pipe
from pathlib import Path
from typing import Any

import assistant
from assistant.bulk.bench import MOST_MEMORY, NO_MEMORY
from assistant.bulk.faults import Fault
from assistant.bulk.parts import Finished, Order, made_by
from assistant.errors import AssistantError

# a bench has to be loaded within this time [s]
LONGEST_START_S = 300.0
# so many conversions a recipe may take its time for once more
PER_CONVERSIONS = 1000

_own = threading.local()
_every: set[Bench] = set()
_over = threading.Event()


class BenchError(AssistantError):
    """Work that cannot be done here, whatever recipe it is; the message says why."""


class Died(Exception):
    """A bench that is no more. why: in words"""


class Bench:
    """A process that converts."""

    def __init__(self) -> None:
        self._line, theirs = Pipe()
        root = str(Path(assistant.__file__).parents[1])
        paths = os.pathsep.join(filter(None, (root, os.environ.get("PYTHONPATH", ""))))
        self._process = subprocess.Popen(
            [sys.executable, "-m", "assistant.bulk.bench", str(theirs.fileno())],
            pass_fds=(theirs.fileno(),),
            stdin=subprocess.DEVNULL,
            env={**os.environ, "PYTHONPATH": paths},
        )
        theirs.close()
        _every.add(self)

    @property
    def lives(self) -> bool:
        """Whether it can be given work."""
        return self._process.poll() is None

    def give(self, order: Order) -> None:
        """Give it a part.

        raises: Died
        """
        try:
            self._line.send(order)
        except OSError:
            raise Died(self._end()) from None

    def told(self, within_s: float) -> tuple[str, Any]:
        """The next thing it tells.

        raises: Died, also where it tells nothing within that time
        """
        try:
            if self._line.poll(within_s):
                said: tuple[str, Any] = self._line.recv()
                return said
        except (EOFError, OSError):
            raise Died(self._end()) from None
        self.end()
        raise Died(f"it took longer than {within_s:.0f} s")

    def end(self) -> None:
        """End it."""
        _every.discard(self)
        self._process.kill()
        self._process.wait()
        self._line.close()

    def _end(self) -> str:
        _every.discard(self)
        self._line.close()
        code = self._process.wait()
        if code == NO_MEMORY:
            return f"it wants more than {MOST_MEMORY >> 30} GB of memory"
        ended = f"was killed by signal {-code}" if code < 0 else f"ended with code {code}"
        return f"the process that worked on it {ended}"


def done(order: Order) -> Finished:
    """Do a part; what comes of its recipes, and those that were given up.

    raises: BenchError where the machine cannot do it
    """
    if order.made_by != made_by():
        raise BenchError("a worker has another version of simmerline or of its data; install the same on all")
    tries: Counter[int | None] = Counter()
    given_up: list[Fault] = []
    while True:
        at: list[int] = []
        try:
            found = _through(order, at)
        except Died as died:
            if _over.is_set():
                raise BenchError("it was stopped") from None
            culprit = at[-1] if at else None
            tries[culprit] += 1
            if tries[culprit] < order.tries:
                continue
            if culprit is None or culprit >= len(order.part.recipes):
                raise BenchError(f"{order.part.name} cannot be done here: {died}") from None
            recipe = order.part.recipes[culprit].id
            given_up.append(Fault(kind="recipe", recipe=recipe, tries=tries[culprit], problem=f"given up: {died}"))
            order = replace(order, given_up=order.given_up | {recipe})
        else:
            return replace(found, faults=(*found.faults, *given_up))


def _through(order: Order, at: list[int]) -> Finished:
    """A part done by the bench of this thread. at: is told which recipe was begun"""
    bench = _bench()
    bench.give(order)
    within_s, places = LONGEST_START_S, len({place for _, place in order.kitchens})
    while True:
        kind, value = bench.told(within_s)
        if kind == "done":
            found: Finished = value
            return found
        if kind == "failed":
            raise BenchError(value)
        at.append(value)
        within_s = order.limit_s * (1 + places / PER_CONVERSIONS)


def _bench() -> Bench:
    bench: Bench | None = getattr(_own, "bench", None)
    if bench is None or not bench.lives:
        if bench:
            bench.end()
        bench = _own.bench = Bench()
    return bench


def end_all() -> None:
    """End every bench of this process, for good: what they were busy with is not tried again."""
    _over.set()
    for bench in tuple(_every):
        bench.end()
