"""The pace of boiling water away: the burner sets it, and not the air."""

from __future__ import annotations

from rules.book import Case, Part
from rules.foods import dishes
from rules.heat.cook_times import no_time, stated_span, time_figures
from rules.heat.headline import takes
from rules.physics import water
from rules.physics.ambient import Ambient
from rules.physics.units import FT_PER_M
from rules.said import Said, number, sentences

DERATE_PER_1000_FT = 0.04
DERATE_ABOVE_FT = 2000
ML_PER_KJ_S = 1000 * 60
say = sentences("heat/burner")


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


def boiled_down(case: Case, method: str) -> Part:
    """How long water takes to boil off: as at the baseline on an electric burner, longer on gas, which has less air.

    raises: OutOfRange for a time that no kitchen has
    """
    row = dishes.sea_level_time(case.request.dish, case.dish_class, method)
    stated = stated_span(case)
    electric, gas = _slowdowns(case.here, case.there)
    if stated is None and row is None:
        low, high = sorted((electric, gas))
        return no_time(case, (low, (low + high) / 2, high), _why(case, electric, gas))
    electric_there, gas_there = _slowdowns(case.there, case.sea)
    low, high = stated or ((row.low_min * electric_there, row.high_min * gas_there) if row else (0.0, 0.0))
    here = low * min(electric, gas), (low + high) / 2 * (electric + gas) / 2, high * max(electric, gas)
    figures = time_figures(case, (low, high), here)
    return Part(
        figures=figures,
        headline=takes(case, method, figures) if case.request.topic == "time" else "",
        because=_why(case, electric, gas),
        sources=("crc-handbook", "nfpa-54"),
    )


def _slowdowns(here: Ambient, there: Ambient) -> tuple[float, float]:
    """Time here over time there, on an electric and on a gas burner."""
    electric = boil_off_ml_min_kw(there) / boil_off_ml_min_kw(here)
    return electric, electric * gas_share(there.elevation_m) / gas_share(here.elevation_m)


def _why(case: Case, electric: float, gas: float) -> Said:
    if not case.moved:
        return say("same-pace", baseline=case.baseline)
    return say(
        "pace",
        heat=number(abs(electric - 1) * 100, 1),
        heat_way="more" if electric >= 1 else "less",
        baseline=case.baseline,
        time=number(abs(gas - 1) * 100, 0),
        time_way="more" if gas >= 1 else "less",
    )
