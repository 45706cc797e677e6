"""Temperatures inside food: safety limits stay; a reading close under the boil moves with the boil."""

from __future__ import annotations

from rules.baking.bands import Span
from rules.baking.batch import Batch
from rules.baking.shift import Shift

RULE = "baking.inside"
# Every safety limit for food is 74 degC (165 degF) or less; what is higher is asked for by texture.
TEXTURE_FROM_C = 76.0
# However high the kitchen, a reading that is moved stays clear of them.
LOWEST_C = TEXTURE_FROM_C + 0.5
NEAR_BOIL_K = 8.0
LEAST_GAP_K = 1.0


def shift(batch: Batch, temp_c: float) -> Shift | None:
    """How a reading inside food or of hot water moves [K]; None where it stays.

    A loaf or a braise is wet inside and cannot pass the boil, so "done at 205 °F" is a distance below it: where the
    recipe was written 205 °F is 7 °F under the boil, and it stays 7 °F under the boil.

    temp_c: the temperature there [degC]
    source: iapws-r7-97 (the boil), common-practice (that bakers judge by it)
    """
    gap_k = batch.boil_there_c - temp_c
    if temp_c < TEXTURE_FROM_C or gap_k > NEAR_BOIL_K or abs(batch.boil_shift_k) < 0.05:
        return None
    # a reading above the boil of its own place was never reached there; it is brought under the boil of this one
    kelvin = (
        min(batch.boil_shift_k, batch.boil_here_c - LEAST_GAP_K - temp_c) if gap_k < LEAST_GAP_K else batch.boil_shift_k
    )
    kelvin = max(kelvin, min(0.0, LOWEST_C - temp_c))
    because = (
        f"Food that is wet inside cannot pass the boil, {batch.say.temp(batch.boil_here_c)} at {batch.here}. "
        f"The recipe's reading lies {batch.say.temp_drop(abs(gap_k))} from the boil at {batch.there}, and keeps that "
        "distance. "
        "Safety temperatures, 165 °F (74 °C) and below, do not move."
    )
    return Shift(Span(kelvin, kelvin, kelvin), "temperature", RULE, because, ("iapws-r7-97", "common-practice"))
