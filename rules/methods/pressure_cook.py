"""Pressure cook: the gauge adds to the air outside, so a cooker runs cooler inside the higher one climbs."""

from __future__ import annotations

from dataclasses import replace

from rules.book import Case, Part, celsius, rule
from rules.foods.beans import unsoaked_time
from rules.heat.pressure import (
    CANNING_CAUTION,
    PRESSURE_CAUTION,
    STOVE_TOP_GAUGE_PA,
    gauge_pa,
    heats,
    inside_c,
    published_percent,
)
from rules.heat.wet import check, kidney_beans, time_part, wet_time
from rules.heat.where_water_boils import boiling_point
from rules.heat.whistles import in_minutes, whistles, whistles_told
from rules.model import Caution, Figure
from rules.physics.units import FT_PER_M, PSI_PER_PA
from rules.said import duration, duration_span, fixed, gauge, number, sentences, temp, temp_drop
from rules.tables import read_csv

BEANS = "tables/bean_pressure_csu-dry-beans.csv"
LONG_RELEASE_FT = 7000
# a pot that holds its own pressure: no flame, no weight, only a setting and minutes
ELECTRIC = "electric_pressure_cooker"
COOLER_K = 0.25
# what two readings of a gauge have to be apart to be told apart
READABLE_PA = 500.0
say = sentences("methods/pressure_cook")


@rule("pressure_cook.inside", "iapws-r7-97", "us-std-atm-1976")
def inside(case: Case) -> Part:
    """How hot it gets inside the cooker here."""
    at_pa = gauge_pa(case)
    here, sea = inside_c(case.here, at_pa), inside_c(case.sea, at_pa)
    return Part(
        figures=(
            celsius("inside_temperature", say("inside-label"), here, sea),
            Figure("gauge", say("gauge-label"), round(at_pa * PSI_PER_PA, 1), "psi"),
        ),
        because=say(
            "inside",
            gauge=gauge(at_pa),
            inside=temp(here),
            place=case.place,
            way="cooler" if sea - here > COOLER_K else "same",
            drop=temp_drop(sea - here),
        ),
        maths=say("inside-maths", air=number(case.here.pressure_pa, 0), gauge=number(at_pa, 0), inside=fixed(here, 1)),
    )


@rule("pressure_cook.time", "anderson-1980-altitude", "common-practice")
def time(case: Case) -> Part:
    """How long at pressure here, from the time at the baseline, by the published rule for pressure cookers."""
    called = say("unsoaked", food=case.food) if unsoaked(case) else ""
    return time_part(in_minutes(case), heats(case, gauge_pa(case)), called)


def unsoaked(case: Case) -> bool:
    """Whether the time is that of beans that were not soaked."""
    request = case.request
    return request.soaked is False and unsoaked_time(request.dish, case.dish_class, "pressure_cook") is not None


@rule("pressure_cook.soak", "common-practice")
def soak(case: Case) -> Part | None:
    """Which beans the time is for, soaked or not, and how long the others take."""
    other = unsoaked_time(case.request.dish, case.dish_class, "pressure_cook")
    if other is None or in_minutes(case).request.time_min is not None:
        return None
    if unsoaked(case):
        return Part(because=say("for-unsoaked"))
    dry = wet_time(Case(replace(case.request, soaked=False)), heats(case, gauge_pa(case)))
    if dry is None:
        return None
    return Part(because=say("for-soaked", time=duration_span(dry.low_min, dry.high_min)))


@rule("pressure_cook.rule_of_thumb", "anderson-1980-altitude")
def rule_of_thumb(case: Case) -> Part | None:
    """The published rule that the time goes by: 5 % more for every 1,000 ft above 2,000 ft."""
    percent = published_percent(case.here.elevation_m)
    time = wet_time(in_minutes(case), heats(case, gauge_pa(case)))
    if time is None or case.there.elevation_m or not percent:
        return None
    return Part(
        figures=(Figure("rule_of_thumb", say("rule-of-thumb-label"), float(percent), "percent"),),
        because=say("rule-of-thumb", percent=number(percent, 0)),
    )


@rule("pressure_cook.step", "common-practice", "uwyo-altitude-adjusters")
def step(case: Case) -> Part:
    """What to do: count from pressure, and raise the gauge where the cooker allows it."""
    at_pa = gauge_pa(case)
    same_pa = at_pa + case.there.pressure_pa - case.here.pressure_pa
    if ELECTRIC in case.request.equipment and case.request.gauge_pa is None:
        return Part(steps=(say("set-electric"),))
    steps = [] if whistles_told(case.request) else [say("count-from-pressure", gauge=gauge(at_pa))]
    if at_pa + READABLE_PA < same_pa <= STOVE_TOP_GAUGE_PA + READABLE_PA:
        steps.append(say("raise-the-gauge", baseline=case.baseline, gauge=gauge(same_pa)))
    return Part(steps=tuple(steps))


@rule("pressure_cook.beans", "csu-dry-beans")
def beans(case: Case) -> Part | None:
    """Tested times for soaked dry beans in an electric cooker on its low setting."""
    row = next((r for r in read_csv(BEANS).rows if r["dish"] == case.request.dish), None)
    if row is None or case.request.soaked is False:
        return None
    where = "below" if case.here.elevation_m * FT_PER_M < LONG_RELEASE_FT else "above"
    low, high = (float(row[f"release_{end}_{where}_7000_ft"]) for end in ("low", "high"))
    minutes = float(row["low_pressure_min"])
    return Part(
        figures=(Figure("tested_low_pressure_time", say("tested-label"), minutes, "min"),),
        steps=(say("tested-step", time=duration(minutes), release=duration_span(low, high)),),
        because=say("tested"),
    )


@rule("pressure_cook.electric", "usu-ask-extension")
def electric(case: Case) -> Part | None:
    """What was measured of electric cookers at elevation."""
    if case.here.elevation_m * FT_PER_M < 5000 or whistles_told(case.request):
        return None
    return Part(cautions=(Caution("note", say("electric"), ("usu-ask-extension",)),))


@rule("pressure_cook.safety", "common-practice")
def safety(case: Case) -> Part:
    """The usual cautions; where a pressure was named, that canning goes by other tables."""
    named = case.request.gauge_pa is not None
    return Part(cautions=(*((CANNING_CAUTION,) if named else ()), PRESSURE_CAUTION))


RULES = (
    boiling_point,
    inside,
    whistles,
    time,
    soak,
    rule_of_thumb,
    step,
    beans,
    check,
    kidney_beans,
    electric,
    safety,
)
