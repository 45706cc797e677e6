"""The batch log: what was made, where, with which changes, and how it came out."""

from __future__ import annotations

from dataclasses import asdict, dataclass
from datetime import date
from typing import Any

from sqlalchemy import Row, delete, insert, select

from assistant.store.database import Store
from assistant.store.kitchens import key_of
from assistant.store.schema import batches as table
from rules.errors import within


@dataclass(frozen=True, slots=True, kw_only=True)
class Batch:
    """One batch of a recipe.

    kitchen: its name as it was then; elevation_m: where it was made, from_elevation_m: where its recipe is right [m],
        None where nobody said so; symptoms: ids of data/lexicon/symptoms.toml
    changes: what was changed against the recipe, in the shape of the changes of a converted recipe
    rating: 1 poor to 5 excellent; id: 0 until it is kept
    raises: ValueError for an empty title; OutOfRange for a rating outside 1 to 5
    """

    recipe: str
    made_on: date
    style: str = ""
    kitchen: str = ""
    elevation_m: float | None = None
    from_elevation_m: float | None = None
    symptoms: tuple[str, ...] = ()
    changes: tuple[dict[str, Any], ...] = ()
    rating: int | None = None
    note: str = ""
    id: int = 0

    def __post_init__(self) -> None:
        if not self.recipe.strip():
            raise ValueError("a batch needs the title of its recipe")
        if self.rating is not None:
            within("rating", self.rating, 1, 5, "")


def add(store: Store, batch: Batch) -> Batch:
    """Keep a batch; the one given back has its id.

    raises: StoreError
    """
    values = {name: value for name, value in asdict(batch).items() if name != "id"}
    with store.write() as connection:
        done = connection.execute(insert(table).values(recipe_key=key_of(batch.recipe), **values))
        (id,) = done.inserted_primary_key or (0,)
    return Batch(**{**values, "id": id})


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
    return Batch(**{**values, "symptoms": tuple(values["symptoms"]), "changes": tuple(values["changes"])})
