"""Coffee and tea."""

from __future__ import annotations

from rules.book import Case, celsius
from rules.explanations.named import Figures, Values, always
from rules.said import fixed, temp_span

COFFEE_C, COFFEE_K = 93.0, 3.0
GREEN_TEA_C = (70.0, 80.0)


def apart_c(case: Case) -> float:
    """How far the boil is over the middle of the band for coffee [K]."""
    return case.here.boiling_c - COFFEE_C


def coffee_boil(case: Case) -> str:
    """Whether the boil is `under`, `inside` or `above` the band for coffee."""
    if apart_c(case) < -COFFEE_K:
        return "under"
    return "inside" if apart_c(case) < COFFEE_K else "above"


VALUES: Values = {
    "coffee": always(temp_span(COFFEE_C - COFFEE_K, COFFEE_C + COFFEE_K)),
    "coffee_boil": coffee_boil,
    "coffee_apart": lambda case: fixed(abs(apart_c(case)), 1),
    "coffee_sign": lambda case: "minus" if apart_c(case) < 0 else "plus",
    "green_tea": always(temp_span(*GREEN_TEA_C)),
}
FIGURES: Figures = {"brew_temperature": lambda case: celsius("brew_temperature", "", COFFEE_C, COFFEE_C)}
