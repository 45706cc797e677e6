"""Temperatures inside food: safety limits stay; a reading close under the boil moves with the boil."""

from __future__ import annotations

from rules.baking.bands import Span
from rules.baking.batch import Batch
from rules.baking.shift import Shift
from rules.core import UNDER_BOIL_K

RULE = "baking.inside"
# Every safety limit for food is 74 degC (165 degF) or less; from here on a reading is asked for by texture.
LEAST_C = 80.0


def moved_c(temp_c: float, boil_there_c: float, boil_here_c: float) -> float:
    """What a reading becomes where water boils at another temperature [degC].

    A loaf or a braise is wet inside and stops a little under the boil, however long it stays in. Readings from
    176 °F (80 °C) up to there are drawn together in proportion, so that their order is kept and the way back gives
    the start; lower ones, every safety limit among them, stay.

    temp_c: the reading there; boil_there_c, boil_here_c: boiling point of water [degC]
    source: computed; the readings bakers use are common-practice

    >>> [round(moved_c(t, 100.0, 92.9), 1) for t in (74, 88, 93, 99)]
    [74, 85.0, 88.1, 91.9]
    """
    top_there_c, top_here_c = (boil_c - UNDER_BOIL_K for boil_c in (boil_there_c, boil_here_c))
    if temp_c <= LEAST_C:
        return temp_c
    if min(top_there_c, top_here_c) <= LEAST_C:
        return max(LEAST_C, min(temp_c, top_here_c))
    share = (min(temp_c, top_there_c) - LEAST_C) / (top_there_c - LEAST_C)
    return LEAST_C + share * (top_here_c - LEAST_C)


def shift(batch: Batch, temp_c: float) -> Shift | None:
    """How a reading inside food or of hot water moves [K]; None where it stays."""
    kelvin = moved_c(temp_c, batch.boil_there_c, batch.boil_here_c) - temp_c
    if abs(batch.boil_shift_k) < 0.05 or abs(kelvin) < 0.05:
        return None
    because = (
        f"Food that is wet inside stops a little under the boil, {batch.say.temp(batch.boil_here_c)} at {batch.here}. "
        f"A reading above {batch.say.temp(LEAST_C)} moves with it in proportion; lower ones, safety temperatures "
        "among them, do not."
    )
    return Shift(Span(kelvin, kelvin, kelvin), "temperature", RULE, because, ("iapws-r7-97", "common-practice"))
