"""Air that a cook makes: a vacuum, a damp surface in a hot chamber, the steam inside a kernel of corn."""

from __future__ import annotations

from rules.book import celsius
from rules.explanations.named import Figures, Values, always, figure, here
from rules.foods.popcorn import POPS_C
from rules.methods.smoke import STALL_SEA_C, stall_c
from rules.physics import water
from rules.physics.ambient import Ambient, ambient
from rules.physics.units import to_c
from rules.said import number, oven, pressure, temp

VACUUM_PA = 5000.0
VACUUM_C = water.saturation_temp_c(VACUUM_PA)
SMOKER_C = to_c(250)
DAMP_AT_SEA_C = sum(STALL_SEA_C) / 2


def damp_c(air: Ambient) -> float:
    """Where a wet surface settles in a smoker [degC], in smoke as damp as that of sea level."""
    return stall_c(air, ambient(0.0), SMOKER_C, DAMP_AT_SEA_C)


def kernel_bar(air: Ambient) -> float:
    """How much harder the steam in a kernel presses than the air outside when it bursts [bar]."""
    return (water.saturation_pressure_pa(POPS_C) - air.pressure_pa) / 1e5


VALUES: Values = {
    "vacuum": always(pressure(VACUUM_PA)),
    "vacuum_boils": always(temp(VACUUM_C)),
    "smoker": always(oven(SMOKER_C)),
    "damp": here(temp, damp_c),
    "pops": always(temp(POPS_C)),
    "kernel": here(lambda bar: number(bar, 1), kernel_bar),
}
FIGURES: Figures = {
    "vacuum_boils": lambda case: celsius("vacuum_boils", "", VACUUM_C, VACUUM_C),
    "damp": figure("wet_bulb", "degC", damp_c),
    "pops": lambda case: celsius("pop_temperature", "", POPS_C, POPS_C),
}
