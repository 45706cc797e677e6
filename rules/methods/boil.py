"""Boil: in plenty of water at a full boil. Eggs go by rules/foods/eggs.py, drinking water by the health agencies."""

from __future__ import annotations

from rules.book import Case, Part, rule
from rules.foods import dipped, eggs, wort
from rules.heat import instant, par_cook
from rules.heat.pots import BOIL
from rules.heat.way_out import way_out
from rules.heat.wet import bean_boil, check, kidney_beans, published_rule, threshold, time_part
from rules.heat.where_water_boils import boiling_point
from rules.model import Figure
from rules.physics import conduction, water
from rules.physics.units import round_time_min
from rules.safety.subjects.drinking_water import drinking_water
from rules.said import duration, number, sentences, temp

OWN_RULE = ("egg", "water", "wort")
SALT_G_PER_KG = 10.0
ROOT_HALF_MM, ROOT_DIFFUSIVITY_M2_S, ROOT_START_C, ROOT_TARGET_C = 30.0, 1.7e-7, 15.0, 80.0
say = sentences("methods/boil")


@rule("boil.water_temperature", "iapws-r7-97")
def water_temperature(case: Case) -> Part:
    """What to bring to the boil, and that a harder boil does not raise its temperature."""
    if case.dish_class in ("egg", "water", instant.INSTANT):
        return Part()
    of = "own" if "own_liquid" in case.traits else "water"
    return Part(steps=(say("bring-to-the-boil", of=of, boil=temp(case.here.boiling_c)),))


@rule("boil.time", "common-practice")
def time(case: Case) -> Part | None:
    """How long it takes here, from the baseline and the softening rate; eggs, water and wort have their own rules."""
    if dipped.DIPPED in case.traits:
        return None
    return None if case.dish_class in OWN_RULE else time_part(case, BOIL.heats(case))


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
    label = say("roots-label", target=temp(ROOT_TARGET_C))
    return Part(
        figures=(Figure("centre_time", label, round_time_min(here), "min", sea_level=round_time_min(sea)),),
        because=say("roots", here=duration(here), sea=duration(sea)),
        maths=say("roots-maths", boil=number(case.here.boiling_c, 1), here=number(here, 1)),
    )


@rule("boil.salt", "atkins-ebullioscopic")
def salt(case: Case) -> Part | None:
    """What salting the water does to its boiling point: next to nothing."""
    if "salted_water" not in case.traits:
        return None
    rise_k = water.salt_elevation_k(SALT_G_PER_KG)
    return Part(
        because=say("salt", rise_c=number(rise_k, 2), rise_f=number(rise_k * 1.8, 1)),
        maths=say("salt-maths", rise=number(rise_k, 3)),
    )


@rule("boil.drinking_water", "cdc-eid-2025-boil", "epa-boil", "health-canada-boil", "who-boil")
def safe_to_drink(case: Case) -> Part | None:
    """How long water itself is boiled: by the health agencies, to make it safe to drink."""
    return drinking_water(case) if case.dish_class == "water" else None


RULES = (
    boiling_point,
    threshold,
    bean_boil,
    water_temperature,
    instant.stand,
    par_cook.par_cook,
    time,
    dipped.dip,
    eggs.time,
    wort.hops,
    safe_to_drink,
    published_rule(BOIL),
    roots,
    salt,
    eggs.steps,
    check,
    eggs.published,
    kidney_beans,
    eggs.safety,
    way_out,
)
