"""Grill: over or under radiant heat. The fire gets less oxygen, the food dries sooner, the thermometer decides."""

from __future__ import annotations

from rules.book import Case, Part, Rule, rule
from rules.foods import popcorn
from rules.heat import chamber, dry
from rules.heat.dry import dries, heated_through, set_to, setting_figure
from rules.heat.fire import OUTDOORS
from rules.model import Request
from rules.physics import air
from rules.physics.units import FT_PER_M
from rules.said import Words, number, sentences, temp

say = sentences("methods/grill")

FIRE_FROM_FT = 2000.0


@rule("grill.grate", "common-practice")
def grate(case: Case) -> Part:
    """The heat at the grate, which stays as at sea level."""
    heat, _ = set_to(case, "grill")
    asked = case.request.topic == "temperature"
    return Part(
        figures=(setting_figure("cooker_setting", say("label"), heat),),
        headline=say("headline", food=case.food, way=heat.way, setting=heat.span, place=case.place) if asked else "",
        steps=(say("step", way=heat.way, setting=heat.span),),
    )


@rule("grill.time", "usda-fsis-high-altitude", "from-memory", "computed")
def time(case: Case) -> Part:
    """How long it grills: up to a quarter longer."""
    pace = dry.up_to_a_quarter(dry.wet_surface_pace(case))
    return dry.time_part(case, "grill", pace, _why(case), "usda-fsis-high-altitude", "from-memory", "computed")


def _why(case: Case) -> Words:
    if not case.moved:
        return dry.nothing_differs(case)
    return say(
        "time-because",
        boil=temp(case.here.boiling_c),
        done="heated" if heated_through(case.dish_class) else "softened",
        pace="slower" if case.here.boiling_c < case.there.boiling_c else "sooner",
        baseline=case.baseline,
    )


@rule("grill.fire", "us-std-atm-1976", "usda-fsis-high-altitude")
def fire(case: Case) -> Part | None:
    """What thin air does to gas and charcoal."""
    if case.here.elevation_m * FT_PER_M < FIRE_FROM_FT or "grill" in case.request.equipment:
        return None
    share = number(air.density_ratio(case.here.elevation_m) * 100, 0)
    return Part(steps=(say("fire-step"),), because=say("fire-because", share=share))


@rule("grill.drying", "computed", "common-practice")
def drying(case: Case) -> Part | None:
    """Drying on the grill."""
    if not dries(case):
        return None
    return Part(steps=() if "shellfish" in case.traits else (say("drying-step"),), because=dries(case))


@rule("grill.safety", "common-practice")
def safety(case: Case) -> Part:
    """Carbon monoxide."""
    return Part(cautions=(OUTDOORS,))


NEEDS = ("elevation", "dish")
RULES = (popcorn.pops, grate, time, dry.core, dry.check, fire, drying, safety, popcorn.hot_fat)


def rules_for(request: Request | None) -> tuple[Rule, ...]:
    """The rules, after a refusal where raw meat is set too cool; every rule for None."""
    return (*RULES, *chamber.RULES) if request is None else chamber.guarded(request, RULES)


def needs(request: Request) -> tuple[str, ...]:
    """What must be known first; nothing for a refusal."""
    return chamber.needs(request, NEEDS)
