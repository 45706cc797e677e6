"""Temperatures of the food itself, which no elevation moves, and how far the boil is from them."""

from __future__ import annotations

from rules import safety
from rules.book import Case, celsius
from rules.explanations.named import Figures, Values, always, at_sea, figure, here
from rules.model import Figure
from rules.physics.ambient import Ambient
from rules.physics.units import to_c
from rules.safety import SafeTemperature
from rules.said import sentences, temp, temp_drop, temp_span, yes

say = sentences("why/safe_temperatures")
WHOLE_CUT_C, GROUND_C, POULTRY_C = to_c(145), to_c(160), to_c(165)
SLOW_COOKER_C = to_c(200)
CUSTARD_C = (to_c(170), to_c(180))
POACHING_C = (71.0, 82.0)
STEAK_C, VEGETABLE_C = 54.5, 85.0
CLEAR_OF_BOIL_K = 1.0
HOT_HOLD_C = to_c(135)


def margin_k(ambient: Ambient) -> float:
    """How far the boil is over what poultry needs [K]."""
    return ambient.boiling_c - POULTRY_C


def poaching_room_k(ambient: Ambient) -> float:
    """How far the boil is over the hottest poaching water [K]."""
    return ambient.boiling_c - POACHING_C[1]


def own(case: Case) -> SafeTemperature | None:
    """What the dish that is asked about needs in the middle, or None where none is named."""
    dish_class = case.request.dish_class
    return safety.safe_temperature(case.request.dish, dish_class) if dish_class else None


def own_c(case: Case) -> float:
    """The temperature that makes the dish safe, or ground meat where none is named [degC]."""
    found = own(case)
    return found.temp_c if found else GROUND_C


VALUES: Values = {
    "safe_own": lambda case: temp(own_c(case)),
    "safe_food": lambda case: say("food", food=case.food, named=yes(own(case) is not None)),
    "safe_whole_cut": always(temp(WHOLE_CUT_C)),
    "safe_ground_meat": always(temp(GROUND_C)),
    "safe_poultry": always(temp(POULTRY_C)),
    "safe_margin": here(temp_drop, margin_k),
    "safe_margin_at_sea": at_sea(temp_drop, margin_k),
    "hot_hold": always(temp(HOT_HOLD_C)),
    "poaching_middle": always(temp(sum(POACHING_C) / 2)),
    "slow_cooker_advised": always(temp(SLOW_COOKER_C)),
    "slow_cooker_reaches": lambda case: yes(case.here.boiling_c > SLOW_COOKER_C),
    "custard_sets": always(temp_span(*CUSTARD_C)),
    "custard_sets_under_boil": lambda case: yes(case.here.boiling_c > CUSTARD_C[1] + CLEAR_OF_BOIL_K),
    "poaching": always(temp_span(*POACHING_C)),
    "poaching_room": here(temp_drop, poaching_room_k),
    "poaching_fits": lambda case: yes(poaching_room_k(case.here) > CLEAR_OF_BOIL_K),
    "bath_for_steak": always(temp(STEAK_C)),
    "bath_for_vegetables": always(temp(VEGETABLE_C)),
    "vegetable_bath": lambda case: yes(case.here.boiling_c > VEGETABLE_C + CLEAR_OF_BOIL_K),
}


def poaching_band(case: Case) -> Figure:
    """The band for poaching, which stays."""
    return Figure("poaching", "", sum(POACHING_C) / 2, "degC", *POACHING_C)


FIGURES: Figures = {
    "poultry_limit": lambda case: celsius("poultry_limit", "", POULTRY_C, POULTRY_C),
    "safe_margin": figure("safe_margin", "K", margin_k),
    "hot_hold": lambda case: celsius("holding_limit", "", HOT_HOLD_C, HOT_HOLD_C),
    "vegetable_floor": lambda case: celsius("vegetable_floor", "", VEGETABLE_C, VEGETABLE_C),
    "poaching": poaching_band,
}
