"""The batch log: what was made, where, with which changes, and how it came out."""

from __future__ import annotations

from dataclasses import asdict
from typing import Any

from sqlalchemy import Row, delete, insert, select, update

from assistant.recipes.batch import Batch
from assistant.store.database import Store
from assistant.store.kitchens import key_of
from assistant.store.schema import batches as table

__all__ = ["Batch", "add", "amend", "by_id", "every", "of_recipe", "remove"]


def add(store: Store, batch: Batch) -> Batch:
    """Keep a batch; the one given back has its id.

    raises: StoreError
    """
    values = {name: value for name, value in asdict(batch).items() if name != "id"}
    with store.write() as connection:
        done = connection.execute(insert(table).values(recipe_key=key_of(batch.recipe), **values))
        (id,) = done.inserted_primary_key or (0,)
    return Batch(**{**values, "id": id})


def amend(store: Store, batch: Batch) -> bool:
    """Put right what is kept of a batch, found by its id; whether there was one.

    raises: StoreError
    """
    values = {name: value for name, value in asdict(batch).items() if name != "id"}
    values["recipe_key"] = key_of(batch.recipe)
    with store.write() as connection:
        return connection.execute(update(table).where(table.c.id == batch.id).values(**values)).rowcount > 0


def of_recipe(store: Store, recipe: str) -> tuple[Batch, ...]:
    """Batches of a recipe by its title, whatever its case, oldest first.

    raises: StoreError
    """
    query = select(table).where(table.c.recipe_key == key_of(recipe)).order_by(table.c.made_on, table.c.id)
    with store.read() as connection:
        return tuple(batch_of(row) for row in connection.execute(query))


def every(store: Store) -> tuple[Batch, ...]:
    """All batches, oldest first.

    raises: StoreError
    """
    with store.read() as connection:
        return tuple(batch_of(row) for row in connection.execute(select(table).order_by(table.c.made_on, table.c.id)))


def by_id(store: Store, id: int) -> Batch | None:
    """The batch of this number, or None.

    raises: StoreError
    """
    with store.read() as connection:
        row = connection.execute(select(table).where(table.c.id == id)).first()
    return batch_of(row) if row else None


def remove(store: Store, id: int) -> bool:
    """Forget a batch; whether there was one.

    raises: StoreError
    """
    with store.write() as connection:
        return connection.execute(delete(table).where(table.c.id == id)).rowcount > 0


def batch_of(row: Row[Any]) -> Batch:
    """A batch from its row."""
    values = {name: value for name, value in row._mapping.items() if name != "recipe_key"}
    values |= {name: values[name] or "" for name in ("compared", "formula")}
    return Batch(**{**values, "symptoms": tuple(values["symptoms"]), "changes": tuple(values["changes"])})
