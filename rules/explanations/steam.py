"""Steam: the heat it takes, what a burner drives off, what a lid holds back, and what it does to skin."""

from __future__ import annotations

from rules.book import Case
from rules.explanations.liquid import POT_AREA_M2, open_ml, simmer_c
from rules.explanations.named import Figures, Quantity, Values, always, at_sea, digits, figure, grouped, here, tenths
from rules.model import Figure
from rules.physics import water
from rules.physics.ambient import Ambient
from rules.said import temp, temp_drop

LID_KG, GRAVITY = 1.0, 9.80665
LID_PA = LID_KG * GRAVITY / POT_AREA_M2
TAP_C = 15.0
SKIN_C, SCALD_C = 35.0, 60.0
WATER_KJ_PER_KG_K = 4.2


def heat_of_boil(ambient: Ambient) -> float:
    """What it takes to boil water away [kJ/kg]."""
    return water.latent_heat_kj_per_kg(ambient.boiling_c)


def heat_of_simmer(ambient: Ambient) -> float:
    """What it takes to drive water off at a bare simmer [kJ/kg]."""
    return water.latent_heat_kj_per_kg(simmer_c(ambient))


def open_pot_w(ambient: Ambient) -> float:
    """What an open pot at a bare simmer loses with its steam [W]."""
    return open_ml(ambient) / 3600 * heat_of_simmer(ambient)


def boiled_off_kg(burner_kw: float) -> Quantity:
    """What a burner [kW] boils away in an hour [kg]."""
    return lambda ambient: burner_kw * 3600 / heat_of_boil(ambient)


def apart_percent(case: Case) -> float:
    """How far the heat of boiling is from that of sea level [%]."""
    return abs(heat_of_boil(case.here) / heat_of_boil(case.sea) - 1) * 100


def lid_k(ambient: Ambient) -> float:
    """What the weight of a lid adds to the boil at most [K]."""
    return water.saturation_temp_c(ambient.pressure_pa + LID_PA) - ambient.boiling_c


def to_boil(case: Case) -> float:
    """The heat that brings tap water to the boil, as a share of sea level [-]."""
    return (case.here.boiling_c - TAP_C) / (case.sea.boiling_c - TAP_C)


def over_skin_k(ambient: Ambient) -> float:
    """How far the boil is over skin [K]."""
    return ambient.boiling_c - SKIN_C


def cooling(ambient: Ambient) -> float:
    """What boiling water gives up as it cools to the skin [kJ/kg]."""
    return WATER_KJ_PER_KG_K * over_skin_k(ambient)


def against_water(ambient: Ambient) -> float:
    """What steam gives up as it turns to water and cools, as a multiple of what the water alone gives [-]."""
    return 1 + heat_of_boil(ambient) / cooling(ambient)


def heat_to_boil(case: Case) -> Figure:
    """The heat to the boil beside that of sea level."""
    return Figure("heat_to_boil", "", round(to_boil(case), 3), "factor", sea_level=1.0)


VALUES: Values = {
    "heat_of_boil": here(grouped, heat_of_boil),
    "heat_of_boil_at_sea": at_sea(grouped, heat_of_boil),
    "heat_of_boil_apart": lambda case: tenths(apart_percent(case)),
    "heat_of_simmer": here(grouped, heat_of_simmer),
    "open_pot_heat": here(digits(0), open_pot_w),
    "boiled_off_by_2_kw": here(digits(1), boiled_off_kg(2.0)),
    "boiled_off_by_1500_w": here(digits(2), boiled_off_kg(1.5)),
    "boiled_off_by_1500_w_at_sea": at_sea(digits(2), boiled_off_kg(1.5)),
    "lid_adds": here(digits(2), lid_k),
    "lid_adds_pressure": always(digits(0)(LID_PA)),
    "heat_to_boil": lambda case: digits(3)(to_boil(case)),
    "heat_to_boil_less": lambda case: grouped((1 - to_boil(case)) * 100),
    "skin_scalds": always(temp(SCALD_C)),
    "steam_over_scald": here(temp_drop, lambda ambient: ambient.boiling_c - SCALD_C),
    "boil_over_skin": here(digits(0), over_skin_k),
    "heat_of_cooling": here(digits(0), cooling),
    "steam_against_water": here(digits(0), against_water),
}
FIGURES: Figures = {
    "boil_away": figure("boil_away", "kg", boiled_off_kg(1.5)),
    "heat_to_boil": heat_to_boil,
    "steam_heat": figure("steam_heat", "factor", against_water, 1, beside_sea_level=False),
}
