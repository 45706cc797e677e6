"""Braise: a tough cut, part covered by liquid, lid on, just under the boil."""

from __future__ import annotations

from rules.boiling import boiling_point
from rules.book import Part, rule
from rules.case import Case
from rules.methods.pressure_cook import way_out
from rules.model import Figure
from rules.say import FT_PER_M, duration_span, round_time_min
from rules.wet import Pot, check, extra_liquid_rule, kidney_beans, temperature_rule, threshold, time_rule, wet_time

POT = Pot("braise", "the liquid", below_boil_k=3.0, area_m2=0.06, size="28 cm (11 in)")
OVEN_C = 162.8
OVEN_RANGE_C = (148.9, 176.7)

ADVICE_FROM_FT = 2500
EXTENSION_PER_FT = 0.25 / 5000
COOKS_MIN_PER_FT = (30 / 3000, 60 / 3000)
COOKS_BRAISE_MIN = (120, 270)
TOUGH = ("collagen_cut", "mixed_stew", "offal", "cured_meat")


@rule("braise.oven", "csu-high-altitude-food-prep", "common-practice")
def oven(case: Case) -> Part:
    """The oven setting, which does not move: the pot is held by its liquid, not by the oven air."""
    low, high = OVEN_RANGE_C
    liquid, setting = case.say.temp(POT.working_c(case.here)), case.say.oven(OVEN_C)
    return Part(
        headline=f"At {case.place} hold a braise's liquid at about {liquid}, and the oven at {setting} as anywhere."
        if case.request.topic == "temperature"
        else "",
        figures=(Figure("oven", "Oven", OVEN_C, "degC", low, high, sea_level=OVEN_C),),
        steps=(f"Set the oven to {setting}, lid on; lower it if the liquid does more than murmur.",),
        because="The oven setting stays as at sea level: a hotter oven only drives off more liquid, since the pot "
        "cannot pass the boiling point.",
    )


@rule("braise.published", "csu-high-altitude-food-prep", "common-practice")
def published(case: Case) -> Part | None:
    """What extension advice and cooks at elevation add, beside what the softening rate gives."""
    time = wet_time(case, POT.heats(case))
    feet = case.here.elevation_m * FT_PER_M
    if time is None or case.there.elevation_m or feet < ADVICE_FROM_FT or case.dish_class not in TOUGH:
        return None
    base = (time.base_low_min, time.base_high_min)
    extension = [t * (1 + EXTENSION_PER_FT * feet) for t in base]
    figures = [_advice("extension_time", "By extension advice", extension)]
    said = (
        f"Extension advice for braised meat, one quarter more at 5,000 ft, comes to {duration_span(*extension)} here "
        "taken in proportion"
    )
    if COOKS_BRAISE_MIN[0] <= time.base_mid_min <= COOKS_BRAISE_MIN[1]:
        cooks = [t + more * feet for t, more in zip(base, COOKS_MIN_PER_FT, strict=True)]
        figures.append(_advice("cooks_time", "By cooks' reckoning", cooks))
        said += f"; cooks reckon 30 min to 1 h more for every 3,000 ft, {duration_span(*cooks)}"
    spans = [(f.low or f.value, f.high or f.value) for f in figures]
    return Part(
        figures=tuple(figures),
        because=f"{said}. The range by softening rate, {duration_span(time.low_min, time.high_min)}, "
        f"{_relation(time.low_min, time.high_min, spans)}.",
    )


def _relation(low_min: float, high_min: float, spans: list[tuple[float, float]]) -> str:
    """How a range lies to others, give or take a tenth."""
    if all(low_min * 0.9 <= low and high <= high_min * 1.1 for low, high in spans):
        return "takes them in"
    if all(low <= high_min and low_min <= high for low, high in spans):
        return "overlaps with them"
    return "is longer" if all(high < high_min for _, high in spans) else "is shorter"


def _advice(figure_id: str, label: str, span: list[float]) -> Figure:
    low, high = span
    return Figure(figure_id, label, round_time_min((low + high) / 2), "min", round_time_min(low), round_time_min(high))


NEEDS = ("elevation", "dish")
RULES = (
    boiling_point,
    threshold,
    temperature_rule(
        POT,
        "Liquid at a bare simmer",
        "Hold the liquid at a bare simmer, about {temp}: a bubble now and then, never a rolling boil.",
    ),
    time_rule(POT),
    published,
    oven,
    extra_liquid_rule(POT),
    check,
    kidney_beans,
    way_out,
)
