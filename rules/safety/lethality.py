"""One judge of time and temperature: whether a food held so hot for so long is safe, by the printed tables.

A table is read at the hottest printed row that was reached, and never between rows. Where two tables are for the same
food the longer time counts. The row of the safe temperatures is safe as well, after the rest it asks for. Which tables
a kind of food is judged by stands in data/tables/lethality_kinds_common-practice.csv.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

from rules import safety
from rules.errors import UnknownWord
from rules.foods.dishes import traits_of
from rules.physics.units import to_c, to_f
from rules.said import Said
from rules.tables import read_csv

KINDS, WORDING = "tables/lethality_kinds_common-practice.csv", "safety/kinds"
# half of the last place of a temperature printed in degC, so that 54.4 degC is the row of 130 degF
ROUNDING_F = 0.09
# the chart prints 160 degF as 71 degC, whole degrees
CHART_ROUNDING_K = 0.12
# the piece that is reckoned with where nobody measures one, and the thickest that is printed, for a whole bird
THIN_MM, THICKEST_MM = 25, 70
AT_ONCE_MIN = 1e-9


@dataclass(frozen=True, slots=True)
class Hold:
    """A printed row: held at this temperature [degF] for this time [min], by this source."""

    temp_f: float
    time_min: float
    source: str


@dataclass(frozen=True, slots=True)
class Kind:
    """How a kind of food is judged.

    name: the kind in words
    tables: files of data/tables for the time in the centre; chart: its row of the safe temperatures
    bath: the file of times in a water bath, "" for none; bath_c: what to set instead of a bath that is too cool [degC]
    """

    id: str
    name: str
    tables: tuple[str, ...]
    chart: str
    bath: str
    bath_c: float


@dataclass(frozen=True, slots=True)
class Judgement:
    """Whether a food is safe.

    needs_min: how long it must be held at this temperature [min], 0 for at once, None where no table goes so low
    least_c: the coolest printed temperature of all that it is judged by [degC]
    source: the table that decided, an id of data/sources.toml
    """

    safe: bool
    needs_min: float | None
    least_c: float
    source: str


@cache
def rows(file: str) -> tuple[Hold, ...]:
    """The rows of a table in data/tables, coolest first."""
    table = read_csv(f"tables/{file}.csv")
    return tuple(
        Hold(float(row["temp_f"]), float(row["time_min"]), row.get("source", table.source)) for row in table.rows
    )


def printed(file: str, temp_c: float) -> Hold | None:
    """The row for a temperature [degC]: the hottest printed one that it reaches; None under the coolest.

    >>> printed("roast_lethality_ny-1-nycrr-271", 54.6).time_min
    121.0
    >>> printed("roast_lethality_ny-1-nycrr-271", 54.0) is None
    True
    """
    reached = [row for row in rows(file) if row.temp_f <= to_f(temp_c) + ROUNDING_F]
    return max(reached, key=lambda row: row.temp_f) if reached else None


@cache
def kinds() -> dict[str, Kind]:
    """Every kind of food that can be judged, by id."""
    return {
        row["kind"]: Kind(
            row["kind"],
            row["name"],
            tuple(row["tables"].split()),
            row["chart"],
            row["bath"],
            to_c(float(row["bath_f"])),
        )
        for row in read_csv(KINDS).rows
    }


def kind(food: str) -> Kind:
    """How a kind of food is judged.

    raises: UnknownWord for a kind that is not in the table
    """
    try:
        return kinds()[food]
    except KeyError:
        raise UnknownWord.among("kind of food", food, kinds()) from None


def called(kind: str) -> Said:
    """What to call a kind of food in a sentence."""
    return Said(WORDING, kind)


def called_held(kind: str) -> Said:
    """The same where a piece of it is held at a temperature: a whole roast, eggs in the shell."""
    return Said(WORDING, f"{kind}.held")


def kind_judged(dish: str | None, dish_class: str) -> str | None:
    """The kind that a dish is judged as: its row of the safe temperatures, eggs and pork apart; None for most food.

    >>> kind_judged("pork chops", "tender_cut"), kind_judged("eggs", "egg"), kind_judged("carrots", "root_vegetable")
    ('pork', 'egg', None)
    """
    charted = safety.kind_of(dish, dish_class)
    if charted == "egg_dish" and dish_class == "egg":
        return "egg"
    return "pork" if charted == "whole_cut" and "pork" in traits_of(dish, dish_class) else charted


def judge(food: str, temp_c: float, time_min: float | None = None) -> Judgement:
    """Judge a food whose coldest point was held at a temperature [degC] for a time [min], or only reached it (None).

    food: a kind of data/tables/lethality_kinds_common-practice.csv
    raises: UnknownWord for another kind
    source: fda-food-code-2022, fsis-gd-2021-14, usda-fsis-safe-temperatures and what the table of kinds names

    >>> judge("poultry", 54.5, 120).safe, judge("poultry", 60, 35).safe, judge("ground_meat", 51.7, 9999).safe
    (False, True, False)
    """
    of = kind(food)
    holds = [*_charted(of, temp_c), *_longest(of, temp_c)]
    least = min((*_coolest(of), safety.row_of(of.chart).temp_c))
    if not holds:
        return Judgement(safe=False, needs_min=None, least_c=least, source=_first_source(of))
    hold = min(holds, key=lambda row: row.time_min)
    safe = (time_min or 0.0) >= hold.time_min - AT_ONCE_MIN
    return Judgement(safe, hold.time_min, least, hold.source)


def _longest(of: Kind, temp_c: float) -> list[Hold]:
    """The longest time of the tables, once the temperature has reached all of them; none else."""
    found = [row for file in of.tables if (row := printed(file, temp_c))]
    return [max(found, key=lambda row: row.time_min)] if found and len(found) == len(of.tables) else []


def _charted(of: Kind, temp_c: float) -> list[Hold]:
    safe = safety.row_of(of.chart)
    reached = temp_c >= safe.temp_c - CHART_ROUNDING_K
    return [Hold(to_f(safe.temp_c), safe.rest_min, safe.source)] if reached else []


def _coolest(of: Kind) -> list[float]:
    """The temperature at which all of the tables have begun [degC]."""
    return [to_c(max(rows(file)[0].temp_f for file in of.tables))] if of.tables else []


def _first_source(of: Kind) -> str:
    return rows(of.tables[0])[0].source if of.tables else safety.row_of(of.chart).source


@cache
def _bath_times(file: str) -> dict[tuple[int, int], float]:
    """Printed times in a water bath [min] by thickness [mm] and bath [degC]."""
    return {
        (int(r["thickness_mm"]), int(r["bath_c"])): float(r["time_min"]) for r in read_csv(f"tables/{file}.csv").rows
    }


def bath_source(food: str) -> str:
    """The source of the times in a water bath; "" for a kind that has none."""
    return read_csv(f"tables/{kind(food).bath}.csv").source if kind(food).bath else ""


def bath_min(food: str, bath_c: float, thickness_mm: int = THIN_MM) -> float | None:
    """How long a piece from the refrigerator stays in a water bath until its middle is safe [min].

    The printed time for the hottest printed bath that is no hotter, but never under the time that the centre itself
    must be held. Between the coolest row for the centre and the coolest printed bath the heat-up of that bath is added
    to the hold. None for a bath that no table goes down to, and for a kind without such a table.
    thickness_mm: 5 to 70 in steps of 5
    source: baldwin-sous-vide, and that of the kind

    >>> bath_min("poultry", 60.0), bath_min("poultry", 54.5), bath_min("whole_cut", 55.0)
    (90.0, None, 165.0)
    """
    of, hold = kind(food), judge(food, bath_c).needs_min
    if not of.bath or hold is None:
        return None
    baths = sorted(bath for size, bath in _bath_times(of.bath) if size == thickness_mm)
    reached = [bath for bath in baths if bath <= bath_c + ROUNDING_F / 1.8]
    coolest = float(reached[-1] if reached else baths[0])
    time = _bath_times(of.bath)[thickness_mm, int(coolest)]
    if reached:
        return max(time, hold)
    return time + hold - (judge(food, coolest).needs_min or 0.0)
