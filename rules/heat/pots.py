"""How each wet method holds its food."""

from __future__ import annotations

from rules.heat.wet import Pot

BOIL = Pot("boil", "water")
STEAM = Pot("steam", "steam")
SIMMER = Pot("simmer", "liquid", below_boil_k=3.0, area_m2=0.04, across_cm=22.0)
STEW = Pot("stew", "liquid", below_boil_k=3.0, area_m2=0.05, across_cm=25.0)
BRAISE = Pot("braise", "liquid", below_boil_k=3.0, area_m2=0.06, across_cm=28.0)
BAKE = Pot("bake", "liquid", below_boil_k=3.0, area_m2=0.06, across_cm=28.0)
SLOW_COOK = Pot("slow_cook", "crock", below_boil_k=3.0)
BRAISE_OVEN_C = 162.8
