"""Braise: a tough cut, part covered by liquid, lid on, just under the boil."""

from __future__ import annotations

from rules.book import Case, Part, rule
from rules.heat.pots import BRAISE, BRAISE_OVEN_C
from rules.heat.way_out import way_out
from rules.heat.wet import (
    bean_boil,
    check,
    extra_liquid_rule,
    kidney_beans,
    temperature_rule,
    threshold,
    time_rule,
    wet_time,
)
from rules.heat.where_water_boils import boiling_point
from rules.model import Figure
from rules.physics.units import FT_PER_M, round_time_min
from rules.said import Said, duration_span, oven, sentences, temp, yes

OVEN_RANGE_C = (148.9, 176.7)

ADVICE_FROM_FT = 2500
EXTENSION_PER_FT = 0.25 / 5000
COOKS_MIN_PER_FT = (30 / 3000, 60 / 3000)
COOKS_BRAISE_MIN = (120, 270)
TOUGH = ("collagen_cut", "mixed_stew", "offal", "cured_meat")


say = sentences("methods/braise")


@rule("braise.oven", "csu-high-altitude-food-prep", "common-practice")
def oven_setting(case: Case) -> Part:
    """The oven setting, which does not move: the pot is held by its liquid, not by the oven air."""
    low, high = OVEN_RANGE_C
    liquid, setting = temp(BRAISE.working_c(case.here)), oven(BRAISE_OVEN_C)
    asked = case.request.topic == "temperature"
    return Part(
        headline=say("oven-headline", place=case.place, liquid=liquid, setting=setting) if asked else "",
        figures=(Figure("oven", say("oven-label"), BRAISE_OVEN_C, "degC", low, high, sea_level=BRAISE_OVEN_C),),
        steps=(say("oven-step", setting=setting),),
        because=say("oven-because"),
    )


@rule("braise.published", "csu-high-altitude-food-prep", "common-practice")
def published(case: Case) -> Part | None:
    """What extension advice and cooks at elevation add, beside what the softening rate gives."""
    time = wet_time(case, BRAISE.heats(case))
    feet = case.here.elevation_m * FT_PER_M
    if time is None or case.there.elevation_m or feet < ADVICE_FROM_FT or case.dish_class not in TOUGH:
        return None
    base = (time.base_low_min, time.base_high_min)
    extension = [t * (1 + EXTENSION_PER_FT * feet) for t in base]
    figures, cooks = [_advice("extension_time", say("extension-label"), extension)], []
    if COOKS_BRAISE_MIN[0] <= time.base_mid_min <= COOKS_BRAISE_MIN[1]:
        cooks = [t + more * feet for t, more in zip(base, COOKS_MIN_PER_FT, strict=True)]
        figures.append(_advice("cooks_time", say("cooks-label"), cooks))
    spans = [(f.low or f.value, f.high or f.value) for f in figures]
    return Part(
        figures=tuple(figures),
        because=say(
            "published",
            extension=duration_span(*extension),
            cooks=duration_span(*cooks) if cooks else "",
            reckoned=yes(cooks),
            softening=duration_span(time.low_min, time.high_min),
            relation=_relation(time.low_min, time.high_min, spans),
        ),
    )


def _relation(low_min: float, high_min: float, spans: list[tuple[float, float]]) -> str:
    """How a range lies to others, give or take a tenth: it takes them in, overlaps, or is longer or shorter."""
    if all(low_min * 0.9 <= low and high <= high_min * 1.1 for low, high in spans):
        return "around"
    if all(low <= high_min and low_min <= high for low, high in spans):
        return "overlaps"
    return "longer" if all(high < high_min for _, high in spans) else "shorter"


def _advice(figure_id: str, label: Said, span: list[float]) -> Figure:
    low, high = span
    return Figure(figure_id, label, round_time_min((low + high) / 2), "min", round_time_min(low), round_time_min(high))


RULES = (
    boiling_point,
    threshold,
    bean_boil,
    temperature_rule(BRAISE, say("liquid-label"), lambda _, liquid: say("liquid-step", liquid=liquid)),
    time_rule(BRAISE),
    published,
    oven_setting,
    extra_liquid_rule(BRAISE),
    check,
    kidney_beans,
    way_out,
)
