"""What one guest gets of a dish: raw and cooked, by the way it is served."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

from rules.amounts import yields
from rules.amounts.yields import Yield
from rules.baking.rounding import ML, G
from rules.foods.dishes import PORTIONS, kin
from rules.model import Quantity, Request
from rules.tables import read_csv

SERVINGS = "tables/servings_common-practice.csv"
WAYS = ("main", "side", "starter", "buffet")
HEAD = "head"
# what a buffet is made over what the guests are reckoned to take
BUFFET_OVER = 0.10
# states in which it is bought with what is trimmed off
TRIMMED = ("unpeeled", "untrimmed")
# what the words of an amount say it is of
COOKED, PORTION, EACH, YIELD = "cooked", "portion", "each", "yield"


@dataclass(frozen=True, slots=True)
class Portion:
    """A main-course portion [g]. state, bought_as: how it is bought, and as what where not by its name"""

    raw_g: float
    cooked_g: float
    state: str
    bought_as: str
    source: str

    @property
    def yields(self) -> float:
        """Cooked weight to raw weight."""
        return self.cooked_g / self.raw_g


@dataclass(frozen=True, slots=True)
class Serving:
    """How a dish is usually served, the share of a main-course portion by the way, and how densely it lies in a pan."""

    usual: str
    shares: dict[str, float]
    g_per_ml: float


@dataclass(frozen=True, slots=True)
class Head:
    """What one guest gets [g], served so."""

    way: str
    raw_g: float
    cooked_g: float


@cache
def _rows(table: str) -> dict[str, dict[str, str]]:
    return {row["dish"]: row for row in read_csv(table).rows}


def row_of(table: str, dish: str | None, dish_class: str) -> dict[str, str] | None:
    """The row of a dish, of the dish it cooks like, or of its class; None where the table has none."""
    rows = _rows(table)
    return next((rows[name] for name in (*kin(dish), f"class:{dish_class}") if name in rows), None)


def portion(dish: str | None, dish_class: str) -> Portion:
    """The portion of a dish, by the table.

    >>> portion("white rice", "rice").yields
    2.8
    """
    row = row_of(PORTIONS, dish, dish_class) or _rows(PORTIONS)["class:general"]
    raw_g, cooked_g = float(row["raw_g"]), float(row["cooked_g"])
    known = published(dish, row, cooked_g / raw_g)
    if known is None:
        return Portion(raw_g, cooked_g, row["state"], row["bought_as"], row["source"])
    return Portion(cooked_g / known.share, cooked_g, row["state"], row["bought_as"], known.source)


def published(dish: str | None, row: dict[str, str], usual: float) -> Yield | None:
    """The printed yield that sets what is bought for a portion; None where there is none.

    Of what is trimmed no more reaches the plate than trimming leaves; usual: what the table of portions reckons with.
    """
    if row["bought_as"] and row["dish"] != dish:
        return None
    found = yields.cooked(dish)
    if found:
        return found
    left = yields.trimmed(dish)
    return left if left and row["state"] in TRIMMED and left.share <= usual + 1e-9 else None


def serving(dish: str | None, dish_class: str) -> Serving:
    """How a dish is served.

    >>> serving("white rice", "rice").usual, serving("croissants", "laminated").usual
    ('side', 'head')
    """
    row = row_of(SERVINGS, dish, dish_class)
    if row is None:
        return Serving(HEAD, {HEAD: 1.0, "buffet": 0.8}, 0.6)
    shares = {way: float(row[way]) for way in WAYS if row[way]}
    return Serving(row["usual"], shares | ({HEAD: 1.0} if row["usual"] == HEAD else {}), float(row["g_per_ml"]))


def is_served(dish: str | None, dish_class: str) -> bool:
    """Whether it is dished up from a pan; what is baked or poured by the piece is not."""
    return row_of(SERVINGS, dish, dish_class) is not None


def way_of(request: Request) -> str:
    """The way it is served: as the cook said, where the dish is served so, else the usual one."""
    served = serving(request.dish, request.dish_class or "general")
    return request.course if request.course in served.shares else served.usual


def head(request: Request, way: str = "") -> Head:
    """What one guest gets; the weight that the cook wants on the plate, where one was said."""
    dish_class = request.dish_class or "general"
    one, served = portion(request.dish, dish_class), serving(request.dish, dish_class)
    way = way or way_of(request)
    wanted = grams(request.quantity) if request.quantity_of == PORTION else None
    if wanted:
        return Head(way, wanted / one.yields, wanted)
    share = served.shares.get(way, 1.0)
    return Head(way, one.raw_g * share, one.cooked_g * share)


def grams(quantity: Quantity | None) -> float | None:
    """An amount in grams; None for a volume.

    >>> grams(Quantity(2, "kg")), grams(Quantity(1, "cup"))
    (2000.0, None)
    """
    return quantity.value * G[quantity.unit] if quantity and quantity.unit in G else None


def millilitres(quantity: Quantity | None) -> float | None:
    """An amount in millilitres; None for a weight."""
    return quantity.value * ML[quantity.unit] if quantity and quantity.unit in ML else None


def over(way: str) -> float:
    """By what the amount for the guests is multiplied: a buffet is made over."""
    return 1 + BUFFET_OVER if way == "buffet" else 1.0
