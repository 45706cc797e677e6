"""Boiled sugar: a stage is a concentration, and a syrup shows it by how far it boils above water."""

from __future__ import annotations

from rules.baking.bands import Span
from rules.baking.change import Shift
from rules.baking.mark import TempAt
from rules.book import Part, rule
from rules.physics import water
from rules.said import sentences, temp, temp_drop

say = sentences("baking/syrup")
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


@rule("baking.sugar_temp", "usu-faq-453", "csu-candy-high-elevation")
def stage(at: TempAt) -> Part | None:
    """How the temperature of boiled sugar moves with the boil; that of caramel does not."""
    if at.mark.what != "sugar":
        return None
    batch = at.batch
    kelvin = shift_k(at.mark.low_c, batch.from_m, batch.to_m)
    if not kelvin:
        stays = Shift(Span(0, 0, 0), "sugar_temp", stays=True)
        return Part(shift=stays, because=say("caramel"), sources=("from-memory",))
    because = say(
        "stage",
        boil=temp(batch.here.boiling_c),
        place=batch.place,
        baseline_boil=temp(batch.there.boiling_c),
        baseline=batch.baseline,
        drop=temp_drop(abs(kelvin)),
    )
    return Part(shift=Shift(Span(kelvin, kelvin, kelvin), "sugar_temp"), because=because)
