"""The batch log of the house, and of each person of the page: what was made, where, how it came out."""

from __future__ import annotations

from dataclasses import asdict
from datetime import date
from types import NoneType
from typing import Any

from sqlalchemy import ColumnElement, Row, delete, insert, select, update

from assistant.recipes.batch import Batch
from assistant.store import rows
from assistant.store.database import Store
from assistant.store.owners import HOUSE, belongs_to, key_of
from assistant.store.schema import batches as table
from rules.errors import within
from rules.physics.air import HIGHEST_M, LOWEST_M

ROW = "batch"
HIGHEST_ID = 2**31 - 1
# what a damaged row may hold something else in
KINDS: dict[str, Any] = {
    **dict.fromkeys(("recipe", "style", "kitchen", "note", "compared", "formula"), str),
    **dict.fromkeys(("elevation_m", "from_elevation_m", "rating"), (int, float, NoneType)),
    "made_on": date,
}

__all__ = ["Batch", "add", "amend", "by_id", "every", "of_recipe", "remove"]


def add(store: Store, batch: Batch, owner: str = HOUSE) -> Batch:
    """Keep a batch; the one given back has its id.

    raises: StoreError
    """
    values = {name: value for name, value in asdict(batch).items() if name != "id"}
    with store.write() as connection:
        done = connection.execute(insert(table).values(recipe_key=key_of(batch.recipe, owner), **values))
        (id,) = done.inserted_primary_key or (0,)
    return Batch(**{**values, "id": id})


def amend(store: Store, batch: Batch, owner: str = HOUSE) -> bool:
    """Put right what is kept of a batch, found by its id; whether there was one.

    raises: StoreError
    """
    values = {name: value for name, value in asdict(batch).items() if name != "id"}
    values["recipe_key"] = key_of(batch.recipe, owner)
    with store.write() as connection:
        change = update(table).where(_is(batch.id, owner)).values(**values)
        return connection.execute(change).rowcount > 0


def of_recipe(store: Store, recipe: str, owner: str = HOUSE) -> tuple[Batch, ...]:
    """Batches of a recipe by its title, whatever its case, oldest first.

    raises: StoreError
    """
    of_it = select(table).where(table.c.recipe_key == key_of(recipe, owner))
    query = of_it.order_by(table.c.made_on, table.c.id)
    with store.read() as connection:
        return tuple(rows.whole(connection.execute(query), batch_of, ROW))


def every(store: Store, owner: str = HOUSE) -> tuple[Batch, ...]:
    """All batches of an owner, oldest first.

    raises: StoreError
    """
    own = select(table).where(belongs_to(table.c.recipe_key, owner))
    with store.read() as connection:
        return tuple(rows.whole(connection.execute(own.order_by(table.c.made_on, table.c.id)), batch_of, ROW))


def by_id(store: Store, id: int, owner: str = HOUSE) -> Batch | None:
    """The owner's batch of this number, or None.

    raises: StoreError
    """
    if not 0 < id <= HIGHEST_ID:
        return None
    with store.read() as connection:
        found = connection.execute(select(table).where(_is(id, owner)))
        return next(rows.whole(found, batch_of, ROW), None)


def remove(store: Store, id: int, owner: str = HOUSE) -> bool:
    """Forget a batch; whether there was one.

    raises: StoreError
    """
    if not 0 < id <= HIGHEST_ID:
        return False
    with store.write() as connection:
        return connection.execute(delete(table).where(_is(id, owner))).rowcount > 0


def _is(id: int, owner: str) -> ColumnElement[bool]:
    return (table.c.id == id) & belongs_to(table.c.recipe_key, owner)


def batch_of(row: Row[Any]) -> Batch:
    """A batch from its row.

    raises: one of rows.FAULTS where it is damaged
    """
    values = {name: value for name, value in row._mapping.items() if name != "recipe_key"}
    values |= {name: values[name] or "" for name in ("compared", "formula")}
    for name, kind in KINDS.items():
        if not isinstance(values[name], kind):
            raise TypeError(name)
    for name in ("elevation_m", "from_elevation_m"):
        if values[name] is not None:
            within("elevation", values[name], LOWEST_M, HIGHEST_M, "m")
    return Batch(**{**values, "symptoms": _every(values["symptoms"], str), "changes": _every(values["changes"], dict)})


def _every(kept: Any, kind: type) -> tuple[Any, ...]:
    if not isinstance(kept, list) or not all(isinstance(one, kind) for one in kept):
        raise TypeError(kind)
    return tuple(kept)
