"""How a server stops: what is under way is finished and kept, then it ends, within a few seconds."""

from __future__ import annotations

import logging
import os
import sys

# so long what is under way may take when the server is told to stop [s]
FINISH_S = 5.0


def end_now() -> None:
    """End this process though a thread of it still works: nobody waits for that any more, and what it writes into the
    store is kept whole or not at all."""
    logging.shutdown()
    for stream in (sys.stdout, sys.stderr):
        stream.flush()
    os._exit(0)
