"""A run: the parts that are not done yet, handed out, noted as they come back; and the table of what could not be."""

from __future__ import annotations

import os
from collections import Counter, deque
from collections.abc import Callable, Iterator, Sequence
from concurrent.futures import FIRST_COMPLETED, Future, wait
from dataclasses import asdict, dataclass, field
from pathlib import Path
from threading import Event

import pyarrow as pa
import pyarrow.parquet as pq

from assistant.bulk import schema
from assistant.bulk.crews import Crew
from assistant.bulk.faults import Fault
from assistant.bulk.guarded import BenchError, done
from assistant.bulk.manifest import Manifest
from assistant.bulk.parts import Finished, Order, Part

CONVERSIONS, ERRORS = "conversions", "errors.parquet"
# how soon a wish to stop is heard [s]
LOOK_S = 0.25


@dataclass(slots=True)
class Tally:
    """How far a run is, in pairs of a recipe and a kitchen.

    kept: of parts that were done before; done: of this run; rows: pairs that were converted, of both
    """

    pairs: int
    kept: int = 0
    done: int = 0
    rows: int = 0
    faults: list[Fault] = field(default_factory=list)

    @property
    def whole(self) -> bool:
        """Whether nothing is left to do."""
        return self.kept + self.done == self.pairs


Told = Callable[[Tally], None]


@dataclass(kw_only=True)
class Run:
    """Parts on their way.

    order: a part as it is handed out; told: is told how far it is, whenever that has changed
    stop: nothing more is begun once it is set; what was begun is finished
    """

    parts: Sequence[Part]
    order: Callable[[Part], Order]
    manifest: Manifest
    crew: Crew
    told: Told
    stop: Event
    _left: deque[Part] = field(default_factory=deque)
    _flying: dict[Future[Finished], Part] = field(default_factory=dict)
    _lost: Counter[str] = field(default_factory=Counter)

    def through(self) -> Tally:
        """Do the parts that are not done.

        raises: BenchError where the work itself cannot be done, whatever the recipe
        """
        tally = Tally(pairs=sum(map(self._pairs, self.parts)))
        for part in self.parts:
            if found := self.manifest.finished(part):
                tally.kept += self._pairs(part)
                _count(tally, found)
            else:
                self._left.append(part)
        self.told(tally)
        try:
            while self._flying or (self._left and not self.stop.is_set()):
                self._hand_out()
                for future in wait(self._flying, timeout=LOOK_S, return_when=FIRST_COMPLETED).done:
                    self._take(future, self._flying.pop(future), tally)
        finally:
            for future in self._flying:
                future.cancel()
        return tally

    def _hand_out(self) -> None:
        while self._left and len(self._flying) < self.crew.width and not self.stop.is_set():
            part = self._left.popleft()
            self._flying[self.crew.hands.submit(done, self.order(part))] = part

    def _take(self, future: Future[Finished], part: Part, tally: Tally) -> None:
        """Note a part that has come back; one that was lost with a worker of a cluster is handed out again."""
        try:
            found = future.result()
        except BenchError:
            raise
        except Exception as fault:
            self._lost[part.name] += 1
            if self._lost[part.name] < self.order(part).tries:
                self._left.append(part)
                return
            tally.faults += _given_up(part, fault, self._lost[part.name])
        else:
            self.manifest.add(part, found)
            _count(tally, found)
        tally.done += self._pairs(part)
        self.told(tally)

    def _pairs(self, part: Part) -> int:
        return len(self.order(part).kitchens) * len(part.recipes)


def _given_up(part: Part, fault: Exception, tries: int) -> Iterator[Fault]:
    """What is told of the recipes of a part that was lost as often as one is tried."""
    problem = f"given up with {part.name}: {type(fault).__name__}: {fault}"[:300]
    return (Fault(kind="recipe", recipe=source.id, tries=tries, problem=problem) for source in part.recipes)


def _count(tally: Tally, found: Finished) -> None:
    tally.rows += found.rows
    tally.faults += found.faults


def write_errors(faults: Sequence[Fault], folder: Path) -> None:
    """The table of what could not be done; it has no rows where everything was."""
    rows = [asdict(fault) for fault in faults]
    begun = folder / f".{ERRORS}.{os.getpid()}.tmp"
    pq.write_table(pa.Table.from_pylist(rows, schema=schema.ERRORS), begun)
    begun.replace(folder / ERRORS)
