"""The server: one process, or several that share the port."""

from __future__ import annotations

from collections.abc import Mapping
from functools import partial
from typing import Any

from sanic import Sanic
from sanic.http.tls import process_to_context
from sanic.worker.loader import AppLoader
from sanic.worker.manager import WorkerManager

from assistant.errors import AssistantError
from assistant.web.app import create_app
from assistant.web.settings import Settings

# a worker loads the language before it listens, which takes long on a busy machine [s]
SLOWEST_START_S = 180


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
    """Serve until interrupted.

    raises: OSError where the port cannot be had
    """
    options: Mapping[str, Any] = {
        "host": settings.host, "port": settings.port, "motd": False, "access_log": False,
        "ssl": {"cert": settings.certificate, "key": settings.key} if settings.secure else None,
    }  # fmt: skip
    if workers == 1:
        create_app(settings).run(single_process=True, **options)
        return
    WorkerManager.THRESHOLD = SLOWEST_START_S * 10
    loader = AppLoader(factory=partial(create_app, settings))
    app = loader.load()
    app.prepare(workers=workers, **options)
    Sanic.serve(primary=app, app_loader=loader)
