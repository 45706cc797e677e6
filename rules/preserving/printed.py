"""The printed processes: minutes by food, style, pack and jar, in boiling water and under pressure."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from functools import cache

from rules.model import Request
from rules.preserving import jars
from rules.preserving.vessel import PRESSURE, food_of
from rules.tables import read_csv, read_toml

WATER, UNDER_PRESSURE = "tables/canning_water_usda-aib-539.csv", "tables/canning_under_pressure_usda-aib-539.csv"
RECIPES, PACKING = "tables/canning_recipes_usda-aib-539.csv", "lexicon/packing.toml"
# the columns of the table for boiling water
COLUMNS = ("to_1000", "to_3000", "to_6000", "over_6000")
PACKS = ("hot", "raw")


@dataclass(frozen=True, slots=True)
class Row:
    """One printed row. minutes: by column in boiling water, one time under pressure; gauge: the part of the table."""

    process: str
    style: str
    packs: tuple[str, ...]
    jars: tuple[str, ...]
    minutes: tuple[float, ...]
    gauge: str
    memory: bool


@dataclass(frozen=True, slots=True)
class Recipe:
    """The tested recipe a process belongs to. guide: of the Complete Guide, None where another text prints it."""

    process: str
    guide: str | None
    headspace_in: float
    memory: bool


@cache
def rows(canner: str) -> tuple[Row, ...]:
    """The table of a canner: "pressure", or any other for boiling water."""
    under = canner == PRESSURE
    return tuple(_row(row, under) for row in read_csv(UNDER_PRESSURE if under else WATER).rows)


def _row(row: dict[str, str], under: bool) -> Row:
    cells = (row["time_min"],) if under else tuple(row[name] for name in COLUMNS)
    return Row(
        row["process"],
        row["style"],
        tuple(row["pack"].split()),
        tuple(row["jars"].split()),
        tuple(map(float, cells)),
        row.get("gauge", ""),
        row["basis"] == "from memory",
    )


@cache
def recipes() -> dict[str, Recipe]:
    """Every tested recipe by its process."""
    return {
        row["process"]: Recipe(
            row["process"], row["guide"] or None, float(row["headspace_in"]), row["basis"] == "from memory"
        )
        for row in read_csv(RECIPES).rows
    }


def recipe_of(request: Request) -> Recipe | None:
    """The tested recipe of the food of a request."""
    return recipes().get(food_of(request).process)


@cache
def _meant() -> dict[str, tuple[str, ...]]:
    return {row["id"]: tuple(row.get("means", (row["id"],))) for row in read_toml(PACKING)["packing"]}


def meant(request: Request) -> frozenset[str]:
    """The styles and packs that the cook named; one that is named closely stands for a word that may mean several."""
    each = [_meant().get(word, ()) for word in request.packing]
    close = {ids[0] for ids in each if len(ids) == 1}
    return frozenset(id for ids in each for id in ids if len(ids) == 1 or close.isdisjoint(ids))


def of_food(request: Request, canner: str) -> tuple[Row, ...]:
    """The rows of the food of a request, of the styles and the pack that were named where any is printed.

    A style that was not named gives way to the plain food where that is printed: soup, and not soup with fish in it.
    """
    named, process = meant(request), food_of(request).process
    found = tuple(row for row in rows(canner) if process and row.process == process)
    plain = tuple(row for row in found if not row.style)
    styled = tuple(row for row in found if row.style and row.style in named) or plain or found
    packs = [pack for pack in PACKS if pack in named]
    packed = tuple(
        replace(row, packs=tuple(packs)) for row in styled if len(packs) == 1 and set(packs) <= set(row.packs)
    )
    return packed or styled


def unprinted_pack(request: Request, canner: str) -> str | None:
    """The pack that was named and is printed for none of the food's rows: raw pears."""
    packs, found = [pack for pack in PACKS if pack in meant(request)], of_food(request, canner)
    return packs[0] if len(packs) == 1 and found and not any(packs[0] in row.packs for row in found) else None


def asked_sizes(request: Request) -> tuple[str, ...]:
    """The printed sizes of the jars that were named."""
    return tuple(dict.fromkeys(size for jar in request.jars if (size := jars.size_of(jar))))


def too_big(request: Request, canner: str) -> bool:
    """Whether a jar was named that is bigger than every one that is printed for the food in this canner."""
    found = of_food(request, canner)
    if not found:
        return False
    printed = tuple(size for row in found for size in row.jars)
    named = [jars.size_of(jar) for jar in request.jars]
    return any(size is None or jars.fitting(size, printed) is None for size in named)


def asked(request: Request, canner: str) -> Iterator[tuple[str, str, str, Row]]:
    """Style, pack, jar and row of every process that can be meant; a jar takes the next bigger one that is printed.

    Where no jar was named, all that are printed but half gallons.
    """
    found, wanted = of_food(request, canner), asked_sizes(request)
    for style, pack in dict.fromkeys((row.style, pack) for row in found for pack in row.packs):
        own = {jar: row for row in found if row.style == style and pack in row.packs for jar in row.jars}
        fit = {jars.fitting(size, tuple(own)) for size in wanted} if wanted else set(own) - {"half_gallon"}
        yield from ((style, pack, jar, own[jar]) for jar in jars.sizes() if jar in fit)


def shortest_min(request: Request, canner: str) -> float | None:
    """The shortest time that is printed for the food, packs and jars of a request [min], in the first column.

    None where nothing is printed.
    """
    return min((row.minutes[0] for _, _, _, row in asked(request, canner)), default=None)
