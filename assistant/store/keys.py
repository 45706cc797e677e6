"""Keys that all servers of one database hold in common."""

from __future__ import annotations

from sqlalchemy import select

from assistant.store.database import Store
from assistant.store.schema import keys
from assistant.store.writing import add_new


def shared(store: Store, name: str, made: bytes) -> bytes:
    """The key of a name: the one that is kept, else the one made, which is kept from now on.

    Of several servers that begin at once all get the same.
    raises: StoreError
    """
    with store.write() as connection:
        add_new(connection, keys, name=name, value=made)
        value: bytes = connection.execute(select(keys.c.value).where(keys.c.name == name)).scalar_one()
    return value
