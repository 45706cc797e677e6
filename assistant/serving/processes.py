"""Counters of several processes, added up in a folder that all of them write to."""

from __future__ import annotations

import os
from collections.abc import Iterator
from contextlib import contextmanager
from tempfile import TemporaryDirectory

# what the library of the counters reads when it is imported
SEVERAL = "PROMETHEUS_MULTIPROC_DIR"


@contextmanager
def added_up() -> Iterator[None]:
    """Processes that are started in this block add their counters up."""
    before = os.environ.get(SEVERAL)
    with TemporaryDirectory(prefix="simmerline-") as folder:
        os.environ[SEVERAL] = folder
        try:
            yield
        finally:
            if before is None:
                del os.environ[SEVERAL]
            else:
                os.environ[SEVERAL] = before
