"""Where answers are worked out, beside the loop that takes requests: one at a time of the quick, one of the slow.

One of each at a time keeps answers as they are by themselves, and an order of five hundred dishes lets questions by.
What waits too long in line is turned away at once, rather than answered when nobody listens any more.
"""

from __future__ import annotations

import asyncio
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from typing import TypeVar

from assistant.web.problems import Problem

Result = TypeVar("Result")
MOST_QUICK, MOST_SLOW = 128, 8


class Bench:
    """One at a time, with so many in line at the most. is_busy: whether something is worked out just now"""

    def __init__(self, name: str, most: int) -> None:
        self._most, self._waiting = most, 0
        self.is_busy = False
        self._thread = ThreadPoolExecutor(max_workers=1, thread_name_prefix=name)

    async def run(self, work: Callable[[], Result]) -> Result:
        """What some work comes to.

        raises: Problem where the line is too long already
        """
        if self._waiting >= self._most:
            raise Problem(503, "Too much is asked at once; try again in a moment.")
        self._waiting += 1
        done = asyncio.get_running_loop().run_in_executor(self._thread, self._do, work)
        # whoever has hung up leaves the line only when the work is done
        done.add_done_callback(self._left)
        return await asyncio.shield(done)

    def close(self) -> None:
        """Begin nothing more."""
        self._thread.shutdown(wait=False, cancel_futures=True)

    def _do(self, work: Callable[[], Result]) -> Result:
        self.is_busy = True
        try:
            return work()
        finally:
            self.is_busy = False

    def _left(self, _: object) -> None:
        self._waiting -= 1


class Workroom:
    """The two benches of a worker. quick: questions and pages; slow: recipes, menus, and what is drawn"""

    def __init__(self) -> None:
        self.quick, self.slow = Bench("quick", MOST_QUICK), Bench("slow", MOST_SLOW)

    def close(self) -> None:
        """Begin nothing more."""
        self.quick.close()
        self.slow.close()

    @property
    def is_busy(self) -> bool:
        """Whether something is worked out just now."""
        return self.quick.is_busy or self.slow.is_busy
