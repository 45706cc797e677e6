"""What simmerline keeps between one run and the next: kitchens, conversations, batches, timers, progress in the drill.

SQLite in the platform's data folder, or any database that SIMMERLINE_DB names with an SQLAlchemy URL. Importing this
package is cheap; SQLAlchemy is imported when a store is opened, or when one of the rooms is imported:

    kitchens, conversations, batches, timers, progress

Their functions take the Store first and give back frozen dataclasses; what the time is, is always handed in. A store
that cannot be opened, read or written raises StoreError. A front end that can do without memory catches it, says
`fault.going_on` once, and goes on without:

    try:
        store = open_store()
    except StoreError as fault:
        store = None
        say(fault.going_on)
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from assistant.store.errors import StoreError

if TYPE_CHECKING:
    from assistant.store.database import Store

__all__ = ["StoreError", "open_store"]


def open_store(url: str | None = None) -> Store:
    """Open the store, make it where there is none, and bring an older one to today's layout.

    url: an SQLAlchemy URL; by default SIMMERLINE_DB, else the file in the platform's data folder
    raises: StoreError that says what is wrong with it and what to do
    """
    from assistant.store.database import connect
    from assistant.store.where import database_url

    return connect(url or database_url())
