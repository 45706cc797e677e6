"""Kitchens by name, of the house and of each person of the page; one of the house's is in use."""

from __future__ import annotations

from dataclasses import asdict, dataclass, replace
from typing import Any, get_args

from sqlalchemy import Connection, Row, Select, delete, insert, select, update

from assistant.errors import AssistantError
from assistant.store import rows
from assistant.store.database import Store
from assistant.store.owners import HOUSE, SIGN, belongs_to, key_of
from assistant.store.schema import kitchens as table
from rules.errors import UnknownWord, within
from rules.model import Kitchen, Units
from rules.physics.air import HIGHEST_M, LOWEST_M

LONGEST_NAME = 80


class KitchenExists(AssistantError, ValueError):
    """There is a kitchen of that name already."""


class UnknownKitchen(AssistantError, LookupError):
    """There is no kitchen of that name."""


@dataclass(frozen=True, slots=True, kw_only=True)
class SavedKitchen:
    """A kitchen as it is kept.

    barometer_offset_pa, thermometer_offset_c: how much its instruments read too high [Pa], [K]
    raises: ValueError for a name that cannot be one; OutOfRange for a figure that no kitchen can have
    """

    name: str
    elevation_m: float | None = None
    place: str = ""
    units: Units = "us"
    equipment: tuple[str, ...] = ()
    barometer_offset_pa: float = 0.0
    thermometer_offset_c: float = 0.0
    in_use: bool = False

    def __post_init__(self) -> None:
        if self.units not in get_args(Units):
            raise ValueError(f"{self.units!r} is no system of units")
        if not self.name.strip() or not self.name.isprintable() or len(self.name) > LONGEST_NAME:
            raise ValueError(f"a kitchen needs a name of 1 to {LONGEST_NAME} letters, such as Lodge")
        if self.elevation_m is not None:
            within("elevation", self.elevation_m, LOWEST_M, HIGHEST_M, "m")
        within("barometer offset", self.barometer_offset_pa, -5000, 5000, "Pa", "Further off, have it mended.")
        within("thermometer offset", self.thermometer_offset_c, -10, 10, "K", "Further off, have it mended.")

    def taken_for_granted(self) -> Kitchen:
        """What a question asked in this kitchen takes for granted."""
        return Kitchen(
            name=self.name,
            elevation_m=self.elevation_m,
            units=self.units,
            equipment=self.equipment,
            barometer_offset_pa=self.barometer_offset_pa,
            thermometer_offset_c=self.thermometer_offset_c,
        )


def add(store: Store, kitchen: SavedKitchen, *, replacing: bool = False, owner: str = HOUSE) -> SavedKitchen:
    """Keep a kitchen. The first one of the house is put in use; a later one as its in_use says.

    replacing: overwrite the kitchen of the same name, which stays in use if it was
    owner: whose it is; what a person's conversation takes for granted is told there, so none of theirs is in use
    raises: KitchenExists, StoreError
    """
    name = " ".join(kitchen.name.split())
    with store.write() as connection:
        there = found(connection, name, owner)
        if there and not replacing:
            raise KitchenExists(f'there is already a kitchen "{there.name}"; take another name, or remove it first')
        alone = first(connection, select(table).where(belongs_to(table.c.key, HOUSE))) is None
        in_use = not owner and (kitchen.in_use or (there.in_use if there else alone))
        saved = replace(kitchen, name=name, in_use=in_use)
        if saved.in_use:
            connection.execute(update(table).values(in_use=False))
        connection.execute(delete(table).where(table.c.key == key_of(name, owner)))
        connection.execute(insert(table).values(key=key_of(name, owner), **asdict(saved)))
    return saved


def every(store: Store, owner: str = HOUSE) -> tuple[SavedKitchen, ...]:
    """All kitchens of an owner, by name."""
    query = select(table).where(belongs_to(table.c.key, owner)).order_by(table.c.key)
    with store.read() as connection:
        return tuple(kitchen_of(row) for row in connection.execute(query))


def named(store: Store, name: str, owner: str = HOUSE) -> SavedKitchen:
    """The kitchen of this name.

    raises: UnknownKitchen that names the nearest, StoreError
    """
    with store.read() as connection:
        return known(connection, name, owner)


def in_use(store: Store) -> SavedKitchen | None:
    """The kitchen in use, if there is one."""
    with store.read() as connection:
        return first(connection, select(table).where(table.c.in_use))


def use(store: Store, name: str | None) -> SavedKitchen | None:
    """Put a kitchen in use, or none.

    raises: UnknownKitchen that names the nearest, StoreError
    """
    with store.write() as connection:
        kitchen = known(connection, name) if name is not None else None
        connection.execute(update(table).values(in_use=False))
        if kitchen is None:
            return None
        connection.execute(update(table).where(table.c.key == key_of(kitchen.name)).values(in_use=True))
        return replace(kitchen, in_use=True)


def remove(store: Store, name: str, owner: str = HOUSE) -> SavedKitchen:
    """Forget a kitchen; where it was in use, none is after that.

    returns: the kitchen as it was
    raises: UnknownKitchen that names the nearest, StoreError
    """
    with store.write() as connection:
        kitchen = known(connection, name, owner)
        connection.execute(delete(table).where(table.c.key == key_of(name, owner)))
        return kitchen


def known(connection: Connection, name: str, owner: str = HOUSE) -> SavedKitchen:
    """The kitchen of this name.

    raises: UnknownKitchen
    """
    kitchen = found(connection, name, owner)
    if kitchen is None:
        names = connection.scalars(select(table.c.name).where(belongs_to(table.c.key, owner)))
        raise UnknownKitchen(str(UnknownWord.among("kitchen", " ".join(name.split()), names)))
    return kitchen


def found(connection: Connection, name: str, owner: str = HOUSE) -> SavedKitchen | None:
    """The kitchen of this name, or None."""
    return first(connection, select(table).where(table.c.key == key_of(name, owner)))


def first(connection: Connection, query: Select[Any]) -> SavedKitchen | None:
    """The first row as a kitchen."""
    row = connection.execute(query.limit(1)).first()
    return kitchen_of(row) if row else None


def kitchen_of(row: Row[Any]) -> SavedKitchen:
    """A kitchen from its row; of one that is damaged no more is known than what it is called."""
    values = {name: value for name, value in row._mapping.items() if name not in ("id", "key")}
    try:
        return SavedKitchen(**{**values, "equipment": _words(values["equipment"])})
    except rows.FAULTS:
        name = row._mapping["key"].rpartition(SIGN)[2]
        rows.tell(
            f'the kitchen "{name}"',
            f'no more is known of it; keep it anew: simmerline kitchen add "{name}" --replace --at ELEVATION',
        )
        return SavedKitchen(name=name, in_use=bool(values["in_use"]))


def _words(kept: Any) -> tuple[str, ...]:
    if not isinstance(kept, list) or not all(isinstance(word, str) for word in kept):
        raise TypeError("no list of words")
    return tuple(kept)
