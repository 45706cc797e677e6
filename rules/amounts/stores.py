"""How what is ordered is sold and kept: its pack, the least a supplier sells, and which store it goes to."""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import cache, lru_cache

from rules.amounts.makings import role_of
from rules.amounts.packs import PACKS
from rules.foods.dishes import dishes, kin
from rules.tables import read_csv

INGREDIENTS = "tables/ingredient_packs_common-practice.csv"
# in the order in which a delivery is put away
STORES = ("meat", "fish", "cold", "frozen", "produce", "dry", "other")
FIGURES = ("grams", "split_g", "g_per_ml", "each_g")
# as near to a whole pack as a scale shows
HAIR = 1e-6
# instead of more single ones than this a full pack is bought, where it is no more than so much over [share]
MOST_SPLITS, LITTLE_OVER = 4, 0.2


@dataclass(frozen=True, slots=True)
class Kept:
    """How an item is sold. grams: of a full pack; split_g: the least that is sold of it; None where unknown."""

    store: str
    pack: str
    grams: float | None
    split_g: float | None
    g_per_ml: float | None
    each_g: float | None


@dataclass(frozen=True, slots=True)
class Packed:
    """Packs that hold an amount: full ones, and splits of what one holds."""

    full: int
    splits: int
    grams: float


@cache
def _rows() -> dict[str, Kept]:
    def figure(row: dict[str, str], name: str) -> float | None:
        return float(row[name]) if row[name] else None

    rows = (
        *((row["dish"], row) for row in read_csv(PACKS).rows),
        *((row["item"], row) for row in read_csv(INGREDIENTS).rows),
    )
    return {name: Kept(row["store"], row["pack"], *(figure(row, column) for column in FIGURES)) for name, row in rows}


# the goods of a menu of hundreds of dishes; recipes may name any others
@lru_cache(maxsize=4096)
def kept(item: str, dish_class: str = "") -> Kept:
    """How an item is sold: by its own row, that of the dish it is like, of its class, or of its kind of ingredient.

    >>> kept("whole milk").store, kept("cornmeal").grams, kept("chuck roast").pack
    ('cold', 22680.0, 'case')
    """
    known = dishes().get(item)
    of_class = dish_class or (known.dish_class if known else "")
    role = role_of(item)
    names = (item, *kin(item), *((f"role:{role}",) if role else ()), f"class:{of_class}")
    other = Kept("other", "", None, None, None, None)
    return next((_rows()[name] for name in names if name in _rows()), other)


def packed(grams: float, of: Kept) -> Packed | None:
    """The packs that hold an amount, never less: full ones, and splits where the supplier breaks a pack.

    >>> packed(30_000, kept("bread flour")), packed(9_000, kept("canned tomatoes")).full
    (Packed(full=1, splits=4, grams=31752.0), 4)
    >>> packed(7_800, kept("green beans")).full
    1
    """
    if of.grams is None:
        return None
    if grams <= 0:
        return Packed(0, 0, 0.0)
    if of.split_g is None:
        full = math.ceil(grams / of.grams - HAIR)
        return Packed(full, 0, full * of.grams)
    full = int(grams / of.grams + HAIR)
    splits = max(0, math.ceil((grams - full * of.grams) / of.split_g - HAIR))
    many = splits > MOST_SPLITS and (full + 1) * of.grams <= grams * (1 + LITTLE_OVER)
    if splits * of.split_g >= of.grams or many:
        full, splits = full + 1, 0
    return Packed(full, splits, full * of.grams + splits * of.split_g)
