"""Popcorn: the kernel is its own pressure cooker, so it pops at the same heat anywhere; dry air is its enemy."""

from __future__ import annotations

from rules.book import Case, Part, celsius, rule
from rules.model import Caution, Figure
from rules.physics import water
from rules.say import number

POPS_C = 180.0
MOISTURE_PERCENT = (13.5, 14.0)
IN_A_PAN = (
    "Cover the pan with the lid ajar, so that the steam gets out and the heat stays in, and stop when pops come two "
    "seconds apart."
)


@rule("popcorn.pops", "virot-popcorn-2015", "popcorn-moisture")
def pops(case: Case) -> Part | None:
    """The temperature at which kernels pop, and the moisture they need."""
    if case.dish_class != "popcorn":
        return None
    bars = water.saturation_pressure_pa(POPS_C) / 1e5
    low, high = MOISTURE_PERCENT
    return Part(
        figures=(
            celsius("pop_temperature", "Kernels pop at", POPS_C, POPS_C),
            Figure("kernel_moisture", "Moisture they need", (low + high) / 2, "percent", low, high),
        ),
        steps=(
            "Keep kernels in a tight jar, not in the bag they came in and not in the refrigerator, which is dry.",
            "If many stay unpopped, shake 3 cups (700 ml) of kernels with 1 tbsp (15 ml) of water in a closed jar, and "
            "again now and then; use them after two or three days.",
            *(() if case.request.method == "microwave" else (IN_A_PAN,)),
        ),
        because=f"A kernel bursts when the steam inside reaches about {number(bars, 0)} bar, at "
        f"{case.say.temp(POPS_C)}. Against that the weight of the air outside hardly counts, so the heat is the same "
        "everywhere. What fails at elevation is the kernel: in dry air it loses the little water it pops with.",
    )


@rule("popcorn.larger", "quinn-popcorn-2005")
def larger(case: Case) -> Part | None:
    """Thin air lets popcorn grow a little larger."""
    if case.dish_class != "popcorn" or case.here.elevation_m < 900:
        return None
    return Part(
        because="Corn popped under lower pressure comes out larger, since the foam swells against less air. That is a "
        "small gift, as long as the kernels are moist."
    )


@rule("popcorn.hot_fat", "common-practice")
def hot_fat(case: Case) -> Part | None:
    """Covered hot oil."""
    if case.dish_class != "popcorn":
        return None
    text = "Never leave popcorn over the heat; open the lid away from you, since the steam burns."
    return Part(cautions=(Caution("warn", text, ("common-practice",)),))


RULES = (pops, larger, hot_fat)
