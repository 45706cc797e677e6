"""Round amounts of a component, to show a change on where the cook named none."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from typing import Literal

from rules.model import Units
from rules.tables import read_csv

AMOUNTS = "tables/usual_amounts_common-practice.csv"
Asked = Literal["adjust", "mend"]


@dataclass(frozen=True, slots=True)
class Usual:
    """A component as recipes have it. item: what to call it; weighed_as: its name in the pantry."""

    item: str
    weighed_as: str
    us: tuple[float, str]
    metric: tuple[float, str]

    def amount(self, units: Units) -> tuple[float, str]:
        """The amount with its unit, round in this system."""
        return self.us if units == "us" else self.metric


def usual(asked: Asked, component: str, style: str = "") -> Usual | None:
    """What recipes usually have of a component, of this style where the table tells; None where it has no row.

    asked: whether a formula is adjusted or a dish is mended

    >>> usual("mend", "liquid", "pie").us, usual("mend", "liquid", "biscuit").us
    ((4.0, 'tbsp'), (1.0, 'cup'))
    """
    rows = _rows()
    return rows.get((asked, component, style)) or rows.get((asked, component, ""))


@cache
def _rows() -> dict[tuple[str, str, str], Usual]:
    return {
        (r["asked"], r["component"], r["style"]): Usual(
            r["item"], r["weighed_as"], (float(r["us"]), r["us_unit"]), (float(r["metric"]), r["metric_unit"])
        )
        for r in read_csv(AMOUNTS).rows
    }
