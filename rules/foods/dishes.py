"""What the rules know of a dish: its class, its usual methods, its time at sea level, its portion."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from functools import cache
from typing import Any

from rules import tables
from rules.kept import kept

TIMES = "tables/cooking_times_common-practice.csv"
PORTIONS = "tables/portions_common-practice.csv"
CUT_TIMES = "tables/cut_times_common-practice.csv"
CHECKS = "lexicon/checks.toml"


@dataclass(frozen=True, slots=True)
class DishClass:
    """A class of dishes that cook alike.

    check: what the cook looks for when the time is up; check_by: what instead, by method
    varies: what a range of times goes by, in words; traits: what its foods are, ids of lexicon/traits.toml
    head: whether its word behind another dish says what the dish is: oxtail stew, but not salmon steak
    say: slot of a request -> what the cook may say that narrows the range
    """

    id: str
    label: str
    taken_for: str
    check: str
    varies: str
    default_method: str
    check_by: dict[str, str]
    traits: tuple[str, ...]
    head: bool = False
    say: dict[str, str] = field(default_factory=dict)

    def check_for(self, method: str | None) -> str:
        """What the cook looks for when this class is cooked by a method."""
        return self.check_by.get(method or "", self.check)


@dataclass(frozen=True, slots=True)
class Dish:
    """A dish by name, with its class, its methods (usual first) and the words it is heard as.

    like: the dish that it cooks like, and whose times and portions it shares unless it has its own; "" for none
    traits: what the food is, ids of lexicon/traits.toml: its class's, with what its row adds and without what it takes
    """

    name: str
    dish_class: str
    methods: tuple[str, ...]
    heard_as: tuple[str, ...]
    like: str = ""
    traits: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Span:
    """A range of cooking times at sea level [min] and the source that gives it. note says what the range is of."""

    low_min: float
    high_min: float
    source: str
    note: str = ""


@cache
def classes() -> dict[str, DishClass]:
    """Every dish class by id."""
    rows = tables.read_toml("lexicon/classes.toml")["class"]
    return {r["id"]: DishClass(**{"check_by": {}, **r, "traits": tuple(r.get("traits", ()))}) for r in rows}


@kept
def dishes() -> dict[str, Dish]:
    """Every dish by name, families in alphabetical order."""
    folder = tables.data_path("lexicon/dishes")
    files = sorted(f.name for f in folder.iterdir() if f.name.endswith(".toml"))
    rows = [row for name in files for row in tables.read_toml(f"lexicon/dishes/{name}")["dish"]]
    return {dish.name: dish for row in rows for dish in in_row(row)}


def in_row(row: dict[str, Any]) -> Iterator[Dish]:
    """The dishes of a row of the lexicon: its own, then those that cook like it.

    row: name, class, methods, and perhaps heard_as, traits and cooks_like, a list of names or of tables with name and
    perhaps heard_as and traits of their own in the place of the row's

    >>> row = {"name": "beignets", "class": "fried_dough", "methods": ["fry"], "cooks_like": [{"name": "churros"}]}
    >>> [(dish.name, dish.like) for dish in in_row(row)]
    [('beignets', ''), ('churros', 'beignets')]
    """
    methods, changes = tuple(row["methods"]), row.get("traits", ())
    of = classes()[row["class"]].traits if row["class"] in classes() else ()
    yield Dish(row["name"], row["class"], methods, tuple(row.get("heard_as", ())), "", with_changes(of, changes))
    for other in row.get("cooks_like", ()):
        own = {"name": other} if isinstance(other, str) else other
        traits = with_changes(of, own.get("traits", changes))
        yield Dish(own["name"], row["class"], methods, tuple(own.get("heard_as", ())), row["name"], traits)


def with_changes(traits: Iterable[str], changes: Iterable[str]) -> tuple[str, ...]:
    """The traits of a class, with what a row adds and without what it takes away ("-perishable").

    >>> with_changes(("ground", "perishable"), ("-perishable", "shelf_stable"))
    ('ground', 'shelf_stable')
    """
    taken = {change[1:] for change in changes if change.startswith("-")}
    added = (change for change in changes if not change.startswith("-"))
    return tuple(trait for trait in (*traits, *added) if trait not in taken)


def traits_of(dish: str | None, dish_class: str | None) -> tuple[str, ...]:
    """What a food is: the dish's traits, or where the dish is unknown its class's.

    >>> "jerky" in traits_of("beef jerky", "cured_meat"), "cooked_starch" in traits_of(None, "rice")
    (True, True)
    """
    known = dishes().get(dish or "")
    if known:
        return known.traits
    return classes()[dish_class].traits if dish_class in classes() else ()


def kin(dish: str | None) -> tuple[str, ...]:
    """The names to look a dish up by, the nearest first: its own, then that of the dish it cooks like.

    >>> kin("short ribs"), kin(None)
    (('short ribs',), ())
    """
    known = dishes().get(dish or "")
    return tuple(name for name in (dish, known.like if known else "") if name)


@cache
def _checks() -> dict[tuple[str, str], str]:
    rows = tables.read_toml(CHECKS)["check"]
    return {(name, by): row["signs"] for row in rows for name in row["of"] for by in row.get("by", ("",))}


def check_of(dish: str | None, dish_class: str, method: str | None) -> str:
    """What the cook looks for when the time is up: the dish's own sign, else that of its class.

    source: common-practice

    >>> check_of("gnocchi", "dumpling", "boil")
    'They float and have had half a minute more; one that is tasted has no floury middle.'
    """
    own = ((name, by) for name in kin(dish) for by in (method or usual_method(dish, dish_class) or "", ""))
    signs = next((_checks()[key] for key in own if key in _checks()), None)
    return signs or classes()[dish_class].check_for(method)


def usual_method(dish: str | None, dish_class: str) -> str | None:
    """The method a cook means when naming only the dish.

    >>> usual_method("short ribs", "collagen_cut")
    'braise'
    """
    known = dishes().get(dish or "")
    if known:
        return known.methods[0]
    return classes()[dish_class].default_method if dish_class in classes() else None


@kept
def _times() -> dict[tuple[str, str], Span]:
    rows = tables.read_csv(TIMES).rows
    return {
        (r["dish"], r["method"]): Span(float(r["low_min"]), float(r["high_min"]), r["source"], r["note"]) for r in rows
    }


@cache
def _cut_times() -> dict[tuple[str, str], dict[str, Span]]:
    found: dict[tuple[str, str], dict[str, Span]] = {}
    table = tables.read_csv(CUT_TIMES)
    for r in table.rows:
        span = Span(float(r["low_min"]), float(r["high_min"]), table.source)
        found.setdefault((r["dish"], r["method"]), {})[r["cut"]] = span
    return found


def cut_times(dish: str | None, method: str) -> dict[str, Span]:
    """Times at sea level by how a dish is cut [min], by id of lexicon/cuts.toml; empty where it is timed in one way.

    source: common-practice

    >>> cut_times("beets", "boil")["large"].high_min
    75.0
    """
    return next((_cut_times()[name, method] for name in kin(dish) if (name, method) in _cut_times()), {})


def sea_level_time(dish: str | None, dish_class: str, method: str) -> Span | None:
    """Time at sea level by the table [min]: the dish's row, the dish's it cooks like, its class's, or None.

    >>> sea_level_time("short ribs", "collagen_cut", "braise").low_min
    150.0
    """
    rows = (_times().get((name, method)) for name in (*kin(dish), f"class:{dish_class}"))
    return next((span for span in rows if span), None)
