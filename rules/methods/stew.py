"""Stew: cut small, covered by liquid, at a bare simmer on the stove or in the oven."""

from __future__ import annotations

from rules.heat.pots import STEW
from rules.heat.way_out import way_out
from rules.heat.wet import bean_boil, check, extra_liquid_rule, kidney_beans, temperature_rule, threshold, time_rule
from rules.heat.where_water_boils import boiling_point
from rules.said import sentences

say = sentences("methods/stew")

RULES = (
    boiling_point,
    threshold,
    bean_boil,
    temperature_rule(STEW, say("liquid-label"), lambda _, liquid: say("liquid-step", liquid=liquid)),
    time_rule(STEW),
    extra_liquid_rule(STEW),
    check,
    kidney_beans,
    way_out,
)
