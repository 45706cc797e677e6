"""The server: one process, or several of which each listens on the port for itself.

A port that is listened on by all together gives most callers to whichever worker is awake; one each shares them evenly.
"""

from __future__ import annotations

import signal
import socket
import time
from multiprocessing import get_context
from multiprocessing.connection import wait
from multiprocessing.context import SpawnProcess
from typing import Any

from sanic.http.tls import process_to_context

from assistant.errors import AssistantError
from assistant.serving.processes import added_up
from assistant.serving.stopping import end_now
from assistant.web.app import create_app
from assistant.web.settings import Settings
from assistant.web.workroom import Workroom

# a worker that lives no longer than this would only end again [s]
SHORTEST_S = 20.0
# callers that wait to be taken
BACKLOG = 512


class BadCertificate(AssistantError, ValueError):
    """Files that no https can be made of; the message says why."""


def check_certificate(settings: Settings) -> None:
    """Nothing, where the certificate and its key will do, or there is none.

    raises: BadCertificate
    """
    if not settings.secure:
        return
    try:
        process_to_context({"cert": settings.certificate, "key": settings.key})
    except KeyError:
        raise BadCertificate(f"{settings.certificate} names no address: it needs a subjectAltName") from None
    except (OSError, ValueError) as fault:
        raise BadCertificate(f"{settings.certificate} and {settings.key} will not do: {fault}") from None


def serve(settings: Settings, workers: int = 1) -> None:
    """Serve until told to stop, by Ctrl-C or SIGTERM; what is under way is finished.

    raises: OSError where the port cannot be had, or a worker ends as soon as it begins
    """
    if workers == 1:
        work(settings, shared=False)
        return
    with added_up():
        _serve_together(settings, workers)


def _serve_together(settings: Settings, workers: int) -> None:
    # taken by nobody, not even by a server of ours that would share it
    socket.create_server((settings.host, settings.port), family=_family(settings)).close()
    signal.signal(signal.SIGTERM, _interrupt)
    running: dict[Any, tuple[SpawnProcess, float]] = {}
    try:
        for _ in range(workers):
            _start(settings, running)
        while True:
            for ended in wait(list(running)):
                process, begun = running.pop(ended)
                process.join()
                if time.monotonic() - begun < SHORTEST_S:
                    raise OSError(f"a worker ended at once, with code {process.exitcode}")
                _start(settings, running)
    except KeyboardInterrupt:
        pass
    finally:
        for process, _ in running.values():
            process.terminate()
        for process, _ in running.values():
            process.join()


def work(settings: Settings, *, shared: bool) -> None:
    """Serve in this process. shared: whether others listen on the same port, each to its share of the callers"""
    listening = socket.create_server(
        (settings.host, settings.port), family=_family(settings), reuse_port=shared, backlog=BACKLOG
    )
    app = create_app(settings)
    app.run(
        sock=listening,
        ssl={"cert": settings.certificate, "key": settings.key} if settings.secure else None,
        single_process=True,
        motd=False,
        access_log=False,
    )
    workroom: Workroom | None = getattr(app.ctx, "workroom", None)
    if workroom and workroom.is_busy:
        end_now()


def _start(settings: Settings, running: dict[Any, tuple[SpawnProcess, float]]) -> None:
    process = get_context("spawn").Process(target=work, args=(settings,), kwargs={"shared": True})
    process.start()
    running[process.sentinel] = (process, time.monotonic())


def _family(settings: Settings) -> socket.AddressFamily:
    return socket.AF_INET6 if ":" in settings.host else socket.AF_INET


def _interrupt(*_: object) -> None:
    raise KeyboardInterrupt
