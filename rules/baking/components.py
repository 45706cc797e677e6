"""Which components of the formula a style changes, and how much of the tables' change it takes."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache, lru_cache

from rules.baking import bands
from rules.baking.bands import Span
from rules.said import Words, sentences
from rules.tables import read_csv

TABLE = "tables/style_components.csv"
# ratios of a few thousand kitchens, asked for again by every recipe
KEPT = 65_536
say = sentences("baking/components")


@dataclass(frozen=True, slots=True)
class Share:
    """How much of the tables' change a style takes, 0 to 1, with its range; note says why where it takes none."""

    low: float
    value: float
    high: float
    source: str
    note: Words


def _note(row: dict[str, str]) -> Words:
    return "" if float(row["share"]) else say("stays", row=f"{row['style']}-{row['component']}")


@cache
def _shares() -> dict[tuple[str, str], Share]:
    return {
        (r["style"], r["component"]): Share(
            float(r["share_low"]), float(r["share"]), float(r["share_high"]), r["source"], _note(r)
        )
        for r in read_csv(TABLE).rows
    }


def share(style: str, component: str) -> Share | None:
    """The share of a style in a component's change; None where the component is no part of that style's advice.

    >>> share("brownie", "fat").value
    0.5
    >>> share("braise", "sugar") is None
    True
    """
    return _shares().get((style, component))


def change(style: str, component: str, elevation_m: float) -> Span:
    """The style's own change at an elevation, against sea level: a signed fraction (the oven in degF).

    style, component: a row of the style table; nothing changes where there is none
    elevation_m: height above sea level [m]
    source: the row's own, and the tables of the component

    >>> change("layer_cake", "leavening", 7000 * 0.3048).value
    -0.25
    """
    part = share(style, component)
    if part is None:
        return bands.NOTHING
    tables = bands.change(component, elevation_m)
    ends = [end * s for end in (tables.low, tables.high) for s in (part.low, part.high)]
    if (style, component) == ("quick_bread", "leavening"):
        ends.append(bands.change("quick_bread_leavening", elevation_m).low)
    return Span(part.value * tables.value, min(ends), max(ends))


@lru_cache(maxsize=KEPT)
def ratio(style: str, component: str, from_m: float, to_m: float) -> Span:
    """How many times the baseline's amount is right here, from one elevation [m] to another.

    Each elevation has its own amount against sea level; the ratio of the two takes a recipe from any place to any
    other, and back to where it began.

    >>> there = ratio("layer_cake", "liquid", 0, 2133.6).value
    >>> there, there * ratio("layer_cake", "liquid", 2133.6, 0).value
    (1.21875, 1.0)
    """
    if from_m == to_m:
        return bands.AS_IS
    here, there = (change(style, component, m).map(lambda x: 1 + x) for m in (to_m, from_m))
    return here.against(there, lambda a, b: a / b)


def difference(style: str, component: str, from_m: float, to_m: float) -> Span:
    """How much is added to the baseline's figure, from one elevation [m] to another; the oven in degF.

    >>> difference("layer_cake", "oven", 0, 2133.6)
    Span(value=20.0, low=15.0, high=25.0)
    """
    if from_m == to_m:
        return bands.NOTHING
    here, there = (change(style, component, m) for m in (to_m, from_m))
    return here.against(there, lambda a, b: a - b)


def sources(style: str, component: str) -> tuple[str, ...]:
    """Source ids of a style's change: the row's own, then the tables'."""
    part = share(style, component)
    own = (part.source,) if part else ()
    tables = bands.sources(component) if component in bands.TABLES else ()
    return tuple(dict.fromkeys(own + (tables if part and part.value else ())))
