"""What is set by the cook: oven and deep fat."""

from __future__ import annotations

from rules.book import Case, celsius
from rules.explanations.named import Figures, Values, always
from rules.heat.pots import BRAISE_OVEN_C
from rules.model import Figure
from rules.physics.units import to_c
from rules.safety import safe_temperature
from rules.said import elevation, fixed, oven, temp, temp_drop

ROAST_C, MEDIUM_C = to_c(325), to_c(145)
RAISED_K = (15 / 1.8, 25 / 1.8)
DOUGHNUT_C = to_c(370)
FAT_K_PER_STEP, FAT_STEP_M, FAT_HIGHEST_M = 3 / 1.8, 304.8, 3048.0


def braise_oven(case: Case) -> Figure:
    """The oven of a braise, which stays."""
    return celsius("oven", "", BRAISE_OVEN_C, BRAISE_OVEN_C)


def fat_advised_m(case: Case) -> float:
    """The elevation that the fat is turned down for [m]: as far as the advice goes."""
    return min(max(case.here.elevation_m, 0.0), FAT_HIGHEST_M)


def fat_c(case: Case) -> float:
    """The fat for doughnuts [degC]."""
    return DOUGHNUT_C - FAT_K_PER_STEP * fat_advised_m(case) / FAT_STEP_M


def fat_advice(case: Case) -> str:
    """Whether the kitchen is `within` or `beyond` the elevations that the advice on fat was written for."""
    return "beyond" if case.here.elevation_m > FAT_HIGHEST_M else "within"


def fat_temperature(case: Case) -> Figure | None:
    """The fat for doughnuts, as far up as the advice goes."""
    return None if fat_advice(case) == "beyond" else celsius("fat_temperature", "", fat_c(case), DOUGHNUT_C)


def done_c(case: Case) -> float:
    """What the middle of a roast is taken to [degC]: medium, or hotter where the dish that was named is safe later."""
    safe = safe_temperature(case.request.dish, case.dish_class) if case.request.dish_class else None
    return max(MEDIUM_C, safe.temp_c if safe else MEDIUM_C)


VALUES: Values = {
    "braise_oven": lambda case: oven(BRAISE_OVEN_C),
    "braise_oven_to_spare": lambda case: fixed(BRAISE_OVEN_C - case.here.boiling_c, 0),
    "roasting_oven": always(oven(ROAST_C)),
    "medium_roast": lambda case: temp(done_c(case)),
    "oven_raised_least": always(temp_drop(RAISED_K[0])),
    "oven_raised_most": always(temp_drop(RAISED_K[1])),
    "doughnut_fat": lambda case: oven(fat_c(case)),
    "doughnut_fat_at_sea": always(oven(DOUGHNUT_C)),
    "fat_step": always(temp_drop(FAT_K_PER_STEP)),
    "fat_advice": fat_advice,
    "fat_advice_ends": always(elevation(FAT_HIGHEST_M)),
    "fat_advised": lambda case: elevation(fat_advised_m(case)),
}
FIGURES: Figures = {"oven": braise_oven, "fat_temperature": fat_temperature}
