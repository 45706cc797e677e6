"""The process that converts: it takes parts over a pipe, tells of each recipe it begins, and ends with whoever asks.

Run by assistant.bulk.guarded as `python -m assistant.bulk.bench <file descriptor>`.
"""

from __future__ import annotations

import os
import queue
import signal
import sys
import threading
from multiprocessing.connection import Connection

from assistant.bulk.parts import Order

# a bench that nobody gives anything to ends by itself [s]
IDLE_S = 120.0
# so much a process may hold: a recipe that wants more is told of, and the machine goes on [bytes]
MOST_MEMORY = 2 << 30
# the code it ends with where that was not enough
NO_MEMORY = 77


def main(descriptor: int) -> None:
    """Work until there is nothing more to do."""
    signal.signal(signal.SIGINT, signal.SIG_IGN)  # whoever guards this process is asked to stop, and lets it finish
    _hold_no_more_than(MOST_MEMORY)
    line = Connection(descriptor)
    orders: queue.Queue[Order] = queue.Queue()
    threading.Thread(target=_listen, args=(line, orders), daemon=True).start()
    from assistant.bulk.writing import settle, write_part

    settle()
    while True:
        try:
            order = orders.get(timeout=IDLE_S)
        except queue.Empty:
            return
        try:
            line.send(("done", write_part(order, lambda index: line.send(("begun", index)))))
        except MemoryError:
            os._exit(NO_MEMORY)
        except OSError as fault:
            line.send(("failed", f"{order.folder}: {(fault.strerror or str(fault)).lower()}"))


def _listen(line: Connection, orders: queue.Queue[Order]) -> None:
    """Take orders; the end of the line is the end of this process, whatever it is busy with."""
    try:
        while True:
            orders.put(line.recv())
    except (EOFError, OSError):
        os._exit(0)


def _hold_no_more_than(size: int) -> None:
    try:
        import resource

        resource.setrlimit(resource.RLIMIT_DATA, (size, size))
    except (ImportError, OSError, ValueError):
        return  # a system without such limits


if __name__ == "__main__":
    main(int(sys.argv[1]))
