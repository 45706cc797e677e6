"""What may lie behind a symptom, how often, and which change mends it."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from typing import Literal, cast

from rules.baking.change import Way, What
from rules.mending.symptoms import Symptom
from rules.physics.units import FT_PER_M
from rules.said import Said, Words
from rules.tables import read_csv

CAUSES = "tables/causes_common-practice.csv"
WEIGHTS = "tables/symptom_causes_common-practice.csv"
WORDING = "mending/causes"
NEED = re.compile(r"(\w+)([<>])([\d.]+)")
HIGHEST_KFT = 12.0


@dataclass(frozen=True, slots=True)
class Cause:
    """Something that makes a dish go wrong, and the change that mends it.

    by: how the size of the change is found, as the table explains; step: a first trial [fraction, or degF]
    feature, above, bound: the ratio of the formula that makes it likelier; feature "" where none does
    say: the change in words where it has no figure; because: why it goes wrong; both are filled by the bench
    """

    id: str
    what: What
    way: Way
    by: str
    step: float
    feature: str
    above: bool
    bound: float
    source: str
    say: Words
    because: Words

    @property
    def rule(self) -> str:
        """The rule of its change."""
        return f"mending.{self.id}"

    def likelihood(self, features: dict[str, float]) -> float:
        """How much likelier a known formula makes it: 1.6 where its ratio is off, 0.5 where not, 1 where unknown."""
        value = features.get(self.feature)
        if value is None:
            return 1.0
        return 1.6 if (value > self.bound) == self.above else 0.5


@dataclass(frozen=True, slots=True)
class Weight:
    """How often a cause lies behind a symptom [points at sea level], and how much oftener for each 1,000 ft."""

    cause: str
    points: float
    per_kft: float
    classes: tuple[str, ...]

    def at(self, elevation_m: float) -> float:
        """The points at an elevation [m]; held above 12,000 ft, and at sea level's below it."""
        return self.points + self.per_kft * min(max(elevation_m * FT_PER_M / 1000, 0.0), HIGHEST_KFT)


@cache
def causes() -> dict[str, Cause]:
    """Every cause by id."""
    return {r["cause"]: _cause(r) for r in read_csv(CAUSES).rows}


def _cause(row: dict[str, str]) -> Cause:
    need = NEED.fullmatch(row["needs"])
    feature, sign, bound = need.groups() if need else ("", ">", "0")
    return Cause(
        row["cause"], cast(What, row["what"]), cast(Way, row["way"]), row["by"], float(row["step"] or 0),
        feature, sign == ">", float(bound), row["source"], "" if row["by"] else sentence(row["cause"], "change"),
        sentence(row["cause"], "because"),
    )  # fmt: skip


def sentence(cause: str, what: Literal["change", "because"]) -> Said:
    """A sentence of the wording by the id of its cause.

    >>> sentence("door_opened", "because").id
    'door-opened-because'
    """
    return Said(WORDING, f"{cause.replace('_', '-')}-{what}")


@cache
def weights() -> dict[str, tuple[Weight, ...]]:
    """The causes of every symptom with their weights."""
    found: dict[str, list[Weight]] = {}
    for row in read_csv(WEIGHTS).rows:
        weight = Weight(row["cause"], float(row["weight"]), float(row["per_1000ft"]), tuple(row["classes"].split()))
        found.setdefault(row["symptom"], []).append(weight)
    return {symptom: tuple(rows) for symptom, rows in found.items()}


def behind(symptom: Symptom, dish_class: str | None) -> Iterator[Weight]:
    """The causes of a symptom in a class of dish; the symptom's usual class where it does not befall that one.

    >>> from rules.mending.symptoms import catalogue
    >>> any(w.cause == "whites_too_stiff" for w in behind(catalogue()["crumb_coarse"], "foam_cake"))
    True
    """
    usual = next(iter(symptom.classes), None)
    known = dish_class if dish_class in symptom.classes or symptom.dishes else usual
    return (w for w in weights()[symptom.id] if not w.classes or known in w.classes)
