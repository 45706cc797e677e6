"""Figures of pressure cookers: the gauges they run at, and how hot it is inside. Every room takes them from here."""

from __future__ import annotations

from rules.book import Case
from rules.errors import within
from rules.heat.wet import Heats
from rules.model import Caution
from rules.physics import water
from rules.physics.ambient import Ambient
from rules.physics.units import FT_PER_M, PSI_PER_PA
from rules.said import Said, sentences
from rules.tables import read_toml

STOVE_TOP_GAUGE_PA = 15 / PSI_PER_PA
# the low setting: 8 psi on a stove-top cooker, 5 to 7 psi on an electric one
LOW_SETTING_GAUGE_PA = 7 / PSI_PER_PA
PUBLISHED_FROM_KFT = 2
HIGHEST_GAUGE_PA = 30 / PSI_PER_PA
COOKERS = ("stovetop_pressure_cooker", "electric_pressure_cooker", "commercial_pressure_steamer")
say = sentences("heat/pressure")
CANNING_CAUTION = Caution("warn", say("canning"), ("usda-aib-539",))
PRESSURE_CAUTION = Caution("warn", say("caution"), ("common-practice",))


def inside_c(air: Ambient, gauge_pa: float) -> float:
    """Temperature of saturated steam in a cooker [degC]: gauge [Pa] plus the air outside.

    raises: OutOfRange where no saturated steam exists
    source: iapws-r7-97

    >>> from rules.physics.ambient import ambient
    >>> round(inside_c(ambient(0), 15 / PSI_PER_PA), 1)
    120.9
    """
    return water.saturation_temp_c(air.pressure_pa + gauge_pa)


def gauge_pa(case: Case) -> float:
    """The gauge pressure to reckon with [Pa]: the cook's setting, else their own cooker's, else a stove-top's 15 psi.

    raises: OutOfRange for a gauge below zero or above 30 psi
    """
    return cooker(case)[1] if case.request.gauge_pa is None else plausible_pa(case.request.gauge_pa)


def plausible_pa(gauge_pa: float) -> float:
    """A gauge pressure [Pa] that a cook gave, if a cooker can have it.

    raises: OutOfRange for a gauge below zero or above 30 psi
    """
    return within("gauge pressure", gauge_pa, 0, HIGHEST_GAUGE_PA, "Pa", "Domestic cookers run at 5 to 15 psi.")


def cooker(case: Case) -> tuple[Said, float]:
    """The pressure cooker to speak of and its gauge [Pa]: the cook's own at its highest mark, else a stove-top one."""
    if case.request.equipment:
        for row in read_toml("lexicon/equipment.toml")["equipment"]:
            if row["id"] in case.request.equipment and row["id"] in COOKERS:
                return say("your-cooker", cooker=row["label"]), row["gauge_psi"][-1] / PSI_PER_PA
    return say("stove-top-cooker"), STOVE_TOP_GAUGE_PA


def heats(case: Case, gauge: float) -> Heats:
    """Temperatures inside at this gauge pressure [Pa]; the table's times hold for 15 psi at sea level."""
    here_c, there_c = inside_c(case.here, gauge), inside_c(case.there, gauge)
    published = published_factor(case.here.elevation_m, case.there.elevation_m)
    return Heats("pressure_cook", "steam_inside", here_c, there_c, inside_c(case.sea, STOVE_TOP_GAUGE_PA), published)


def published_factor(elevation_m: float, from_elevation_m: float = 0.0) -> float:
    """Time under pressure at one elevation over that at another: 5 % more for each 1,000 ft above 2,000 ft, smoothly.

    source: anderson-1980-altitude

    >>> round(published_factor(2133.6), 3), published_factor(609.6), round(published_factor(0, 2133.6), 3)
    (1.25, 1.0, 0.8)
    """
    here, there = (
        1 + 0.05 * max(0.0, m * FT_PER_M / 1000 - PUBLISHED_FROM_KFT) for m in (elevation_m, from_elevation_m)
    )
    return here / there


def published_percent(elevation_m: float) -> int:
    """What the published rule adds to the time under pressure [%]: 5 for each whole 1,000 ft above 2,000 ft.

    source: anderson-1980-altitude

    >>> published_percent(1524), published_percent(600)
    (15, 0)
    """
    return 5 * max(0, int(elevation_m * FT_PER_M / 1000 + 1e-6) - 2)
