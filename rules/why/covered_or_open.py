"""When to cover and when to leave open."""

from rules.book import Case
from rules.model import Figure
from rules.physics import evaporation, water
from rules.why import Explanation
from rules.why._words import at, by_side, capital, simmer_figure

TITLE = "When to cover a pot and when to leave it open"
SOURCES = ("ashrae-applications", "crc-handbook", "common-practice")
POT_AREA_M2 = 0.06


def explain(case: Case) -> Explanation:
    """Cover to keep liquid and save heat, open to reduce and to stay gentle."""
    simmer_c = case.here.boiling_c - evaporation.BELOW_BOIL_K
    open_ml = 60 * evaporation.evaporation_rate_ml_min(POT_AREA_M2, covered=False, elevation_m=case.here.elevation_m)
    heat_w = open_ml / 3600 * water.latent_heat_kj_per_kg(simmer_c)
    return Explanation(
        line="Cover a pot to keep its liquid and save heat; leave it open to thicken it or to keep it from boiling "
        "over.",
        paragraph=(
            f"An open pot cools itself, because every drop that leaves takes heat with it. {capital(at(case))} an "
            f"open pot 11 in (28 cm) across loses about {case.say.volume(open_ml)} in an hour of bare simmering at "
            f"{case.say.temp(simmer_c)}. Covered, it loses about a tenth of that. "
            + by_side(
                case,
                above="Simmering runs longer high up, so cover whatever has to keep its liquid: beans, rice, braises. ",
                level="Cover whatever has to keep its liquid: beans, rice, braises. ",
                below="Cover whatever has to keep its liquid: beans, rice, braises. ",
            )
            + "Leave it open for a stock that must not boil, and for a sauce you want thicker."
        ),
        equations=(
            f"{open_ml:.0f} ml an hour × {water.latent_heat_kj_per_kg(simmer_c):,.0f} kJ/kg / 3600 = {heat_w:.0f} W "
            f"to hold the open pot at {simmer_c:.1f} °C, before what its walls lose.",
        ),
        figures=(simmer_figure(case), Figure("open_loss", "Lost in an hour, open", round(open_ml), "ml")),
    )
