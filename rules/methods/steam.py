"""Steam: over boiling water in a closed pot, at the temperature of the boil."""

from __future__ import annotations

from rules.book import Case, Part, rule
from rules.heat.pots import STEAM
from rules.heat.way_out import way_out
from rules.heat.wet import check, published_rule, rice, temperature_rule, threshold, time_rule
from rules.heat.where_water_boils import boiling_point
from rules.physics import evaporation
from rules.said import sentences, temp

say = sentences("methods/steam")


@rule("steam.heat", "iapws-r7-97")
def heat(case: Case) -> Part:
    """Why steam is no way round the boiling point."""
    return Part(steps=(say("lid"),), because=say("heat", boil=temp(case.here.boiling_c)))


@rule("steam.water", "common-practice")
def water(case: Case) -> Part | None:
    """Whether the water under the basket lasts."""
    slower = evaporation.drying_ratio(case.here.elevation_m) > 1.1
    return Part(steps=(say("more-water"),)) if slower else None


RULES = (
    boiling_point,
    threshold,
    temperature_rule(STEAM, say("steam-label"), lambda steam: say("steam-step", steam=steam)),
    time_rule(STEAM),
    published_rule(STEAM),
    heat,
    water,
    rice,
    check,
    way_out,
)
