"""Braise: a tough cut, part covered by liquid, lid on, just under the boil."""

from __future__ import annotations

from rules import evaporation, wet
from rules.boiling import boiling_point
from rules.book import Part, rule
from rules.case import Case, celsius
from rules.dishes import classes
from rules.methods.pressure_cook import way_out
from rules.model import Figure
from rules.say import round_to

BELOW_BOIL_K = 3.0
OVEN_C = 162.8
OVEN_RANGE_C = (148.9, 176.7)
POT_AREA_M2 = 0.06


@rule("braise.liquid_temperature", "common-practice")
def liquid_temperature(case: Case) -> Part:
    """The liquid of a braise stands a few degrees under the boil."""
    here_c = case.here.boiling_c - BELOW_BOIL_K
    return Part(
        figures=(celsius("liquid_temperature", "Liquid at a bare simmer", here_c, case.sea.boiling_c - BELOW_BOIL_K),),
        steps=(f"Hold the liquid at a bare simmer, about {case.say.temp(here_c)}: a bubble now and then, never a rolling boil.",),
    )


@rule("braise.time", "common-practice")
def time(case: Case) -> Part | None:
    """How long the braise takes here, from the time at the baseline and the class's softening rate."""
    here_c, there_c, sea_c = (a.boiling_c - BELOW_BOIL_K for a in (case.here, case.there, case.sea))
    return wet.time_part(case, "braise", here_c, there_c, sea_c, "the liquid")


@rule("braise.oven", "common-practice")
def oven(case: Case) -> Part:
    """The oven setting, which does not move: the pot is held by its liquid, not by the oven air."""
    low, high = OVEN_RANGE_C
    return Part(
        figures=(Figure("oven", "Oven", round(OVEN_C, 1), "degC", low, high, sea_level=round(OVEN_C, 1)),),
        steps=(f"Set the oven to {case.say.oven(OVEN_C)}, lid on; lower it if the liquid does more than murmur.",),
        because="The oven setting stays as at sea level: a hotter oven only drives off more liquid, "
        "since the pot cannot pass the boiling point.",
    )


@rule("braise.extra_liquid", "common-practice")
def extra_liquid(case: Case) -> Part | None:
    """How much more liquid to start with, for the longer time."""
    here_c, there_c, sea_c = (a.boiling_c - BELOW_BOIL_K for a in (case.here, case.there, case.sea))
    times = wet.wet_time(case, "braise", here_c, there_c, sea_c)
    if times is None or times.likely_min <= times.base_mid_min:
        return None
    covered = case.request.covered is not False
    extra_ml = evaporation.extra_liquid_ml(
        times.likely_min, times.base_mid_min, POT_AREA_M2, covered=covered, elevation_m=case.here.elevation_m
    )
    return Part(
        figures=(Figure("extra_liquid", "Extra liquid to start with", round_to(extra_ml, 10), "ml"),),
        steps=(f"Start with about {case.say.volume(extra_ml)} more liquid than the recipe says.",),
        because=f"The longer simmer boils off about {case.say.volume(extra_ml)} more, "
        f"reckoned for a {'covered' if covered else 'wide open'} pot of 28 cm (11 in).",
    )


@rule("braise.check", "common-practice")
def check(case: Case) -> Part:
    """What to check for: tenderness, not the clock."""
    return Part(steps=(f"Start checking at the early end of the range. It is done when {classes()[case.dish_class].check}.",))


NEEDS = ("elevation",)
RULES = (boiling_point, liquid_temperature, time, oven, extra_liquid, check, way_out)
