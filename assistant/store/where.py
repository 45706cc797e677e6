"""Where files of the user are; cheap, so that a command may look before it pays for SQLAlchemy."""

from __future__ import annotations

import os
from pathlib import Path
from urllib.parse import quote, unquote

VARIABLE = "SIMMERLINE_DB"
FILE_NAME = "simmerline.db"
CACHE_VARIABLE = "SIMMERLINE_CACHE"
NO_CACHE = "off"
SQLITE = ("sqlite:///", "sqlite+pysqlite:///")


def database_url() -> str:
    """The SQLAlchemy URL of the store: SIMMERLINE_DB, else a file in the platform's data folder."""
    return os.environ.get(VARIABLE, "").strip() or f"sqlite:///{quote(str(default_file()), safe='/:')}"


def default_file() -> Path:
    """The database file where nobody has said otherwise."""
    import platformdirs

    return platformdirs.user_data_path("simmerline", appauthor=False) / FILE_NAME


def cache_folder() -> Path | None:
    """Where the command keeps what it works out of its data: SIMMERLINE_CACHE, else the platform's folder; or nowhere.

    What stands there is made again when it is gone.
    """
    said = os.environ.get(CACHE_VARIABLE, "").strip()
    if said.casefold() == NO_CACHE:
        return None
    if said:
        return Path(said)
    import platformdirs

    return platformdirs.user_cache_path("simmerline", appauthor=False)


def sqlite_file(url: str) -> Path | None:
    """The file of a plain SQLite URL; None for a database in memory, a URI filename or another kind of database.

    A URL is read as SQLAlchemy 2.1 reads it: percent signs are taken back.

    >>> sqlite_file("sqlite:////srv/kitchen.db").name
    'kitchen.db'
    >>> sqlite_file("postgresql://localhost/kitchen")
    """
    scheme = next((s for s in SQLITE if url.startswith(s)), None)
    name = unquote(url.removeprefix(scheme).partition("?")[0]) if scheme else ""
    return None if name in ("", ":memory:") or name.startswith("file:") else Path(name)
