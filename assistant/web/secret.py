"""The secret that signs cookies and forms: a file beside the store, for its owner alone, so that a restart keeps
people."""

from __future__ import annotations

import os
import secrets
from collections.abc import Callable
from pathlib import Path

BYTES = 32
FILE_NAME = "web.key"


def secret(warn: Callable[[str], None], folder: Path | None = None) -> bytes:
    """The secret of this machine, made where there is none; where it cannot be kept, one of this run alone.

    warn: is told where it cannot be kept; folder: by default that of the store
    """
    try:
        return _kept((folder or _data_folder()) / FILE_NAME)
    except OSError as fault:
        why = (fault.strerror or str(fault)).lower()
        warn(f"the key of the page cannot be kept ({why}); a restart forgets who is who")
        return secrets.token_bytes(BYTES)


def _data_folder() -> Path:
    from assistant.store.where import database_url, default_file, sqlite_file

    return (sqlite_file(database_url()) or default_file()).parent


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
