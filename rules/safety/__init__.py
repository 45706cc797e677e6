"""Food safety: safe minimum internal temperatures, and below this folder a room for each question of safety.

Safe temperatures are temperatures of the food and do not move with elevation. A room here is named as its subject in
data/lexicon/safety_subjects.toml and answers a request with that subject whatever the topic; see rules/book.py.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

from rules.book import Case
from rules.foods.dishes import traits_of
from rules.model import Caution
from rules.physics.units import to_c
from rules.said import exact_duration, sentences, temp
from rules.tables import read_csv

TEMPERATURES = "tables/safe_temperatures_usda-fsis-safe-temperatures.csv"
KINDS = "tables/safe_kinds_common-practice.csv"
BY_TRAIT = "by_trait"
say = sentences("safety/chart")
KIND_OF_TRAIT = {
    "poultry": "poultry",
    "stuffed": "stuffing",
    "trichinella": "wild_game",
    "ground": "ground_meat",
    "game": "game",
    "egg": "egg_dish",
    "whole_cut": "whole_cut",
    "fish": "fish",
}


@dataclass(frozen=True, slots=True)
class SafeTemperature:
    """A row of the chart: the temperature of the centre [degC], the rest after it [min], and the food it is for.

    always_said: whether every reply about such a dish names it
    """

    kind: str
    temp_c: float
    rest_min: float
    food: str
    always_said: bool
    source: str


@cache
def _rows() -> dict[str, dict[str, str]]:
    return {row["kind"]: row for row in read_csv(TEMPERATURES).rows}


@cache
def _kinds() -> dict[str, tuple[str, bool]]:
    return {row["dish_class"]: (row["kind"], row["always"] == "yes") for row in read_csv(KINDS).rows}


def chart() -> tuple[SafeTemperature, ...]:
    """Every row of the chart, in its order.

    source: usda-fsis-safe-temperatures
    """
    return tuple(row_of(kind) for kind in _rows())


def row_of(kind: str, *, always_said: bool = False) -> SafeTemperature:
    """A row of the chart.

    raises: KeyError for a kind that has none
    """
    row = _rows()[kind]
    temp_c, rest_min = to_c(float(row["temp_f"])), float(row["rest_min"])
    return SafeTemperature(kind, temp_c, rest_min, row["food"], always_said, row["source"])


def kind_of(dish: str | None, dish_class: str) -> str | None:
    """The row of the chart that a dish falls under, or None: its class's or that of a trait, whichever is the hottest.

    A class's row counts only while the dish has the trait behind it: rabbit cooks like poultry and is none.

    >>> kind_of("turkey burgers", "ground_meat"), kind_of("rabbit", "poultry_pieces"), kind_of("tempura", "battered")
    ('poultry', 'game', None)
    """
    if dish_class not in _kinds():
        return None
    of_class, traits = _kinds()[dish_class][0], traits_of(dish, dish_class)
    found = [kind for trait, kind in KIND_OF_TRAIT.items() if trait in traits]
    if of_class != BY_TRAIT and (of_class not in KIND_OF_TRAIT.values() or of_class in found or not found):
        found.insert(0, of_class)
    return max(found, key=lambda kind: row_of(kind).temp_c, default=None)


def safe_temperature(dish: str | None, dish_class: str) -> SafeTemperature | None:
    """The row of the chart for a dish, or None for a food that has none. Ground and cased poultry count as poultry.

    source: usda-fsis-safe-temperatures, foodsafety-chart, fda-food-code-2022

    >>> safe_temperature("chicken thighs", "poultry_pieces").temp_c
    73.88888888888889
    >>> safe_temperature("turkey burgers", "ground_meat").kind
    'poultry'
    """
    kind = kind_of(dish, dish_class)
    return row_of(kind, always_said=_kinds()[dish_class][1]) if kind else None


def caution(case: Case, safe: SafeTemperature) -> Caution:
    """The safe temperature as a caution."""
    text = say(
        "caution",
        temperature=temp(safe.temp_c),
        rest="rested" if safe.rest_min else "at_once",
        time=exact_duration(safe.rest_min),
        kind=safe.kind,
    )
    return Caution("warn", text, (safe.source,))
