"""Steam: over boiling water in a closed pot, at the temperature of the boil."""

from __future__ import annotations

from rules.book import Case, Part, rule
from rules.heat.pots import STEAM
from rules.heat.way_out import way_out
from rules.heat.wet import check, published_rule, rice, temperature_rule, threshold, time_rule
from rules.heat.where_water_boils import boiling_point
from rules.physics import evaporation
from rules.said import Measure, Said, sentences, temp

# cabinets that make their own steam
CABINETS = ("combi_oven", "convection_steamer", "commercial_pressure_steamer")
say = sentences("methods/steam")


def is_cabinet(case: Case) -> bool:
    """Whether it is steamed in a cabinet, which has no lid to keep on and no water to look after."""
    return not set(CABINETS).isdisjoint(case.request.equipment)


def set_up(case: Case, steam: Measure) -> Said:
    """How the steam is made: in a cabinet, or over a pot."""
    return say("cabinet-step", steam=steam) if is_cabinet(case) else say("steam-step", steam=steam)


@rule("steam.heat", "iapws-r7-97")
def heat(case: Case) -> Part:
    """Why steam is no way round the boiling point."""
    return Part(steps=() if is_cabinet(case) else (say("lid"),), because=say("heat", boil=temp(case.here.boiling_c)))


@rule("steam.water", "common-practice")
def water(case: Case) -> Part | None:
    """Whether the water under the basket lasts."""
    slower = evaporation.drying_ratio(case.here.elevation_m) > 1.1
    return Part(steps=(say("more-water"),)) if slower and not is_cabinet(case) else None


RULES = (
    boiling_point,
    threshold,
    temperature_rule(STEAM, say("steam-label"), set_up),
    time_rule(STEAM),
    published_rule(STEAM),
    heat,
    water,
    rice,
    check,
    way_out,
)
