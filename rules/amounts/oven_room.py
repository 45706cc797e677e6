"""What an oven takes at a time: sheets and pans of a food, the shelves they stand on, and how many loads that makes."""

from __future__ import annotations

import math
from dataclasses import dataclass

from rules.amounts import packs
from rules.amounts.portion import row_of
from rules.tables import read_csv

ROOM = "tables/oven_room_common-practice.csv"
# shelves of a full-size oven, a sheet of 18 x 26 in on each
SHELVES = 5
OTHERS = "class:general"
# as near to a whole holder as makes no difference, and a shelf that is hardly over
NEARLY = 0.08


@dataclass(frozen=True, slots=True)
class Holder:
    """What a food stands on in the oven. id: sheet or pan; grams: of it raw on one; to_shelf: how many on a shelf"""

    id: str
    grams: float
    to_shelf: int


@dataclass(frozen=True, slots=True)
class Filled:
    """An amount in an oven. count: of holders; shelves: they stand on; loads: the oven is filled"""

    holder: Holder
    count: int
    shelves: int
    loads: int


def holder(dish: str | None, dish_class: str) -> Holder:
    """What a dish stands on.

    source: common-practice

    >>> holder("lasagna", "casserole").id, holder("cornbread", "quick_bread").grams
    ('pan', 4100.0)
    """
    row = row_of(ROOM, dish, dish_class) or next(row for row in read_csv(ROOM).rows if row["dish"] == OTHERS)
    grams = float(row["held_g"]) if row["held_g"] else packs.pan_holds_raw_g(packs.pans()[0], dish, dish_class)
    return Holder(row["holder"], grams, int(row["to_shelf"]))


def filled(raw_g: float, dish: str | None, dish_class: str, shelves: int = SHELVES) -> Filled:
    """How an amount goes into ovens of so many shelves.

    raw_g: as it goes in [g]; shelves: of all the ovens that are to take it
    source: common-practice

    >>> found = filled(90 * 425, "lasagna", "casserole")
    >>> found.count, found.shelves, found.loads, filled(90 * 425, "lasagna", "casserole", shelves=1).loads
    (4, 2, 1, 2)
    """
    one = holder(dish, dish_class)
    count = max(1, math.ceil(raw_g / one.grams - NEARLY))
    taken = math.ceil(count / one.to_shelf)
    return Filled(one, count, taken, math.ceil(taken / max(1, shelves)))
