"""Popcorn: the kernel is its own pressure cooker, so it pops at the same heat anywhere; dry air is its enemy."""

from __future__ import annotations

from rules.book import Case, Part, celsius, rule
from rules.model import Caution, Figure
from rules.physics import water
from rules.said import number, sentences, temp

POPS_C = 180.0
MOISTURE_PERCENT = (13.5, 14.0)
say = sentences("foods/popcorn")


@rule("popcorn.pops", "virot-popcorn-2015", "popcorn-moisture")
def pops(case: Case) -> Part | None:
    """The temperature at which kernels pop, and the moisture they need."""
    if case.dish_class != "popcorn":
        return None
    bars = water.saturation_pressure_pa(POPS_C) / 1e5
    low, high = MOISTURE_PERCENT
    in_a_pan = () if case.request.method == "microwave" else (say("in-a-pan"),)
    return Part(
        figures=(
            celsius("pop_temperature", say("pops-label"), POPS_C, POPS_C),
            Figure("kernel_moisture", say("moisture-label"), (low + high) / 2, "percent", low, high),
        ),
        steps=(say("keep"), say("moisten"), *in_a_pan),
        because=say("pops", bars=number(bars, 0), temp=temp(POPS_C)),
    )


@rule("popcorn.larger", "quinn-popcorn-2005")
def larger(case: Case) -> Part | None:
    """Thin air lets popcorn grow a little larger."""
    if case.dish_class != "popcorn" or case.here.elevation_m < 900:
        return None
    return Part(because=say("larger"))


@rule("popcorn.hot_fat", "common-practice")
def hot_fat(case: Case) -> Part | None:
    """Covered hot oil."""
    if case.dish_class != "popcorn":
        return None
    return Part(cautions=(Caution("warn", say("hot-fat"), ("common-practice",)),))


RULES = (pops, larger, hot_fat)
