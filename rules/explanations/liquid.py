"""The liquid in the pot: how hot it simmers, how much of it leaves, and what is dissolved in it."""

from __future__ import annotations

from rules.book import Case
from rules.explanations.boil import drop_k
from rules.explanations.named import FigureOf, Figures, Values, always, at_sea, figure, here
from rules.model import Figure
from rules.physics import evaporation, water
from rules.physics.ambient import Ambient
from rules.physics.units import round_to
from rules.said import Measure, fine_drop, number, temp, volume

POT_AREA_M2 = 0.06
WINE_MASS_FRACTION = 0.10
BATH_LOSS_K, STARCH_C = 3.0, 95.0
SIMMER_UNDER_K, BARE_UNDER_K = (1.0, 3.0), (3.0, 8.0)
PASTA_SALT_G_PER_KG, SEA_G_PER_KG = 10.0, 35.0
# the ideal law holds up to here
STRONGEST_G_PER_KG = 200.0


def simmer_c(ambient: Ambient) -> float:
    """Where the liquid of a bare simmer stands [degC]."""
    return ambient.boiling_c - evaporation.BELOW_BOIL_K


def double_boiler_c(ambient: Ambient) -> float:
    """Where what stands over boiling water ends [degC]."""
    return ambient.boiling_c - BATH_LOSS_K


def simmers_c(ambient: Ambient) -> float:
    """The middle of a simmer [degC]."""
    return ambient.boiling_c - sum(SIMMER_UNDER_K) / 2


def shivers_c(ambient: Ambient) -> float:
    """The middle of a bare simmer, where a bubble rises now and then [degC]."""
    return ambient.boiling_c - sum(BARE_UNDER_K) / 2


def under_boil(figure_id: str, under_k: tuple[float, float]) -> FigureOf:
    """A band that is told by how far under the boil it lies."""

    def band(case: Case) -> Figure:
        ends = (case.here.boiling_c - under for under in reversed(under_k))
        low, high = (round(end, 2) for end in ends)
        return Figure(figure_id, "", round((low + high) / 2, 2), "degC", low, high)

    return band


def open_ml(ambient: Ambient) -> float:
    """What a wide pot loses in an hour of bare simmering, open [ml]."""
    return 60 * evaporation.evaporation_rate_ml_min(POT_AREA_M2, covered=False, elevation_m=ambient.elevation_m)


def covered_ml(ambient: Ambient) -> float:
    """What it loses with the lid on [ml]."""
    return 60 * evaporation.evaporation_rate_ml_min(POT_AREA_M2, covered=True, elevation_m=ambient.elevation_m)


def wine_c(ambient: Ambient) -> float:
    """Where wine starts to boil [degC]."""
    return water.ethanol_boiling_c(WINE_MASS_FRACTION, ambient.pressure_pa)


def alcohol_c(ambient: Ambient) -> float:
    """Where pure alcohol boils [degC]."""
    return water.ethanol_boiling_c(1.0, ambient.pressure_pa)


def salt_raises_k(ambient: Ambient) -> float:
    """What the salt of pasta water adds to the boil [K]."""
    return water.salt_elevation_k(PASTA_SALT_G_PER_KG)


def salt_wanted_g(case: Case) -> float:
    """The salt in a litre that would bring back the boil of sea level [g]."""
    return max(0.0, drop_k(case) / water.salt_elevation_k(1.0))


def salt_wanted(case: Case) -> Measure:
    """The same, as one would weigh it."""
    return number(round_to(salt_wanted_g(case), 5))


def brine(case: Case) -> str:
    """What that would be: `some` salt, `sea` for saltier than the sea, `brine` for more than the law can tell."""
    wanted_g = salt_wanted_g(case)
    return "brine" if wanted_g > STRONGEST_G_PER_KG else "sea" if wanted_g > SEA_G_PER_KG else "some"


VALUES: Values = {
    "simmer": here(temp, simmer_c),
    "simmers": here(temp, simmers_c),
    "shivers": here(temp, shivers_c),
    "double_boiler": here(temp, double_boiler_c),
    "starch_thickens": always(temp(STARCH_C)),
    "open_loss": here(volume, open_ml),
    "open_loss_at_sea": at_sea(volume, open_ml),
    "covered_loss": here(volume, covered_ml),
    "wine_boils": here(temp, wine_c),
    "alcohol_boils": here(temp, alcohol_c),
    "salt_raises": here(fine_drop, salt_raises_k),
    "salt_wanted": salt_wanted,
    "brine": brine,
}
FIGURES: Figures = {
    "simmers": under_boil("simmer", SIMMER_UNDER_K),
    "shivers": under_boil("bare_simmer", BARE_UNDER_K),
    "double_boiler": figure("double_boiler", "degC", double_boiler_c),
    "liquid_temperature": figure("liquid_temperature", "degC", simmer_c),
    "open_loss": figure("open_loss", "ml", open_ml, None, beside_sea_level=False),
    "open_loss_beside_sea_level": figure("open_loss", "ml", open_ml, None),
    "covered_loss": figure("covered_loss", "ml", covered_ml, None, beside_sea_level=False),
    "wine_boils": figure("wine_boils", "degC", wine_c),
    "salt_raises": figure("salt_raises", "K", salt_raises_k, 3, beside_sea_level=False),
}
