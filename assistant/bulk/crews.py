"""Who does the parts: threads here that each guard a process, or the workers of a Dask cluster."""

from __future__ import annotations

from collections.abc import Iterator
from concurrent.futures import Executor, ThreadPoolExecutor
from contextlib import contextmanager
from dataclasses import dataclass

from assistant.bulk import guarded
from assistant.errors import AssistantError

# how long a scheduler may take to answer [s]
CONNECT_S = 20
# parts in line for every one that is worked on, so that nobody waits
IN_LINE = 2


class NoCluster(AssistantError):
    """A scheduler that cannot be reached, or has no workers. The message says which."""


@dataclass(frozen=True, slots=True)
class Crew:
    """Somebody to hand parts to. width: how many parts they may have at a time"""

    hands: Executor
    width: int


@contextmanager
def here(workers: int) -> Iterator[Crew]:
    """So many processes of this machine."""
    with ThreadPoolExecutor(workers) as threads:
        try:
            yield Crew(threads, workers)
        finally:
            guarded.end_all()


@contextmanager
def of_cluster(address: str) -> Iterator[Crew]:
    """The workers of a Dask cluster, which must see the folders under the same names.

    raises: NoCluster
    """
    from distributed import Client

    try:
        client = Client(address, timeout=CONNECT_S)
    except (OSError, ValueError) as fault:
        raise NoCluster(f"no Dask scheduler answers at {address} ({fault}); check --scheduler") from None
    with client:
        threads = sum(client.nthreads().values())
        if not threads:
            raise NoCluster(f"the Dask scheduler at {address} has no workers; start some, and say it again")
        yield Crew(client.get_executor(pure=False), threads * IN_LINE)
