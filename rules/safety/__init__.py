"""Food safety: safe minimum internal temperatures, and below this folder a room for each question of safety.

Safe temperatures are temperatures of the food and do not move with elevation. A room here is named as its subject in
data/lexicon/safety_subjects.toml and answers a request with that subject whatever the topic; see rules/book.py.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

from rules.case import Case
from rules.model import Caution
from rules.say import to_c
from rules.tables import read_csv

TEMPERATURES = "tables/safe_temperatures_usda-fsis-safe-temperatures.csv"
KINDS = "tables/safe_kinds_common-practice.csv"
POULTRY_WORDS = ("chicken", "turkey", "duck", "goose", "hen", "poultry", "quail", "pheasant")


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
    return tuple(_row(kind, always_said=False) for kind in _rows())


def _row(kind: str, *, always_said: bool) -> SafeTemperature:
    row = _rows()[kind]
    return SafeTemperature(kind, to_c(float(row["temp_f"])), float(row["rest_min"]), row["food"], always_said)


def safe_temperature(dish: str | None, dish_class: str) -> SafeTemperature | None:
    """The row of the chart for a dish, or None for a food that has none. Ground and cased poultry count as poultry.

    source: usda-fsis-safe-temperatures

    >>> safe_temperature("chicken thighs", "poultry_pieces").temp_c
    73.88888888888889
    >>> safe_temperature("turkey burgers", "ground_meat").kind
    'poultry'
    """
    if dish_class not in _kinds():
        return None
    kind, always = _kinds()[dish_class]
    if kind == "ground_meat" and any(word in (dish or "") for word in POULTRY_WORDS):
        kind = "poultry"
    return _row(kind, always_said=always)


def caution(case: Case, safe: SafeTemperature) -> Caution:
    """The safe temperature as a caution."""
    rest = f", then let it rest {safe.rest_min:.0f} min" if safe.rest_min else ""
    return Caution(
        "warn",
        f"The centre must reach {case.say.temp(safe.temp_c)} by thermometer{rest}. That holds at every elevation.",
        ("usda-fsis-safe-temperatures",),
    )
