"""Pressure cook: the gauge adds to the air outside, so a cooker runs cooler inside the higher one climbs."""

from __future__ import annotations

from rules import kinetics, water, wet
from rules.boiling import boiling_point
from rules.book import Part, rule
from rules.case import Ambient, Case, celsius
from rules.model import Caution, Figure
from rules.say import PSI_PER_PA, duration_span, round_time_min
from rules.tables import read_toml

STOVE_TOP_GAUGE_PA = 15 / PSI_PER_PA
ELECTRIC_LOW_GAUGE_PA = 10 / PSI_PER_PA
PRESSURE_CAUTION = Caution(
    "warn",
    "Never fill a pressure cooker past two thirds, half for beans, grains and anything that foams; keep the vent clear, let "
    "the pressure fall before opening, and follow the maker's instructions.",
    ("common-practice",),
)


def inside_c(air: Ambient, gauge_pa: float) -> float:
    """Temperature of saturated steam in a cooker [degC]: gauge [Pa] plus the air outside.

    source: iapws-r7-97

    >>> from rules.case import ambient
    >>> round(inside_c(ambient(0), 15 / PSI_PER_PA), 1)
    120.9
    """
    return water.saturation_temp_c(air.pressure_pa + gauge_pa)


def gauge_pa(case: Case) -> float:
    """The gauge pressure to reckon with [Pa]: the cook's setting, else the cooker they own, else a stove-top's 15 psi."""
    if case.request.gauge_pa is not None:
        return case.request.gauge_pa
    rows = {row["id"]: row for row in read_toml("lexicon/equipment.toml")["equipment"]}
    owned = (rows[i]["gauge_psi"][-1] for i in case.request.equipment if rows.get(i, {}).get("gauge_psi"))
    return next((psi / PSI_PER_PA for psi in owned), STOVE_TOP_GAUGE_PA)


def pressure_span(case: Case, gauge: float) -> tuple[float, float, float] | None:
    """Time under pressure here [min]: low, likely, high; None where no table gives one for this dish."""
    time = wet.wet_time(
        case, "pressure_cook", inside_c(case.here, gauge), inside_c(case.there, gauge), inside_c(case.sea, gauge)
    )
    return (time.low_min, time.likely_min, time.high_min) if time else None


@rule("pressure_cook.inside", "iapws-r7-97", "us-std-atm-1976")
def inside(case: Case) -> Part:
    """How hot it gets inside the cooker here."""
    gauge = gauge_pa(case)
    here, sea = inside_c(case.here, gauge), inside_c(case.sea, gauge)
    cooler = f"{case.say.temp_drop(sea - here)} less than at sea level" if sea - here > 0.25 else "as at sea level"
    return Part(
        figures=(
            celsius("inside_temperature", f"Inside at {case.say.gauge(gauge)}", here, sea),
            Figure("gauge", "Gauge pressure", round(gauge * PSI_PER_PA, 1), "psi"),
        ),
        because=f"A gauge reads what the cooker adds to the air outside. At {case.say.gauge(gauge)} the steam inside is "
        f"{case.say.temp(here)} at {case.place}, {cooler}.",
        maths=f"T_sat({round(case.here.pressure_pa):,} + {round(gauge):,} Pa) = {here:.1f} °C.",
    )


@rule("pressure_cook.time", "common-practice")
def time(case: Case) -> Part | None:
    """How long at pressure here, from the time at the baseline."""
    gauge = gauge_pa(case)
    here_c, there_c, sea_c = (inside_c(a, gauge) for a in (case.here, case.there, case.sea))
    return wet.time_part(case, "pressure_cook", here_c, there_c, sea_c, "the steam inside")


@rule("pressure_cook.rule_of_thumb", "usda-fsis-high-altitude")
def rule_of_thumb(case: Case) -> Part | None:
    """The published rule: 5 % more time for every 1,000 ft above 2,000 ft."""
    thousands_ft = case.here.elevation_m / 304.8
    if case.there.elevation_m or thousands_ft < 3 or case.request.gauge_pa:
        return None
    percent = 5 * (int(thousands_ft) - 2)
    return Part(
        figures=(Figure("rule_of_thumb", "Published rule of thumb adds", float(percent), "percent"),),
        because=f"The published rule of thumb, 5 % more for each 1,000 ft above 2,000 ft, asks for {percent} % more here; "
        "where it and the softening rate differ, the range spans the doubt.",
    )


@rule("pressure_cook.safety", "common-practice")
def safety(case: Case) -> Part:
    """The usual cautions."""
    return Part(cautions=(PRESSURE_CAUTION,))


@rule("pressure_cook.way_out", "common-practice", "iapws-r7-97")
def way_out(case: Case) -> Part | None:
    """The pressure cooker as the way out where the open pot is slow: its time here, for this dish."""
    if case.here.boiling_c > case.sea.boiling_c - 1.5 or case.request.time_min is not None:
        return None
    spans = {psi: pressure_span(case, psi / PSI_PER_PA) for psi in (15, 10)}
    stove_top, electric = spans[15], spans[10]
    if stove_top is None or electric is None:
        return None
    low, likely, high = (round_time_min(t) for t in stove_top)
    return Part(
        figures=(Figure("pressure_time", "In a pressure cooker at 15 psi", likely, "min", low, high),),
        steps=(
            f"Short of time: a stove-top pressure cooker at {case.say.gauge(STOVE_TOP_GAUGE_PA)} does it in "
            f"{duration_span(stove_top[0], stove_top[2])}, then let the pressure fall by itself.",
        ),
        cautions=(PRESSURE_CAUTION,),
    )


RULES = (boiling_point, inside, time, rule_of_thumb, safety)
