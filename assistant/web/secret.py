"""The secret that signs cookies and forms, kept so that a restart keeps people.

Beside a store that is a file it is a file too, for its owner alone; a database that servers of several machines share
holds it for all of them, so that each knows whom another has met.
"""

from __future__ import annotations

import os
import secrets
from collections.abc import Callable
from pathlib import Path

from assistant.store import StoreError

BYTES = 32
FILE_NAME = "web.key"


def secret(warn: Callable[[str], None], folder: Path | None = None) -> bytes:
    """The secret of this store, made where there is none; where it cannot be kept, one of this run alone.

    warn: is told where it cannot be kept; folder: by default that of the store
    """
    try:
        beside = folder or _folder()
        return _kept(beside / FILE_NAME) if beside else _in_store()
    except (OSError, StoreError) as fault:
        why = (getattr(fault, "strerror", None) or str(fault)).lower().rstrip(".")
        warn(f"the key of the page cannot be kept ({why}); a restart forgets who is who")
        return secrets.token_bytes(BYTES)


def _folder() -> Path | None:
    """The folder of a store that is a file; None for a database of another kind."""
    from assistant.store.where import database_url, default_file, sqlite_file

    url = database_url()
    return (sqlite_file(url) or default_file()).parent if url.startswith("sqlite") else None


def _in_store() -> bytes:
    from assistant.store import open_store
    from assistant.store.keys import shared

    store = open_store()
    try:
        return shared(store, FILE_NAME, secrets.token_bytes(BYTES))
    finally:
        store.close()


def _kept(path: Path) -> bytes:
    path.parent.mkdir(mode=0o700, parents=True, exist_ok=True)
    try:
        with os.fdopen(os.open(path, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600), "wb") as file:
            file.write(made := secrets.token_bytes(BYTES))
        return made
    except FileExistsError:
        found = path.read_bytes()
    if len(found) < BYTES:
        raise OSError(f"{path} is no key")
    return found
