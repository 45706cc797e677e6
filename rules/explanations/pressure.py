"""Pressure cookers and canners: what the gauge adds to the air outside."""

from __future__ import annotations

from rules.book import celsius
from rules.explanations.liquid import POT_AREA_M2
from rules.explanations.named import Figures, Quantity, Values, always, at_sea, figure, here
from rules.explanations.steam import GRAVITY
from rules.heat.pressure import PRESSURE_CAUTION, STOVE_TOP_GAUGE_PA, inside_c
from rules.physics import water
from rules.physics.ambient import Ambient
from rules.physics.units import PSI_PER_PA, to_c
from rules.said import fine_drop, gauge, mass, pressure, temp, temp_drop

CANNER_PA, CANNER_C = 10 / PSI_PER_PA, to_c(240)
COOKER_STEP_PA = 1 / PSI_PER_PA
STONE_KG = 5.0
STONE_PA = STONE_KG * GRAVITY / POT_AREA_M2


def inside(gauge_pa: float) -> Quantity:
    """The steam inside at a gauge pressure [Pa], in degC."""
    return lambda ambient: inside_c(ambient, gauge_pa)


def in_all_pa(ambient: Ambient) -> float:
    """What presses inside a cooker, air and gauge together [Pa]."""
    return ambient.pressure_pa + STOVE_TOP_GAUGE_PA


def stone_k(ambient: Ambient) -> float:
    """What a stone on the lid adds to the boil at most [K]."""
    return water.saturation_temp_c(ambient.pressure_pa + STONE_PA) - ambient.boiling_c


def gains_k(ambient: Ambient) -> float:
    """How far a cooker at its full gauge is over an open pot [K]."""
    return inside_c(ambient, STOVE_TOP_GAUGE_PA) - ambient.boiling_c


in_cooker_c, in_canner_c = inside(STOVE_TOP_GAUGE_PA), inside(CANNER_PA)

VALUES: Values = {
    "cooker_gauge": always(gauge(STOVE_TOP_GAUGE_PA)),
    "cooker_step": always(gauge(COOKER_STEP_PA)),
    "cooker_in_all": here(pressure, in_all_pa),
    "cooker_in_all_at_sea": at_sea(pressure, in_all_pa),
    "stone": always(mass(STONE_KG * 1000)),
    "stone_adds": here(fine_drop, stone_k),
    "stone_presses": always(pressure(STONE_PA)),
    "cooker_gains": here(temp_drop, gains_k),
    "cooker_gains_at_sea": at_sea(temp_drop, gains_k),
    "inside_cooker": here(temp, in_cooker_c),
    "inside_cooker_at_sea": at_sea(temp, in_cooker_c),
    "cooker_caution": always(PRESSURE_CAUTION.text),
    "canner_gauge": always(gauge(CANNER_PA)),
    "inside_canner": here(temp, in_canner_c),
    "canner_needs": always(temp(CANNER_C)),
    "canner_needs_pressure": lambda case: pressure(water.saturation_pressure_pa(CANNER_C)),
}
FIGURES: Figures = {
    "cooker_in_all": figure("absolute_pressure", "kPa", lambda ambient: in_all_pa(ambient) / 1000, 4),
    "stone_adds": figure("stone_adds", "K", stone_k, beside_sea_level=False),
    "inside_cooker": figure("inside_temperature", "degC", in_cooker_c),
    "inside_canner": figure("inside_temperature", "degC", in_canner_c),
    "needed_temperature": lambda case: celsius("needed_temperature", "", CANNER_C, CANNER_C),
}
