"""What an amount is in pieces, in packs of the supplier, and in full-size pans."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass
from functools import cache

from rules.amounts.portion import portion, row_of, serving
from rules.tables import read_toml

PIECES, PACKS = "tables/pieces_common-practice.csv", "tables/packs_common-practice.csv"
CONTAINERS = "lexicon/containers.toml"
# how full a pan is filled
FILL = 0.9
# as near to a whole one as makes no difference
NEARLY = 0.08
# what is asked in: packs of any kind, or cans, which not everything comes in
PACK, CAN, CANS = "pack", "can", ("no10",)
# a pack more is not opened for less than this
HARDLY = 0.02


@dataclass(frozen=True, slots=True)
class Piece:
    """One piece of a dish.

    id: of the wording; grams: of one, raw; portions: how many one serves; first: whether it is counted, not weighed
    """

    id: str
    grams: float | None
    portions: float | None
    first: bool


@dataclass(frozen=True, slots=True)
class Pan:
    """A full-size pan. litres: to the brim"""

    id: str
    inches: float
    litres: float


def piece(dish: str | None, dish_class: str) -> Piece | None:
    """The piece that a dish is bought by, or made as; None where it is by weight only.

    >>> piece("turkey", "whole_bird").grams
    6400.0
    """
    row = row_of(PIECES, dish, dish_class)
    if row is None:
        return None
    grams, portions = (float(row[name]) if row[name] else None for name in ("grams", "portions"))
    return Piece(row["piece"], grams, portions, row["first"] == "yes")


def pack(dish: str | None, dish_class: str) -> tuple[str, float] | None:
    """The pack it is usually sold in, and what that holds [g]."""
    row = row_of(PACKS, dish, dish_class)
    return (row["pack"], float(row["grams"])) if row and row["grams"] else None


@cache
def pans() -> tuple[Pan, ...]:
    """Full-size pans, the shallowest first."""
    rows = (row for row in read_toml(CONTAINERS)["container"] if "litres" in row)
    return tuple(Pan(row["id"], row["inches"], row["litres"]) for row in rows)


def pan_holds_g(pan: Pan, dish: str | None, dish_class: str) -> float:
    """What a pan holds of the cooked dish [g].

    >>> round(pan_holds_g(pans()[0], "white rice", "rice"))
    4860
    """
    return pan.litres * 1000 * FILL * serving(dish, dish_class).g_per_ml


def pan_holds_raw_g(pan: Pan, dish: str | None, dish_class: str) -> float:
    """What goes into a pan raw, or dry [g]."""
    return pan_holds_g(pan, dish, dish_class) / portion(dish, dish_class).yields


def whole(amount: float) -> int:
    """How many whole ones an amount takes; a little over is let be.

    >>> whole(3.05), whole(3.2), whole(0.01)
    (3, 4, 1)
    """
    return max(1, math.ceil(amount - NEARLY))


def needed(amount: float) -> int:
    """How many whole packs hold an amount, as far as a portion can be known.

    >>> needed(2.05), needed(2.01)
    (3, 2)
    """
    return max(1, math.ceil(amount - HARDLY))


def asked_in(pack: str, counted_in: Iterable[str]) -> bool:
    """Whether an amount is asked in packs that it comes in.

    >>> asked_in("bag", ("pack",)), asked_in("bag", ("can",)), asked_in("no10", ("can",))
    (True, False, True)
    """
    return PACK in counted_in or (CAN in counted_in and pack in CANS)
