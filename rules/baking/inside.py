"""Temperatures near the boil: a liquid made to boil moves with the boil; what is read inside food stays as written."""

from __future__ import annotations

from rules.baking.bands import Span
from rules.baking.change import Shift
from rules.baking.mark import TempAt
from rules.book import Part, rule
from rules.heat.done_readings import UNDER_BOIL_K
from rules.said import sentences, temp

say = sentences("baking/inside")
# Every safety limit for food is 74 degC (165 degF) or less; from here on a reading is asked for by texture.
LEAST_C = 80.0
# Liquids cooler than this are warmed, scalded or pasteurised, and can be at any elevation: 190 degF.
LIQUID_LEAST_C = 88.0


def moved_c(temp_c: float, boil_there_c: float, boil_here_c: float, least_c: float = LEAST_C) -> float:
    """What a reading near the boil becomes where water boils at another temperature [degC].

    A loaf, a braise or a simmer stops a little under the boil, however long it stands. Readings from least_c up to
    there are drawn together in proportion, so that their order is kept and the way back gives the start; lower ones,
    every safety limit among them, stay.

    temp_c: the reading there; boil_there_c, boil_here_c: boiling point of water [degC]
    source: computed; the readings bakers use are common-practice

    >>> [round(moved_c(t, 100.0, 92.9), 1) for t in (74, 88, 93, 99)]
    [74, 85.0, 88.1, 91.9]
    """
    top_there_c, top_here_c = (boil_c - UNDER_BOIL_K for boil_c in (boil_there_c, boil_here_c))
    if temp_c <= least_c:
        return temp_c
    if min(top_there_c, top_here_c) <= least_c:
        return min(temp_c, top_here_c)
    share = (min(temp_c, top_there_c) - least_c) / (top_there_c - least_c)
    return least_c + share * (top_here_c - least_c)


@rule("baking.inside", "iapws-r7-97", "common-practice")
def liquid(at: TempAt) -> Part | None:
    """How the temperature of a liquid that boils or simmers moves [K]; one that is only warmed stays."""
    if at.mark.what != "water":
        return None
    batch, temp_c = at.batch, at.mark.low_c
    kelvin = moved_c(temp_c, batch.there.boiling_c, batch.here.boiling_c, LIQUID_LEAST_C) - temp_c
    if abs(batch.boil_shift_k) < 0.05 or abs(kelvin) < 0.05:
        return None
    because = say("liquid", boil=temp(batch.here.boiling_c), place=batch.place, warmed=temp(LIQUID_LEAST_C))
    return Part(shift=Shift(Span(kelvin, kelvin, kelvin), "temperature"), because=because)
