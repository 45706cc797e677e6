"""How far a run is: a bar on a screen, plain lines elsewhere; both on standard error."""

from __future__ import annotations

import time
from collections.abc import Iterator
from contextlib import contextmanager
from threading import Event

from rich.console import Console
from rich.progress import BarColumn, MofNCompleteColumn, Progress, TextColumn, TimeRemainingColumn

from assistant.bulk.run import Tally, Told

# a plain line no more often than this [s]
EVERY_S = 10.0


@contextmanager
def shown(stop: Event) -> Iterator[Told]:
    """What is to be told how far it is."""
    screen = Console(stderr=True)
    if screen.is_terminal:
        with _bar(screen) as bar:
            yield _on_bar(bar, stop)
    else:
        yield _in_lines(screen)


def _bar(screen: Console) -> Progress:
    return Progress(
        TextColumn("{task.description}"), BarColumn(), MofNCompleteColumn(), TextColumn("pairs, {task.fields[pace]}"),
        TimeRemainingColumn(), console=screen, transient=True,
    )  # fmt: skip


def _on_bar(bar: Progress, stop: Event) -> Told:
    task = bar.add_task("Converting", total=None, pace="…")
    clock = Clock()

    def told(tally: Tally) -> None:
        bar.update(
            task, total=tally.pairs, completed=tally.kept + tally.done, pace=f"{clock.a_second(tally):,.0f} a second",
            description="Finishing" if stop.is_set() else "Converting",
        )  # fmt: skip

    return told


def _in_lines(screen: Console) -> Told:
    clock = Clock()

    def told(tally: Tally) -> None:
        if clock.is_due() or tally.whole:
            screen.print(line_of(tally, clock.a_second(tally)), highlight=False, soft_wrap=True)

    return told


def line_of(tally: Tally, a_second: float) -> str:
    """How far it is, in a line.

    >>> line_of(Tally(pairs=60_000, kept=12_000, done=8_000), 100)
    '20,000 of 60,000 pairs, 100 a second, 7 min left'
    """
    through = tally.kept + tally.done
    told = f"{through:,} of {tally.pairs:,} pairs"
    if not a_second:
        return told
    left_min = (tally.pairs - through) / a_second / 60
    left = f"{left_min:,.0f} min left" if left_min >= 1 else "less than a minute left"
    return f"{told}, {a_second:,.0f} a second" + (f", {left}" if through < tally.pairs else "")


class Clock:
    """Since when a run is on, and when it was last told of."""

    def __init__(self) -> None:
        self._begun = time.monotonic()
        self._told = 0.0

    def a_second(self, tally: Tally) -> float:
        """Pairs of this run a second."""
        return tally.done / max(time.monotonic() - self._begun, 1e-9)

    def is_due(self) -> bool:
        """Whether a line is due; it is then taken for told."""
        now = time.monotonic()
        if self._told and now - self._told < EVERY_S:
            return False
        self._told = now
        return True
