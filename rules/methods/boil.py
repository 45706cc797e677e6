"""Boil: in plenty of water at a full boil. Eggs go by rules/eggs.py, drinking water by the health agencies."""

from __future__ import annotations

from rules.book import Case, Part, rule
from rules.foods import eggs, wort
from rules.heat import instant
from rules.heat.wet import Pot, check, kidney_beans, published_rule, threshold, time_part
from rules.heat.where_water_boils import boiling_point
from rules.methods.pressure_cook import way_out
from rules.model import Figure
from rules.physics import conduction, water
from rules.physics.units import round_time_min
from rules.safety.subjects.drinking_water import drinking_water
from rules.say import duration, number

POT = Pot("boil", "the water")
OWN_RULE = ("egg", "water", "wort")
OWN_LIQUID = (
    "custard", "starch_pudding", "sauce", "dairy", "jam", "syrup", "candy", "wort", "pickle", "soup", "stock",
    "porridge", "mixed_stew", "choux",
)  # fmt: skip

SALTED_CLASSES = ("pasta", "noodle", "dumpling", "starchy_root", "tender_vegetable", "leafy_green")
SALT_G_PER_KG = 10.0

ROOT_HALF_MM, ROOT_DIFFUSIVITY_M2_S, ROOT_START_C, ROOT_TARGET_C = 30.0, 1.7e-7, 15.0, 80.0


@rule("boil.water_temperature", "iapws-r7-97")
def water_temperature(case: Case) -> Part:
    """What to bring to the boil, and that a harder boil does not raise its temperature."""
    temp = case.say.temp(case.here.boiling_c)
    own = f"Bring it to a full boil, {temp}, and stir so that it does not catch."
    step = (
        own
        if case.dish_class in OWN_LIQUID
        else f"Bring plenty of water to a full boil, {temp}: more flame makes more bubbles, not more heat."
    )
    return Part(steps=() if case.dish_class in ("egg", "water", instant.INSTANT) else (step,))


@rule("boil.time", "common-practice")
def time(case: Case) -> Part | None:
    """How long it takes here, from the baseline and the softening rate; eggs, water and wort have their own rules."""
    return None if case.dish_class in OWN_RULE else time_part(case, POT.heats(case))


@rule("boil.roots", "carslaw-jaeger", "ashrae-foods")
def roots(case: Case) -> Part | None:
    """Whole potatoes: the heat has to reach the centre before the softening counts."""
    if case.dish_class != "starchy_root":
        return None
    here, sea = (
        conduction.time_to_centre_min(
            "sphere", ROOT_HALF_MM, ROOT_DIFFUSIVITY_M2_S, ROOT_START_C, air.boiling_c, ROOT_TARGET_C
        )
        for air in (case.here, case.sea)
    )
    target = case.say.temp(ROOT_TARGET_C)
    return Part(
        figures=(
            Figure(
                "centre_time",
                f"Of that, until the centre of a whole one, 6 cm (2½ in) thick, is at {target}",
                round_time_min(here),
                "min",
                sea_level=round_time_min(sea),
            ),
        ),
        because="Two things take time. Heat reaches the centre of a whole potato 6 cm (2½ in) thick in "
        f"{duration(here)}, against {duration(sea)} at sea level; then the flesh softens, slower in cooler water. Cut "
        "it small and only the softening is left.",
        maths=f"t = (r²/(π²·α))·ln(2·({number(case.here.boiling_c, 1)} − 15)/({number(case.here.boiling_c, 1)} − 80)) "
        f"with r = 30 mm, α = 1.7·10⁻⁷ m²/s: {number(here, 1)} min.",
    )


@rule("boil.salt", "atkins-ebullioscopic")
def salt(case: Case) -> Part | None:
    """What salting the water does to its boiling point: next to nothing."""
    if case.dish_class not in SALTED_CLASSES:
        return None
    rise_k = water.salt_elevation_k(SALT_G_PER_KG)
    return Part(
        because="Salt the water for taste only: 10 g in a litre (2 tsp in a quart) raises the boil by "
        f"{number(rise_k, 2)} °C ({number(rise_k * 1.8, 1)} °F), which no clock shows.",
        maths=f"ΔT = 2·0.512·10/58.44 = {number(rise_k, 3)} K.",
    )


@rule("boil.drinking_water", "cdc-eid-2025-boil", "epa-boil", "health-canada-boil", "who-boil")
def safe_to_drink(case: Case) -> Part | None:
    """How long water itself is boiled: by the health agencies, to make it safe to drink."""
    return drinking_water(case) if case.dish_class == "water" else None


RULES = (
    boiling_point,
    threshold,
    water_temperature,
    instant.stand,
    time,
    eggs.time,
    wort.hops,
    safe_to_drink,
    published_rule(POT),
    roots,
    salt,
    eggs.steps,
    check,
    eggs.published,
    kidney_beans,
    eggs.safety,
    way_out,
)
