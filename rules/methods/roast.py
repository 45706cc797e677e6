"""Roast: in dry oven heat. The oven stays where it is, the thermometer decides, and the clock runs a little longer."""

from __future__ import annotations

from rules.book import Case, Part, Rule, rule
from rules.foods import popcorn
from rules.heat import chamber, dry
from rules.heat.dry import centre_minutes, core_c, dries, heated_through, oven_stays, set_to
from rules.heat.roast_weights import printed_oven_c
from rules.heat.wet import pace_words
from rules.heat.where_water_boils import boiling_point, boils_alike
from rules.model import Caution, Figure, Request
from rules.physics.units import FT_PER_M, round_time_min
from rules.said import Words, duration_span, elevation, number, sentences, temp, together

say = sentences("methods/roast")

ADVICE_FROM_FT = 3000.0
QUARTER = 1.25
TENDER_C = 95.0
NOTICED_K = 1.0
# what is large enough to be basted and tented while it roasts
BASTED = ("whole_bird", "tender_cut", "collagen_cut", "cured_meat")
PUBLISHED_AT_C, HOTTER_K = 163.0, 10.0


@rule("roast.oven", "csu-high-altitude-food-prep", "common-practice")
def oven(case: Case) -> Part:
    """The oven setting, which stays as at sea level."""
    heat, _ = set_to(case, "roast")
    return oven_stays(case, heat, elevation(0.0), say("oven-because"))


@rule("roast.time", "csu-high-altitude-food-prep", "carslaw-jaeger", "computed")
def time(case: Case) -> Part:
    """How long it roasts: from unchanged to as slow as a surface that stays wet makes it."""
    pace = dry.wet_surface_pace(case)
    if "meat" in case.traits:
        pace = dry.up_to_a_quarter(pace)
    return dry.time_part(case, "roast", pace, _why(case), "csu-high-altitude-food-prep", "carslaw-jaeger", "computed")


def _why(case: Case) -> Words:
    if not case.moved:
        return boils_alike(case)
    if "toasted" in case.traits:
        return dry.by_colour()
    boil = temp(case.here.boiling_c)
    if not heated_through(case.dish_class, case.request.dish):
        pace = "slower" if case.here.boiling_c < case.there.boiling_c else "sooner"
        return say("softens", boil=boil, pace=pace, baseline=case.baseline)
    target = core_c(case.request.dish, case.dish_class)
    ratio = centre_minutes(case.here, target) / centre_minutes(case.there, target)
    return say("heated-through", core=temp(target), boil=boil, pace=pace_words(ratio))


@rule("roast.published", "csu-high-altitude-food-prep", "usda-roast-325")
def published(case: Case) -> Part | None:
    """The two published opinions, side by side: nothing changes, and a quarter more time at 325 degF."""
    time = dry.dry_time(case, "roast", dry.wet_surface_pace(case))
    high = case.here.elevation_m * FT_PER_M >= ADVICE_FROM_FT
    if time is None or case.there.elevation_m or not high or "meat" not in case.traits:
        return None
    asked_c = case.request.temperature_c or printed_oven_c(case.request, "roast")
    if asked_c is not None and abs(asked_c - PUBLISHED_AT_C) > HOTTER_K:
        # a figure of another oven
        return None
    low, top = time.base_low_min * QUARTER, time.base_high_min * QUARTER
    return Part(
        figures=(
            Figure(
                "usda_time", say("usda-label"), round_time_min((low + top) / 2), "min", round_time_min(low),
                round_time_min(top),
            ),
        ),
        because=say("published", usda=duration_span(low, top)),
    )  # fmt: skip


@rule("roast.thermometer", "usda-fsis-high-altitude", "common-practice")
def thermometer(case: Case) -> Part | None:
    """What to do about drying, and where the thermometer goes."""
    if "meat" not in case.traits:
        return None
    baste = (say("baste"),) if dries(case) and case.dish_class in BASTED else ()
    return Part(steps=(say("thermometer"), *baste), because=dries(case))


@rule("roast.tough", "computed", "common-practice")
def tough(case: Case) -> Part | None:
    """A tough cut in a dry oven: covered it stops at the boil."""
    if case.dish_class != "collagen_cut":
        return None
    boil_c = case.here.boiling_c
    reach = say("tough-reach", boil=temp(boil_c), tender=temp(TENDER_C)) if boil_c < TENDER_C + 1 else ""
    return Part(
        steps=(together(say("tough-step"), reach),),
        cautions=(Caution("note", say("tough-note"), ("usda-fsis-high-altitude",)),),
    )


@rule("roast.potatoes", "common-practice", "computed")
def roots(case: Case) -> Part | None:
    """Roots: half cooked in water first, or simply longer."""
    if "root" not in case.traits:
        return None
    if case.here.boiling_c > min(case.there.boiling_c, case.sea.boiling_c) - NOTICED_K:
        return None
    cooler = number((case.sea.boiling_c - case.here.boiling_c) * 1.8, 0)
    return Part(steps=(say("roots-step"),), because=say("roots-because", cooler=cooler))


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
