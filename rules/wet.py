"""Time in wet heat: what boil, simmer, poach, braise, stew and steam have in common.

The food is at the temperature of the liquid or steam, so the time follows the rate of softening at that temperature.
"""

from __future__ import annotations

from dataclasses import dataclass

from rules import dishes, kinetics
from rules.book import Part
from rules.case import Case
from rules.model import Caution, Figure
from rules.say import duration_span, number, round_time_min


@dataclass(frozen=True, slots=True)
class WetTime:
    """A time in wet heat [min] here and at the baseline, each with its range, and what the range is of."""

    base_low_min: float
    base_high_min: float
    low_min: float
    likely_min: float
    high_min: float
    factor: float
    base_source: str
    stated: bool
    note: str

    @property
    def base_mid_min(self) -> float:
        """Middle of the baseline range [min]."""
        return (self.base_low_min + self.base_high_min) / 2


def base_span(case: Case, method: str) -> tuple[float, float, str, bool, str] | None:
    """Baseline time [min]: the cook's own where one was given, else the table's; low, high, source, stated, note."""
    request = case.request
    if request.time_min is not None:
        return request.time_min, request.time_high_min or request.time_min, "common-practice", True, "the time you gave"
    span = dishes.sea_level_time(request.dish, case.dish_class, method)
    return (span.low_min, span.high_min, span.source, False, span.note) if span else None


def wet_time(case: Case, method: str, here_c: float, there_c: float, sea_c: float) -> WetTime | None:
    """Time at here_c from the time at the baseline [degC]. A table time is one for sea_c; a cook's own one for there_c.

    The range spans both the baseline range and the range of z: a stubborn piece (small z) at the top when climbing.
    """
    base = base_span(case, method)
    if base is None:
        return None
    low, high, source, stated, note = base
    soft = kinetics.softening(case.dish_class)
    if not stated and there_c != sea_c:
        scale = kinetics.rate_factor(there_c, sea_c, soft.z_k)
        low, high = low * scale, high * scale
    ends = [kinetics.rate_factor(here_c, there_c, z) for z in (soft.z_low_k, soft.z_high_k)]
    factor = kinetics.rate_factor(here_c, there_c, soft.z_k)
    likely = (low + high) / 2 * factor
    return WetTime(low, high, low * min(ends), likely, high * max(ends), factor, source, stated, note)


def time_part(case: Case, method: str, here_c: float, there_c: float, sea_c: float, heat: str) -> Part | None:
    """The time figure of a wet method with its reason. heat: what holds the food at its temperature ("the liquid")."""
    time = wet_time(case, method, here_c, there_c, sea_c)
    if time is None:
        return None
    soft = kinetics.softening(case.dish_class)
    figure = Figure(
        "cook_time",
        f"Time here, {time.note}" if time.note else "Time here",
        round_time_min(time.likely_min),
        "min",
        round_time_min(time.low_min),
        round_time_min(time.high_min),
        sea_level=round_time_min(time.base_mid_min) if not case.there.elevation_m else None,
    )
    base = Figure(
        "baseline_time",
        f"Time at {case.baseline}",
        round_time_min(time.base_mid_min),
        "min",
        round_time_min(time.base_low_min),
        round_time_min(time.base_high_min),
    )
    return Part(
        figures=(figure, base),
        because=_why(case, time, here_c, there_c, heat),
        maths=f"Factor = 10^(({number(there_c, 1)} − {number(here_c, 1)})/z) with z = {number(soft.z_k)} K "
        f"({number(soft.z_low_k)}–{number(soft.z_high_k)} K): ×{number(time.factor)}.",
        sources=tuple(dict.fromkeys((soft.source, time.base_source))),
    )


def _why(case: Case, time: WetTime, here_c: float, there_c: float, heat: str) -> str:
    base = duration_span(time.base_low_min, time.base_high_min)
    if abs(here_c - there_c) < 0.05:
        stands = f"{heat.capitalize()} stands at {case.say.temp(here_c)}"
        return f"{stands} here as at {case.baseline}, so the time stays at {base}."
    way = "cooler" if here_c < there_c else "hotter"
    slower = "more" if here_c < there_c else "less"
    percent = number(abs(time.factor - 1) * 100, 0)
    return (
        f"{heat.capitalize()} is {case.say.temp_drop(abs(there_c - here_c))} {way} than at {case.baseline}, "
        f"and softening takes about {percent} % {slower} time at that heat; the range covers the size of the piece "
        "and how stubborn it is."
    )


def threshold_caution(case: Case, here_c: float) -> Caution | None:
    """A food that practically does not soften at this temperature: say so, and offer the pressure cooker."""
    soft = kinetics.softening(case.dish_class)
    if soft.threshold_c is None or here_c >= soft.threshold_c:
        return None
    return Caution(
        "warn",
        f"Below {case.say.temp(soft.threshold_c)} {case.food} practically will not soften, however long it cooks. "
        "Use a pressure cooker.",
        (soft.source,),
    )
