"""Pressure: what gauge pressure here is worth what at sea level, and how hot it gets inside."""

from __future__ import annotations

from dataclasses import replace

from rules.book import Case, Part, celsius, rule
from rules.heat.pressure import (
    CANNING_CAUTION,
    PRESSURE_CAUTION,
    STOVE_TOP_GAUGE_PA,
    gauge_pa,
    heats,
    inside_c,
    plausible_pa,
    published_percent,
)
from rules.heat.wet import time_part
from rules.heat.where_water_boils import boiling_point
from rules.model import Caution, Figure
from rules.physics import kinetics
from rules.physics.units import FT_PER_M, PSI_PER_PA
from rules.said import Said, gauge, number, sentences, temp, temp_drop, temp_span, yes

say = sentences("topics/pressure")

USUAL_PSI = (10, 15)
PUBLISHED_FT_PER_PSI = 2000
NOTICED_K = 0.25
OF_TIME = ("longer", "shorter")
# what an electric cooker holds on its high setting [psi], by common practice
ELECTRIC, ELECTRIC_HIGH_PSI = "electric_pressure_cooker", (10, 12)
# the classes that softening slows most, and about as it slows most food
SLOWED_MOST, USUAL = "dried_bean", "mixed_stew"


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
    return (plausible_pa(own),)


@rule("pressure.more_time", "anderson-1980-altitude", "common-practice")
def more_time(case: Case) -> Part | None:
    """How much longer it takes under pressure, where that is asked and neither a pressure nor a dish was named."""
    request = case.request
    if request.asked_way not in OF_TIME or request.gauge_pa is not None or request.dish or case.there.elevation_m:
        return None
    percent = published_percent(case.here.elevation_m)
    inside = heats(case, gauge_pa(case))
    slow, fast = (
        kinetics.rate_factor(inside.here_c, inside.there_c, kinetics.softening(of).z_k) for of in (SLOWED_MOST, USUAL)
    )
    return Part(
        headline=say(
            "more-time",
            longer=yes(percent > 0),
            counted=yes("more" in request.forms or "how_much" in request.forms),
            percent=number(percent, 0),
            place=case.place,
            gauge=gauge(gauge_pa(case)),
            here=temp(inside.here_c),
            there=temp(inside.there_c),
            baseline=case.baseline,
            meat=number((fast - 1) * 100, 0),
            beans=number((slow - 1) * 100, 0),
        )
    )


@rule("pressure.electric", "common-practice", "usu-ask-extension", "iapws-r7-97")
def electric(case: Case) -> Part | None:
    """What an electric cooker holds on its settings, and how hot that is here."""
    request = case.request
    if (
        ELECTRIC not in request.equipment
        or request.gauge_pa is not None
        or request.dish
        or request.asked_way in OF_TIME
    ):
        return None
    low_pa, high_pa = (psi / PSI_PER_PA for psi in ELECTRIC_HIGH_PSI)
    return Part(
        headline=say(
            "electric",
            low=gauge(low_pa),
            high=gauge(high_pa),
            place=case.place,
            inside=temp_span(inside_c(case.here, low_pa), inside_c(case.here, high_pa)),
            there=temp_span(inside_c(case.there, low_pa), inside_c(case.there, high_pa)),
            baseline=case.baseline,
        )
    )


@rule("pressure.equal", "iapws-r7-97", "us-std-atm-1976")
def equal(case: Case) -> Part:
    """What the gauge must read here for the heat of the same pot at the baseline."""
    asked = asked_pa(case)
    matches = [
        say("matches", needed=gauge(needed_pa(case, pa)), gauge=gauge(pa), baseline=case.baseline) for pa in asked
    ]
    return Part(
        figures=tuple(_gauge_figure(case, pa) for pa in asked),
        headline=_how_hot(case, asked[-1])
        if asks_how_hot(case)
        else say(
            "headline",
            place=case.place,
            first=matches[0],
            gauges="one" if len(matches) == 1 else "two",
            last=matches[-1],
        ),
        because=_equal_why(case),
        maths=say(
            "equal-maths",
            there=number(case.there.pressure_pa * PSI_PER_PA),
            here=number(case.here.pressure_pa * PSI_PER_PA),
        ),
    )


