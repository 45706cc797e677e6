"""The same on the workers of a Dask cluster: one that is killed loses nothing."""

from __future__ import annotations

import os
import signal
from collections.abc import Callable, Iterator

import pytest

from tests.assistant.bulk.conftest import Ground
from tests.assistant.bulk.test_runs import LONGEST_S, begun, children, needs_proc

distributed = pytest.importorskip("distributed", reason="the extra bulk is not installed")


@pytest.fixture
def cluster(ground: Ground) -> Iterator[distributed.LocalCluster]:
    """Two processes that work, with the mischief of the ground; one that is killed is begun again."""
    with distributed.LocalCluster(
        n_workers=2,
        threads_per_worker=1,
        processes=True,
        dashboard_address=None,
        local_directory=str(ground.folder),
        env={"PYTHONPATH": ground.environment["PYTHONPATH"]},
    ) as made:
        yield made


@needs_proc
def test_a_worker_of_a_cluster_that_is_killed_loses_nothing(
    ground: Ground, elsewhere: Callable[[Ground], Ground], cluster: distributed.LocalCluster
) -> None:
    ground.rolls("plain", "milk")
    ground.rolls("slow", says="mischief: slow")
    ground.rolls("harm", says="mischief: killing")
    here = elsewhere(ground)
    assert here.run("--tries", "2")[0] == 1
    with distributed.Client(cluster) as client:
        workers = client.run(os.getpid).values()
    running = ground.start("--scheduler", cluster.scheduler_address, "--tries", "2")
    begun(ground, running)
    (busy,) = (pid for pid in workers if children(pid))
    os.kill(busy, signal.SIGKILL)
    told, aside = running.communicate(timeout=LONGEST_S)
    assert running.returncode == 1, aside
    assert "1 could not be done" in told
    assert ground.rows() == here.rows()
    assert ground.errors() == here.errors()
    assert not list(ground.out.glob("conversions/.*"))


def test_a_scheduler_that_is_not_there_is_told_of(ground: Ground) -> None:
    ground.rolls("plain")
    code, _, aside = ground.run("--scheduler", "tcp://127.0.0.1:9")
    assert code == 1
    assert "no Dask scheduler answers at tcp://127.0.0.1:9" in aside
    assert "Traceback" not in aside
