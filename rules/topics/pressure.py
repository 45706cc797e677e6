"""Pressure: what gauge pressure here is worth what at sea level, and how hot it gets inside."""

from __future__ import annotations

from rules.book import Case, Part, celsius, rule
from rules.errors import within
from rules.heat.wet import time_part
from rules.heat.where_water_boils import boiling_point
from rules.methods.pressure_cook import (
    HIGHEST_GAUGE_PA,
    PRESSURE_CAUTION,
    STOVE_TOP_GAUGE_PA,
    gauge_pa,
    heats,
    inside_c,
    published_percent,
)
from rules.model import Caution, Figure
from rules.physics.units import FT_PER_M, PSI_PER_PA
from rules.say import number

USUAL_PSI = (10, 15)
PUBLISHED_FT_PER_PSI = 2000


def needed_pa(case: Case, gauge_pa: float) -> float:
    """Gauge pressure [Pa] that gives the same heat here as gauge_pa at the baseline: the air's loss made good."""
    return gauge_pa + case.there.pressure_pa - case.here.pressure_pa


def asked_pa(case: Case) -> tuple[float, ...]:
    """The gauge pressures a question is about [Pa]: the cook's own, else 10 and 15 psi.

    raises: OutOfRange for a gauge below zero or above 30 psi
    """
    own = case.request.gauge_pa
    if own is None:
        return tuple(psi / PSI_PER_PA for psi in USUAL_PSI)
    hint = "Domestic cookers run at 5 to 15 psi."
    return (within("gauge pressure", own, 0, HIGHEST_GAUGE_PA, "Pa", hint),)


@rule("pressure.equal", "iapws-r7-97", "us-std-atm-1976")
def equal(case: Case) -> Part:
    """What the gauge must read here for the heat of the same pot at the baseline."""
    asked = asked_pa(case)
    told = [
        f"{case.say.gauge(needed_pa(case, gauge))} to match {case.say.gauge(gauge)} at {case.baseline}"
        for gauge in asked
    ]
    figures = tuple(
        Figure(
            f"gauge_for_{number(gauge * PSI_PER_PA, 1).replace('.', '_')}_psi",
            f"Gauge here for the heat of {number(gauge * PSI_PER_PA, 1)} psi",
            round(needed_pa(case, gauge) * PSI_PER_PA, 2),
            "psi",
            sea_level=round(gauge * PSI_PER_PA, 1),
        )
        for gauge in asked
    )
    lost = case.there.pressure_pa - case.here.pressure_pa
    way = "less" if lost > 0 else "more"
    return Part(
        figures=figures,
        headline=f"At {case.place} a pressure cooker needs {', and '.join(told)}.",
        because=f"The steam inside is as hot as gauge and air together make it, and the air at {case.place} presses "
        f"{case.say.gauge(abs(lost))} {way} than at {case.baseline}. The gauge has to make that good."
        if case.moved
        else "The air presses as at the baseline, so the gauge stays.",
        maths=f"p_gauge here = p_gauge + {number(case.there.pressure_pa * PSI_PER_PA)} − "
        f"{number(case.here.pressure_pa * PSI_PER_PA)} psi.",
    )


@rule("pressure.inside", "iapws-r7-97", "us-std-atm-1976")
def inside(case: Case) -> Part:
    """How hot it gets inside at these gauges, here and at sea level."""
    gauges = asked_pa(case)
    figures = tuple(
        celsius(
            f"inside_at_{number(g * PSI_PER_PA, 1).replace('.', '_')}_psi",
            f"Inside at {number(g * PSI_PER_PA, 1)} psi",
            inside_c(case.here, g),
            inside_c(case.sea, g),
        )
        for g in gauges
    )
    top = gauges[-1]
    same = f"At {case.say.gauge(top)} it is {case.say.temp(inside_c(case.here, top))} inside"
    lower = inside_c(case.sea, top) - inside_c(case.here, top)
    against = f", {case.say.temp_drop(lower)} less than at sea level" if lower > 0.25 else ", as at sea level"
    return Part(figures=figures, because=f"{same}{against}.")


@rule("pressure.published", "uwyo-altitude-adjusters", "usda-fsis-high-altitude")
def published(case: Case) -> Part | None:
    """The published rules: one psi more for each 2,000 ft, or more time where the gauge cannot go up."""
    feet = case.here.elevation_m * FT_PER_M
    if feet < 1000 or case.there.elevation_m:
        return None
    percent = published_percent(case.here.elevation_m)
    instead = f"; where the weight is fixed, {percent} % more time" if percent else ""
    return Part(
        figures=(Figure("published_psi", "Published rule adds", round(feet / PUBLISHED_FT_PER_PSI, 1), "psi"),),
        because=f"The published rule is 1 psi more for each 2,000 ft, {number(feet / PUBLISHED_FT_PER_PSI, 1)} psi "
        f"here{instead}.",
    )


@rule("pressure.limit", "common-practice", "usda-aib-539")
def limit(case: Case) -> Part:
    """A cooker is never run above what it is made for, and canning has its own tables."""
    over = any(needed_pa(case, gauge) > STOVE_TOP_GAUGE_PA + 1000 for gauge in asked_pa(case))
    fixed = (
        Caution(
            "warn",
            "Never run a cooker above the pressure it is made for, usually 15 psi (103 kPa): where that is not "
            "enough, cook longer.",
            ("common-practice",),
        ),
    )
    canning = Caution(
        "warn",
        "For canning use the pressure in a tested table for your elevation, never one worked out from this.",
        ("usda-aib-539",),
    )
    return Part(
        steps=("Where the cooker has a fixed weight, keep the weight and lengthen the time.",) if over else (),
        cautions=(*(fixed if over else ()), canning, PRESSURE_CAUTION),
    )


@rule("pressure.dish", "common-practice")
def dish_time(case: Case) -> Part | None:
    """How long the dish takes under pressure here, where one was named."""
    return time_part(case, heats(case, gauge_pa(case))) if case.request.dish else None


RULES = (equal, inside, dish_time, boiling_point, published, limit)
