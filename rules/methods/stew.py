"""Stew: cut small, covered by liquid, at a bare simmer on the stove or in the oven."""

from __future__ import annotations

from rules.heat.way_out import way_out
from rules.heat.wet import Pot, check, extra_liquid_rule, kidney_beans, temperature_rule, threshold, time_rule
from rules.heat.where_water_boils import boiling_point
from rules.said import sentences

say = sentences("methods/stew")
POT = Pot("stew", "liquid", below_boil_k=3.0, area_m2=0.05, across_cm=25.0)

NEEDS = ("elevation", "dish")
RULES = (
    boiling_point,
    threshold,
    temperature_rule(POT, say("liquid-label"), lambda liquid: say("liquid-step", liquid=liquid)),
    time_rule(POT),
    extra_liquid_rule(POT),
    check,
    kidney_beans,
    way_out,
)
