"""Meat, by the traits of a dish, and how done it is wanted."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass
from functools import cache

from rules.physics.units import to_c
from rules.tables import read_toml

DONENESS = "lexicon/doneness.toml"


@dataclass(frozen=True, slots=True, kw_only=True)
class Doneness:
    """How done a whole cut is wanted: what cooks call it, and the reading of its centre [degF].

    not_before: words before which its own word means another thing: medium heat
    """

    id: str
    label: str
    heard_as: tuple[str, ...]
    low_f: float
    high_f: float
    not_before: tuple[str, ...] = ()

    @property
    def low_c(self) -> float:
        """The lower reading [degC]."""
        return to_c(self.low_f)

    @property
    def high_c(self) -> float:
        """The higher reading [degC]."""
        return to_c(self.high_f)


@cache
def doneness() -> dict[str, Doneness]:
    """How done meat can be wanted, by id, the rarest first.

    source: common-practice

    >>> round(doneness()["medium_rare"].low_c, 1)
    54.4
    """
    rows = read_toml(DONENESS)["doneness"]
    lists = ("heard_as", "not_before")
    return {r["id"]: Doneness(**(r | {key: tuple(r.get(key, ())) for key in lists})) for r in rows}


def raw_meat(traits: Collection[str]) -> bool:
    """Whether a food is meat or poultry that comes to the kitchen raw.

    >>> raw_meat(("meat", "perishable")), raw_meat(("meat", "cured"))
    (True, False)
    """
    return "meat" in traits and "cured" not in traits
