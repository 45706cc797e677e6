"""Boiled sugar: a stage is a concentration, and a syrup shows it by how far it boils above water."""

from __future__ import annotations

from rules.baking.bands import Span
from rules.baking.batch import Batch
from rules.baking.time_shift import Shift
from rules.physics import water

RULE = "baking.sugar_temp"
# From here on the sugar itself changes and no water is left to boil: chemistry, not pressure. 320 degF.
CARAMEL_C = 160.0


def shift_k(temp_c: float, from_m: float, to_m: float) -> float:
    """How much a sugar temperature moves with the boiling point of water [K]; 0 for caramel.

    temp_c: the temperature there [degC]; from_m, to_m: elevation there and here [m]
    source: usu-faq-453, csu-candy-high-elevation

    >>> round(shift_k(114, 0, 1524) * 1.8, 1), shift_k(170, 0, 1524)
    (-9.1, 0.0)
    """
    there_c = water.boiling_point_c(from_m)
    at_sea_level_c = temp_c + water.boiling_point_c(0) - there_c
    return 0.0 if at_sea_level_c >= CARAMEL_C - 0.3 else water.boiling_point_c(to_m) - there_c


def shift(batch: Batch, temp_c: float) -> Shift:
    """How a sugar temperature moves, or that it does not."""
    kelvin = shift_k(temp_c, batch.from_m, batch.to_m)
    if not kelvin:
        because = (
            "Sugar this hot holds no water any more; it browns by its own temperature, which the air does not change."
        )
        return Shift(Span(0, 0, 0), "sugar_temp", RULE, because, ("from-memory",), stays=True)
    because = (
        f"The stage is how much water is left, and water boils at {batch.say.temp(batch.boil_here_c)} at "
        f"{batch.here} against "
        f"{batch.say.temp(batch.boil_there_c)} at {batch.there}; every stage moves by the same "
        f"{batch.say.temp_drop(abs(kelvin))}. Boil water on your own thermometer that day and use its difference if "
        "it is not this."
    )
    return Shift(Span(kelvin, kelvin, kelvin), "sugar_temp", RULE, because, ("usu-faq-453", "csu-candy-high-elevation"))
