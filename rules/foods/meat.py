"""Meat, by the traits of a dish."""

from __future__ import annotations

from collections.abc import Collection


def raw_meat(traits: Collection[str]) -> bool:
    """Whether a food is meat or poultry that comes to the kitchen raw.

    >>> raw_meat(("meat", "perishable")), raw_meat(("meat", "cured"))
    (True, False)
    """
    return "meat" in traits and "cured" not in traits
