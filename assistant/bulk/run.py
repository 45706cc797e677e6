"""A run: the parts that are not done yet, handed out, noted as they come back; and the table of what could not be."""

from __future__ import annotations

import os
from collections import Counter, deque
from collections.abc import Callable, Sequence
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


def run(
    parts: Sequence[Part], order: Callable[[Part], Order], manifest: Manifest, crew: Crew, told: Told, stop: Event
) -> Tally:
    """Do the parts that are not done.

    order: a part as it is handed out; told: is told how far it is, whenever that has changed
    stop: nothing more is begun once it is set; what was begun is finished
    raises: BenchError where the work itself cannot be done, whatever the recipe
    """
    kitchens = len(order(parts[0]).kitchens) if parts else 0
    tally = Tally(pairs=kitchens * sum(len(part.recipes) for part in parts))
    left: deque[Part] = deque()
    for part in parts:
        if found := manifest.finished(part):
            _count(tally, found)
            tally.kept += kitchens * len(part.recipes)
        else:
            left.append(part)
    told(tally)
    lost: Counter[str] = Counter()
    flying: dict[Future[Finished], Part] = {}
    try:
        while flying or (left and not stop.is_set()):
            while left and len(flying) < crew.width and not stop.is_set():
                part = left.popleft()
                flying[crew.hands.submit(done, order(part))] = part
            for future in wait(flying, timeout=LOOK_S, return_when=FIRST_COMPLETED).done:
                part = flying.pop(future)
                if (found := _come_of(future, order(part), lost)) is None:
                    left.append(part)
                    continue
                if found.rows >= 0:
                    manifest.add(part, found)
                _count(tally, found)
                tally.done += kitchens * len(part.recipes)
                told(tally)
    finally:
        for future in flying:
            future.cancel()
    return tally


def _come_of(future: Future[Finished], order: Order, lost: Counter[str]) -> Finished | None:
    """What came of a part; None where it is to be done again, since a worker of a cluster was lost with it."""
    try:
        return future.result()
    except BenchError:
        raise
    except Exception as fault:
        name = order.part.name
        lost[name] += 1
        if lost[name] < order.tries:
            return None
        problem = f"given up with {name}: {type(fault).__name__}: {fault}"[:300]
        faults = (
            Fault(kind="recipe", recipe=source.id, tries=lost[name], problem=problem) for source in order.part.recipes
        )
        return Finished(rows=-1, faults=tuple(faults))


def _count(tally: Tally, found: Finished) -> None:
    tally.rows += max(0, found.rows)
    tally.faults += found.faults


def write_errors(faults: Sequence[Fault], folder: Path) -> None:
    """The table of what could not be done; it has no rows where everything was."""
    rows = [asdict(fault) for fault in faults]
    begun = folder / f".{ERRORS}.{os.getpid()}.tmp"
    pq.write_table(pa.Table.from_pylist(rows, schema=schema.ERRORS), begun)
    os.replace(begun, folder / ERRORS)
