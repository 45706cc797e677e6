"""Steam: over boiling water in a closed pot, at the temperature of the boil."""

from __future__ import annotations

from rules.book import Case, Part, rule
from rules.heat.wet import Pot, check, published_rule, rice, temperature_rule, threshold, time_rule
from rules.heat.where_water_boils import boiling_point
from rules.methods.pressure_cook import way_out
from rules.physics import evaporation

POT = Pot("steam", "the steam")


@rule("steam.heat", "iapws-r7-97")
def heat(case: Case) -> Part:
    """Why steam is no way round the boiling point."""
    return Part(
        steps=("Keep the lid on, and count the time from the moment steam comes off freely.",),
        because=f"Steam over an open boil is exactly as hot as the boil, {case.say.temp(case.here.boiling_c)} here, "
        "so steaming slows as boiling does. Only pressure makes it hotter.",
    )


@rule("steam.water", "common-practice")
def water(case: Case) -> Part | None:
    """Whether the water under the basket lasts."""
    slower = evaporation.drying_ratio(case.here.elevation_m) > 1.1
    if not slower:
        return None
    return Part(
        steps=("Put more water under the basket than at sea level and look after it: the longer time uses it up.",)
    )


RULES = (
    boiling_point,
    threshold,
    temperature_rule(POT, "Steam", "Bring the water to a full boil; the steam is {temp}."),
    time_rule(POT),
    published_rule(POT),
    heat,
    water,
    rice,
    check,
    way_out,
)
