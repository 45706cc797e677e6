"""The kitchen in use, read without SQLAlchemy, whose import every single question would pay for."""

from __future__ import annotations

import json
import sqlite3
from contextlib import closing

from assistant.store.where import database_url, sqlite_file
from rules.errors import within
from rules.model import Kitchen, Units
from rules.physics.air import HIGHEST_M, LOWEST_M

QUERY = (
    "SELECT name, elevation_m, units, equipment, barometer_offset_pa, thermometer_offset_c FROM kitchens WHERE in_use"
)
WAIT_S = 1.0
UNITS: dict[str, Units] = {"us": "us", "metric": "metric"}


def kitchen_in_use() -> Kitchen | None:
    """What the kitchen in use takes for granted; None where there is no store yet or no kitchen in use.

    raises: StoreError
    """
    file = sqlite_file(database_url())
    if file is None:
        return through_the_store()
    if not file.exists():
        return None
    try:
        with closing(sqlite3.connect(f"{file.resolve().as_uri()}?mode=ro", uri=True, timeout=WAIT_S)) as connection:
            row = connection.execute(QUERY).fetchone()
    except sqlite3.Error:
        return through_the_store()
    if row is None:
        return None
    name, elevation_m, units, equipment, barometer_pa, thermometer_c = row
    try:
        return Kitchen(
            name=_word(name),
            elevation_m=None if elevation_m is None else within("elevation", elevation_m, LOWEST_M, HIGHEST_M, "m"),
            units=UNITS[units],
            equipment=tuple(map(_word, json.loads(equipment))),
            barometer_offset_pa=float(barometer_pa),
            thermometer_offset_c=float(thermometer_c),
        )
    except (TypeError, ValueError, KeyError):  # damaged, which the store tells
        return through_the_store()


def _word(kept: object) -> str:
    if not isinstance(kept, str):
        raise TypeError("no word")
    return kept


def through_the_store() -> Kitchen | None:
    """The same by the long way, which also brings an old layout up to date and says plainly what is wrong.

    raises: StoreError
    """
    from assistant.store import kitchens, open_store

    store = open_store()
    try:
        kitchen = kitchens.in_use(store)
    finally:
        store.close()
    return kitchen.taken_for_granted() if kitchen else None
