"""Simmer: in liquid just under the boil."""

from __future__ import annotations

from rules.book import Case, Part, rule
from rules.foods.dishes import kin
from rules.heat.wet import (
    Pot,
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
from rules.methods.pressure_cook import way_out

POT = Pot("simmer", "the liquid", below_boil_k=3.0, area_m2=0.04, size="22 cm (9 in)")
STARCH_THICKENED = ("starch_pudding", "porridge")
STARCH_SAUCES = {"gravy", "white sauce", "veloute"}


@rule("simmer.heat", "common-practice")
def heat(case: Case) -> Part:
    """Why turning up the heat does not help."""
    return Part(
        because=f"Turning up the heat does not bring the time back: past {case.say.temp(case.here.boiling_c)} the "
        "burner only drives off water. A lid saves that water and some fuel."
    )


@rule("simmer.thicken", "csu-high-altitude-food-prep", "from-memory")
def thicken(case: Case) -> Part | None:
    """Starch, which needs a full bubble where water boils cooler."""
    starchy = case.dish_class in STARCH_THICKENED or not STARCH_SAUCES.isdisjoint(kin(case.request.dish))
    if not starchy:
        return None
    return Part(
        steps=("Thicken over direct heat, not in a double boiler, and hold it at a full bubble for a minute or two.",),
        because="Starch swells between 62 and 95 °C (144 and 203 °F). Here the boil is "
        f"{case.say.temp(case.here.boiling_c)} and a double boiler stands some degrees below that.",
    )


RULES = (
    boiling_point,
    threshold,
    temperature_rule(
        POT, "Liquid at a simmer", "Hold it at a gentle simmer, about {temp}: small bubbles breaking now and then."
    ),
    time_rule(POT),
    published_rule(POT),
    extra_liquid_rule(POT),
    thicken,
    rice,
    check,
    kidney_beans,
    heat,
    way_out,
)
