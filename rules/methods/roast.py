"""Roast: in dry oven heat. The oven stays where it is, the thermometer decides, and the clock runs a little longer."""

from __future__ import annotations

from rules.book import Case, Part, Rule, rule
from rules.foods import popcorn
from rules.heat import chamber, dry
from rules.heat.dry import centre_minutes, core_c, dries, heated_through, set_to, setting_figure, span
from rules.heat.wet import pace_words
from rules.heat.where_water_boils import boiling_point
from rules.model import Caution, Figure, Request
from rules.physics.units import FT_PER_M, round_time_min
from rules.say import duration_span, number

MEATS = (
    "tender_cut", "ground_meat", "sausage", "poultry_pieces", "whole_bird", "cured_meat", "collagen_cut", "offal",
)  # fmt: skip
ADVICE_FROM_FT = 3000.0
QUARTER = 1.25
TENDER_C = 95.0
NOTICED_K = 1.0


@rule("roast.oven", "csu-high-altitude-food-prep", "common-practice")
def oven(case: Case) -> Part:
    """The oven setting, which stays as at sea level."""
    heat, _ = set_to(case, "roast")
    return Part(
        figures=(setting_figure("oven", "Oven", heat),),
        headline=f"Set the oven to {span(case, heat)} for {case.food} at {case.place}, as at sea level."
        if case.request.topic == "temperature"
        else "",
        steps=(f"Set the oven to {span(case, heat)} and preheat it fully.",),
        because="An oven is as hot as its thermostat says at any elevation, and extension advice leaves it alone: "
        "sea-level instructions hold.",
    )


@rule("roast.time", "csu-high-altitude-food-prep", "carslaw-jaeger", "computed")
def time(case: Case) -> Part:
    """How long it roasts: from unchanged to as slow as a surface that stays wet makes it."""
    pace = dry.wet_surface_pace(case)
    if case.dish_class in MEATS:
        pace = dry.up_to_a_quarter(pace)
    return dry.time_part(case, "roast", pace, _why(case), "csu-high-altitude-food-prep", "carslaw-jaeger", "computed")


def _why(case: Case) -> str:
    if not case.moved:
        return f"Water boils here as at {case.baseline}, so the time stays."
    if case.dish_class in dry.TOASTED:
        return "It browns and dries by the heat of the oven, as anywhere: go by colour and smell."
    if not heated_through(case.dish_class):
        slower = case.here.boiling_c < case.there.boiling_c
        return (
            "The outside browns as anywhere; the wet middle stays under the boil, "
            f"{case.say.temp(case.here.boiling_c)} here, and softens {'more slowly' if slower else 'sooner'} than at "
            f"{case.baseline}, so the range runs to the {'longer' if slower else 'shorter'} side."
        )
    target = core_c(case.request.dish, case.dish_class)
    ratio = centre_minutes(case.here, target) / centre_minutes(case.there, target)
    return (
        f"The centre has to reach {case.say.temp(target)}. While the surface is wet it stays at or under the boil, "
        f"{case.say.temp(case.here.boiling_c)} here. Wet to the end it takes {pace_words(ratio)}; a surface "
        "that dries early evens that out."
    )


@rule("roast.published", "csu-high-altitude-food-prep", "usda-roast-325")
def published(case: Case) -> Part | None:
    """The two published opinions, side by side: nothing changes, and a quarter more time at 325 degF."""
    time = dry.dry_time(case, "roast", dry.wet_surface_pace(case))
    high = case.here.elevation_m * FT_PER_M >= ADVICE_FROM_FT
    if time is None or case.there.elevation_m or not high or case.dish_class not in MEATS:
        return None
    low, top = time.base_low_min * QUARTER, time.base_high_min * QUARTER
    return Part(
        figures=(
            Figure(
                "usda_time", "By USDA advice for meat at 325 °F (162 °C)", round_time_min((low + top) / 2), "min",
                round_time_min(low), round_time_min(top),
            ),
        ),
        because="Published advice differs. Colorado extension leaves oven roasts as at sea level; USDA adds one "
        f"quarter to the time at 325 °F (162 °C), which makes {duration_span(low, top)} here. The thermometer settles "
        "it.",
    )  # fmt: skip


@rule("roast.thermometer", "usda-fsis-high-altitude", "common-practice")
def thermometer(case: Case) -> Part | None:
    """What to do about drying, and where the thermometer goes."""
    if case.dish_class not in MEATS:
        return None
    steps = ["Put a thermometer in the thickest part, clear of bone, and take the meat out by it, not by the clock."]
    if dries(case):
        steps.append("Baste it, tent it with foil once it is brown, and rest it covered: it dries sooner here.")
    return Part(steps=tuple(steps), because=dries(case))


@rule("roast.tough", "computed", "common-practice")
def tough(case: Case) -> Part | None:
    """A tough cut in a dry oven: covered it stops at the boil."""
    if case.dish_class != "collagen_cut":
        return None
    boil = case.say.temp(case.here.boiling_c)
    reach = (
        f" Its wet middle stops near the boil, {boil} here, so do not wait for {case.say.temp(TENDER_C)}: go by the "
        "fork."
        if case.here.boiling_c < TENDER_C + 1
        else ""
    )
    return Part(
        steps=(f"Roast it low and go on until a fork twists in it; cover it when it is brown.{reach}",),
        cautions=(
            Caution("note", "A tough cut comes out moister braised than roasted, above all in dry air.",
                    ("usda-fsis-high-altitude",)),
        ),
    )  # fmt: skip


@rule("roast.potatoes", "common-practice", "computed")
def roots(case: Case) -> Part | None:
    """Roots: half cooked in water first, or simply longer."""
    if case.dish_class not in ("starchy_root", "root_vegetable"):
        return None
    if case.here.boiling_c > min(case.there.boiling_c, case.sea.boiling_c) - NOTICED_K:
        return None
    percent = number((case.sea.boiling_c - case.here.boiling_c) * 1.8, 0)
    return Part(
        steps=("Cut roots smaller than usual, and cover the pan for the first half so that they steam soft.",),
        because=f"Inside, a root is cooked by its own water, which boils {percent} °F cooler than at sea level.",
    )


NEEDS = ("elevation", "dish")
RULES = (
    popcorn.pops, oven, time, published, boiling_point, dry.core, dry.check, thermometer, tough, roots, popcorn.larger,
)  # fmt: skip


def rules_for(request: Request | None) -> tuple[Rule, ...]:
    """The rules, after a refusal where raw meat is set too cool; every rule for None."""
    return (*RULES, *chamber.RULES) if request is None else chamber.guarded(request, RULES)


def needs(request: Request) -> tuple[str, ...]:
    """What must be known first; nothing for a refusal."""
    return chamber.needs(request, NEEDS)
