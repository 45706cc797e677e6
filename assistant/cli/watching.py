"""A bar on standard error while several things are worked on."""

from __future__ import annotations

from collections.abc import Iterable
from typing import TypeVar

Thing = TypeVar("Thing")


def watched(work: Iterable[Thing], what: str, *, count: int | None = None, slow: bool = True) -> Iterable[Thing]:
    """The work with a bar, where somebody can see it and there is something to wait for.

    count: how many things there are, where the work cannot tell; slow: whether they take long enough to watch
    """
    from rich.console import Console
    from rich.progress import track

    screen = Console(stderr=True)
    return track(work, what, count, console=screen, transient=True, disable=not (slow and screen.is_terminal))