def asks_how_hot(case: Case) -> bool:
    """Whether it is the heat inside that is asked for, at a pressure of the cook's own or the usual one of a cooker."""
    return "how_hot" in case.request.forms


def _how_hot(case: Case, gauge_pa: float) -> Said:
    return say(
        "how-hot",
        gauge=gauge(gauge_pa),
        place=case.place,
        here=temp(inside_c(case.here, gauge_pa)),
        there=temp(inside_c(case.there, gauge_pa)),
        baseline=case.baseline,
    )


def _gauge_figure(case: Case, gauge_pa: float) -> Figure:
    psi = gauge_pa * PSI_PER_PA
    needed = round(needed_pa(case, gauge_pa) * PSI_PER_PA, 2)
    label = say("gauge-label", psi=number(psi, 1))
    return Figure(f"gauge_for_{_in_id(psi)}_psi", label, needed, "psi", sea_level=round(psi, 1))


def _in_id(psi: float) -> str:
    """A pressure as the id of a figure names it: 10, 12_5."""
    return f"{psi:.1f}".removesuffix(".0").replace(".", "_")


def _equal_why(case: Case) -> Said:
    if not case.moved:
        return say("presses-alike")
    lost_pa = case.there.pressure_pa - case.here.pressure_pa
    return say(
        "presses-less",
        place=case.place,
        lost=gauge(abs(lost_pa)),
        way="less" if lost_pa > 0 else "more",
        baseline=case.baseline,
    )


@rule("pressure.inside", "iapws-r7-97", "us-std-atm-1976")
def inside(case: Case) -> Part:
    """How hot it gets inside at these gauges, here and at sea level."""
    gauges = asked_pa(case)
    figures = tuple(
        celsius(
            f"inside_at_{_in_id(g * PSI_PER_PA)}_psi",
            say("inside-label", psi=number(g * PSI_PER_PA, 1)),
            inside_c(case.here, g),
            inside_c(case.sea, g),
        )
        for g in gauges
    )
    top = gauges[-1]
    here_c = inside_c(case.here, top)
    lower = inside_c(case.sea, top) - here_c
    way = "less" if lower > NOTICED_K else "same"
    return Part(
        figures=figures,
        because=say("inside", gauge=gauge(top), inside=temp(here_c), way=way, lower=temp_drop(lower)),
    )


@rule("pressure.published", "uwyo-altitude-adjusters", "anderson-1980-altitude")
def published(case: Case) -> Part | None:
    """The published rules: one psi more for each 2,000 ft, or more time where the gauge cannot go up."""
    feet = case.here.elevation_m * FT_PER_M
    if feet < 1000 or case.there.elevation_m:
        return None
    percent, more_psi = published_percent(case.here.elevation_m), feet / PUBLISHED_FT_PER_PSI
    return Part(
        figures=(Figure("published_psi", say("published-label"), round(more_psi, 1), "psi"),),
        because=say(
            "published",
            psi=number(more_psi, 1),
            longer="yes" if percent else "no",
            percent=number(percent),
        ),
    )


@rule("pressure.limit", "common-practice", "usda-aib-539")
def limit(case: Case) -> Part:
    """A cooker is never run above what it is made for, and canning has its own tables."""
    over = any(needed_pa(case, gauge) > STOVE_TOP_GAUGE_PA + 1000 for gauge in asked_pa(case))
    made_for = Caution("warn", say("made-for"), ("common-practice",))
    return Part(
        steps=(say("fixed-weight"),) if over else (),
        cautions=(*((made_for,) if over else ()), CANNING_CAUTION, PRESSURE_CAUTION),
    )


@rule("pressure.dish", "common-practice")
def dish_time(case: Case) -> Part | None:
    """How long the dish takes under pressure here, where one was named."""
    if not case.request.dish:
        return None
    timed = case.request.asked_way in OF_TIME
    return time_part(Case(replace(case.request, topic="time")) if timed else case, heats(case, gauge_pa(case)))


RULES = (more_time, electric, dish_time, equal, inside, boiling_point, published, limit)
