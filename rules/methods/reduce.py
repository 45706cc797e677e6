"""Reduce: boiling water away from an open pan. The burner sets the pace, and the volume is the measure."""

from __future__ import annotations

from rules import dishes, water
from rules.boiling import boiling_point
from rules.book import Part, rule
from rules.case import Ambient, Case
from rules.model import Caution, Figure
from rules.say import FT_PER_M, number, round_to
from rules.wet import stated_span, time_figures

DERATE_PER_1000_FT = 0.04
DERATE_ABOVE_FT = 2000
ML_PER_KJ_S = 1000 * 60


def gas_share(elevation_m: float) -> float:
    """Share of its sea-level heat that a gas burner keeps: 4 % less for each 1,000 ft, above 2,000 ft.

    source: nfpa-54

    >>> round(gas_share(2133.6), 2), gas_share(500)
    (0.72, 1.0)
    """
    feet = elevation_m * FT_PER_M
    return 1 - DERATE_PER_1000_FT * feet / 1000 if feet > DERATE_ABOVE_FT else 1.0


def boil_off_ml_min_kw(air: Ambient) -> float:
    """Water that a kilowatt reaching the pan boils off [ml/min].

    source: crc-handbook
    """
    return ML_PER_KJ_S / water.latent_heat_kj_per_kg(air.boiling_c)


@rule("reduce.pan", "common-practice")
def pan(case: Case) -> Part:
    """The pan and the mark to stop at."""
    return Part(
        steps=(
            "Use the widest pan you have, uncovered, over the strongest heat the liquid stands.",
            "Go by volume, not by the clock: stand a spoon handle in the pan, mark the level, and stop at the mark "
            "you want.",
        ),
    )


@rule("reduce.time", "crc-handbook", "nfpa-54")
def time(case: Case) -> Part | None:
    """How long it takes: as at the baseline on an electric burner, longer on gas, which has less air to burn."""
    row = dishes.sea_level_time(case.request.dish, case.dish_class, "reduce")
    stated = stated_span(case)
    if stated is None and row is None:
        return _no_time(case)
    electric_there, gas_there = _slowdowns(case.there, case.sea)
    low, high = stated or ((row.low_min * electric_there, row.high_min * gas_there) if row else (0.0, 0.0))
    electric, gas = _slowdowns(case.here, case.there)
    here = low * min(electric, gas), (low + high) / 2 * (electric + gas) / 2, high * max(electric, gas)
    return Part(figures=time_figures(case, (low, high), here), because=_why(case, electric, gas))


def _no_time(case: Case) -> Part:
    electric, gas = _slowdowns(case.here, case.there)
    ends = sorted((electric, gas))
    mid, low, high = (round_to(f, 0.01) for f in (sum(ends) / 2, *ends))
    return Part(
        figures=(Figure("time_factor", f"Time against {case.baseline}", mid, "factor", low, high),),
        because=f"No tested time is known for this. {_why(case, electric, gas)}",
    )


def _slowdowns(here: Ambient, there: Ambient) -> tuple[float, float]:
    """Time here over time there, on an electric and on a gas burner."""
    electric = boil_off_ml_min_kw(there) / boil_off_ml_min_kw(here)
    return electric, electric * gas_share(there.elevation_m) / gas_share(here.elevation_m)


def _why(case: Case, electric: float, gas: float) -> str:
    change = number(abs(electric - 1) * 100, 1)
    return (
        f"The burner sets the pace of a hard boil, not the air: boiling off a litre takes {change} % "
        f"{'more' if electric >= 1 else 'less'} heat than at {case.baseline}, so an electric burner takes the same "
        f"time. A gas burner gives less heat in thin air and takes up to {number(abs(gas - 1) * 100, 0)} % "
        f"{'more' if gas >= 1 else 'less'} time. The range covers both, and how far you take it."
        if case.moved
        else f"The burner sets the pace and water boils as at {case.baseline}, so the time stays."
    )


@rule("reduce.rate", "crc-handbook")
def rate(case: Case) -> Part:
    """How fast a kilowatt boils water off here."""
    here, sea = boil_off_ml_min_kw(case.here), boil_off_ml_min_kw(case.sea)
    latent = water.latent_heat_kj_per_kg(case.here.boiling_c)
    return Part(
        figures=(
            Figure("boil_off_rate", "Boiled off each minute by 1 kW", round(here, 1), "ml", sea_level=round(sea, 1)),
        ),
        because=f"The liquid is {case.say.temp(case.here.boiling_c)} while it reduces. It starts to boil sooner and "
        "browns less, but what is left when half is gone is the same half: concentration does not know the elevation.",
        maths=f"L({number(case.here.boiling_c, 1)} °C) = {number(latent, 0)} kJ/kg; 60/L = {number(here, 1)} ml/min "
        "for 1 kW.",
    )


@rule("reduce.scorch", "common-practice")
def scorch(case: Case) -> Part:
    """A reduction burns at the end."""
    text = "Turn the heat down for the last third and stir: a thick reduction scorches long before it looks dry."
    return Part(cautions=(Caution("note", text, ("common-practice",)),))


NEEDS = ("elevation",)
RULES = (boiling_point, pan, time, rate, scorch)
