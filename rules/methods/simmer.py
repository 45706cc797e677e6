"""Simmer: in liquid just under the boil."""

from __future__ import annotations

from rules.book import Case, Part, rule
from rules.heat.pots import SIMMER
from rules.heat.way_out import way_out
from rules.heat.wet import (
    bean_boil,
    check,
    extra_liquid_rule,
    kidney_beans,
    published_rule,
    rice,
    temperature_rule,
    threshold,
    time_rule,
)
from rules.heat.where_water_boils import boiling_point
from rules.said import sentences, temp

say = sentences("methods/simmer")


@rule("simmer.heat", "common-practice")
def heat(case: Case) -> Part:
    """Why turning up the heat does not help."""
    return Part(because=say("heat", boil=temp(case.here.boiling_c)))


@rule("simmer.thicken", "csu-high-altitude-food-prep", "from-memory")
def thicken(case: Case) -> Part | None:
    """Starch, which needs a full bubble where water boils cooler."""
    if "starch_thickened" not in case.traits:
        return None
    of = "grain" if case.dish_class == "porridge" else "starch"
    return Part(steps=(say("thicken-step", of=of),), because=say("thicken", boil=temp(case.here.boiling_c)))


RULES = (
    boiling_point,
    threshold,
    bean_boil,
    temperature_rule(SIMMER, say("liquid-label"), lambda _, liquid: say("liquid-step", liquid=liquid)),
    time_rule(SIMMER),
    published_rule(SIMMER),
    extra_liquid_rule(SIMMER),
    thicken,
    rice,
    check,
    kidney_beans,
    heat,
    way_out,
)
