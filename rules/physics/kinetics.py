"""How fast food softens: time against temperature, by class of dish."""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import cache

from rules.errors import within
from rules.tables import BadTable, read_csv

GAS_J_PER_MOL_K = 8.31446
GENERAL = "general"


@dataclass(frozen=True, slots=True)
class Softening:
    """How strongly a class of dish depends on the temperature of the liquid or steam around it.

    z_low_k, z_k, z_high_k: fall in temperature [K] that makes it ten times slower: most sensitive, likely, least
    threshold_c: boiling point of water [degC] below which it practically does not soften, None where there is none
    source: id in data/sources.toml
    """

    dish_class: str
    z_low_k: float
    z_k: float
    z_high_k: float
    threshold_c: float | None
    source: str
    note: str

    def __post_init__(self) -> None:
        if not 0 < self.z_low_k <= self.z_k <= self.z_high_k:
            raise BadTable(f"softening_z.csv: {self.dish_class}: write 0 < z_low_k <= z_k <= z_high_k")


def rate_factor(temp_c: float, reference_c: float, z_k: float) -> float:
    """How many times longer the cooking takes at temp_c than at reference_c: 10^((reference - temp) / z).

    temp_c, reference_c: temperature at the food [degC]
    z_k: change of temperature for a factor of ten [K], 1 to 1000
    returns: factor [-], above 1 where it is cooler than the reference
    raises: OutOfRange for z outside that range
    source: mansfield-1962

    >>> round(rate_factor(94.90, 99.97, 19), 2)
    1.85
    """
    return math.pow(10, (reference_c - temp_c) / within("z", z_k, 1, 1000, "K"))


def z_from_activation(ea_kj_per_mol: float, temp_c: float) -> float:
    """The z that has the same slope at temp_c as an Arrhenius law: ln(10) R T^2 / Ea.

    ea_kj_per_mol: activation energy [kJ/mol], 5 to 1000
    temp_c: temperature about which it is used [degC], 0 to 200
    returns: z [K]
    raises: OutOfRange outside those ranges
    source: computed

    >>> round(z_from_activation(80, 95))
    32
    """
    ea_j = 1000 * within("activation energy", ea_kj_per_mol, 5, 1000, "kJ/mol")
    temp_k = within("temperature", temp_c, 0, 200, "degC") + 273.15
    return math.log(10) * GAS_J_PER_MOL_K * temp_k**2 / ea_j


@cache
def _table() -> dict[str, Softening]:
    return {
        row["dish_class"]: Softening(
            row["dish_class"],
            float(row["z_low_k"]),
            float(row["z_k"]),
            float(row["z_high_k"]),
            float(row["threshold_c"]) if row["threshold_c"] else None,
            row["source"],
            row["note"],
        )
        for row in read_csv("tables/softening_z.csv").rows
    }


def softening(dish_class: str) -> Softening:
    """The softening of a class of dish; the row `general` for a class that has none of its own.

    source: in the row

    >>> softening("dried_bean").threshold_c
    90.5
    >>> softening("cookie").dish_class
    'general'
    """
    return _table().get(dish_class, _table()[GENERAL])
