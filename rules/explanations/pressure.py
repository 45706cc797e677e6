"""Pressure cookers and canners: what the gauge adds to the air outside."""

from __future__ import annotations

from rules.book import celsius
from rules.explanations.named import Figures, Quantity, Values, always, at_sea, figure, here
from rules.heat.pressure import PRESSURE_CAUTION, STOVE_TOP_GAUGE_PA, inside_c
from rules.physics import water
from rules.physics.units import PSI_PER_PA, to_c
from rules.said import gauge, pressure, temp

CANNER_PA, CANNER_C = 10 / PSI_PER_PA, to_c(240)
COOKER_STEP_PA = 1 / PSI_PER_PA


def inside(gauge_pa: float) -> Quantity:
    """The steam inside at a gauge pressure [Pa], in degC."""
    return lambda ambient: inside_c(ambient, gauge_pa)


in_cooker_c, in_canner_c = inside(STOVE_TOP_GAUGE_PA), inside(CANNER_PA)

VALUES: Values = {
    "cooker_gauge": always(gauge(STOVE_TOP_GAUGE_PA)),
    "cooker_step": always(gauge(COOKER_STEP_PA)),
    "inside_cooker": here(temp, in_cooker_c),
    "inside_cooker_at_sea": at_sea(temp, in_cooker_c),
    "cooker_caution": always(PRESSURE_CAUTION.text),
    "canner_gauge": always(gauge(CANNER_PA)),
    "inside_canner": here(temp, in_canner_c),
    "canner_needs": always(temp(CANNER_C)),
    "canner_needs_pressure": lambda case: pressure(water.saturation_pressure_pa(CANNER_C)),
}
FIGURES: Figures = {
    "inside_cooker": figure("inside_temperature", "degC", in_cooker_c),
    "inside_canner": figure("inside_temperature", "degC", in_canner_c),
    "needed_temperature": lambda case: celsius("needed_temperature", "", CANNER_C, CANNER_C),
}
