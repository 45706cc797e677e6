"""The pressure cooker as the way out where an open pot is slow."""

from __future__ import annotations

from dataclasses import replace

from rules.book import Case, Part, rule
from rules.foods.dishes import sea_level_time
from rules.heat.pressure import cooker, heats, inside_c
from rules.heat.wet import wet_time
from rules.model import Caution, Figure
from rules.physics.units import PSI_PER_PA, round_time_min
from rules.said import duration_span, gauge, number, sentences, temp

WORTH_IT_K, WORTH_IT_MIN = 1.5, 6.0
say = sentences("heat/way_out")


def unfit(case: Case) -> bool:
    """Whether nobody would put the dish into a pressure cooker, or nothing is known of it."""
    return "no_pressure" in case.traits or case.dish_class == "general"


@rule("pressure_cook.way_out", "common-practice", "iapws-r7-97")
def way_out(case: Case) -> Part | None:
    """The pressure cooker as the way out where the open pot is slow: its time here, for this dish."""
    lacks = {"pressure_cook", "stovetop_pressure_cooker"}.intersection(case.request.lacking)
    if lacks or case.request.topic == "temperature":
        return None
    if case.here.boiling_c > case.sea.boiling_c - WORTH_IT_K or unfit(case):
        return None
    table = Case(replace(case.request, time_min=None, time_high_min=None, from_elevation_m=None))
    name, gauge_pa = cooker(case)
    quick = wet_time(table, heats(table, gauge_pa))
    if quick is None or quick.base_mid_min < WORTH_IT_MIN:
        return None
    usual = sea_level_time(case.request.dish, case.dish_class, case.request.method or "")
    if usual is not None and usual.high_min <= quick.base_high_min:
        return None
    own_min = case.request.time_high_min or case.request.time_min
    if own_min is not None and own_min <= quick.base_mid_min:
        # the cook's own pot is as quick: no way out
        return None
    low, likely, high = (round_time_min(t) for t in (quick.low_min, quick.likely_min, quick.high_min))
    label = say("label", psi=number(gauge_pa * PSI_PER_PA, 0))
    return Part(
        figures=(Figure("pressure_time", label, likely, "min", low, high),),
        steps=(say("step", cooker=name, gauge=gauge(gauge_pa), time=duration_span(low, high)),),
        because=say("because", gauge=gauge(gauge_pa), inside=temp(inside_c(case.here, gauge_pa))),
        cautions=(Caution("note", say("caution"), ("common-practice",)),),
    )
