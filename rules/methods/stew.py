"""Stew: cut small, covered by liquid, at a bare simmer on the stove or in the oven."""

from __future__ import annotations

from rules.heat.wet import Pot, check, extra_liquid_rule, kidney_beans, temperature_rule, threshold, time_rule
from rules.heat.where_water_boils import boiling_point
from rules.methods.pressure_cook import way_out

POT = Pot("stew", "the liquid", below_boil_k=3.0, area_m2=0.05, size="25 cm (10 in)")

RULES = (
    boiling_point,
    threshold,
    temperature_rule(
        POT, "Liquid at a bare simmer", "Keep it at a bare simmer, about {temp}, with the lid on or just ajar."
    ),
    time_rule(POT),
    extra_liquid_rule(POT),
    check,
    kidney_beans,
    way_out,
)
