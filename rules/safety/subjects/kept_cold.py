"""How long cooked food keeps cold. Elevation has no part in it: a refrigerator is as cold as its dial."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache

from rules import tables
from rules.book import Case, Part, rule
from rules.model import Caution
from rules.safety.local_code import local_code
from rules.said import Said, number, sentences

TABLE = "tables/keeping_foodsafety-cold-storage.csv"
DAYS_A_WEEK = 7
say = sentences("safety/subjects/kept_cold")


@cache
def _rows() -> dict[tuple[str, str], Mapping[str, str]]:
    return {(row["dish"], row["state"]): row for row in tables.read_csv(TABLE).rows}


def keeps(dish_class: str | None, state: str) -> Mapping[str, str]:
    """The row of a class of dish, or of food at large: days in the refrigerator, months in the freezer.

    state: raw or cooked
    source: foodsafety-cold-storage

    >>> keeps("poultry_pieces", "raw")["high_days"], keeps("rice", "cooked")["high_days"]
    ('2', '4')
    """
    return _rows().get((f"class:{dish_class}", state)) or _rows()["class:general", state]


def kept(case: Case, state: str) -> Part:
    """How long a dish keeps, raw or cooked."""
    row = keeps(case.dish_class, state)
    low, high = float(row["low_days"]), float(row["high_days"])
    frozen = bool(row["low_months"])
    food = case.request.dish or (say("raw-food") if state == "raw" else say("cooked-food"))
    return Part(
        headline=say(
            "headline", food=food, fridge=_span(low, high), freezer="some" if frozen else "none",
            months=_months(row) if frozen else "",
        ),
        because=say("because"),
    )  # fmt: skip


def _span(low_days: float, high_days: float) -> Said:
    """A span of days, told in weeks from one week on."""
    if low_days < DAYS_A_WEEK:
        return _ends(low_days, high_days, "day")
    return _ends(low_days / DAYS_A_WEEK, high_days / DAYS_A_WEEK, "week")


def _months(row: Mapping[str, str]) -> Said:
    return _ends(float(row["low_months"]), float(row["high_months"]), "month")


def _ends(low: float, high: float, unit: str) -> Said:
    ends = "two" if low < high else "one" if high > 1 else "single"
    return say("span", low=number(low, 0), high=number(high, 0), ends=ends, unit=unit)


@rule("safety.kept_cold", "foodsafety-cold-storage", "fda-food-code-2022")
def kept_cold(case: Case) -> Part:
    """How long cooked food keeps, and how it gets cold and hot again."""
    return kept(case, "cooked")


@rule("safety.kept_cold_care", "fda-food-code-2022", "usda-fsis-safe-temperatures")
def care(case: Case) -> Part:
    """What cooked food wants before and after its days in the cold."""
    return Part(
        steps=(say("cold"), say("cooled"), say("reheat"), say("trade")),
        cautions=(Caution("warn", say("doubtful"), ("fda-food-code-2022",)),),
    )


NEEDS: tuple[str, ...] = ()
RULES = (kept_cold, care, local_code)
