"""More water in the pot for a longer simmer."""

from rules.book import Case
from rules.model import Figure
from rules.physics import evaporation
from rules.why import Explanation
from rules.why._words import at, by_side, capital

TITLE = "Why a pot needs more water up high"
SOURCES = ("ashrae-applications", "computed")
POT_AREA_M2 = 0.06


def explain(case: Case) -> Explanation:
    """The pot loses about as much each hour as anywhere, but simmers for more hours."""
    here_ml, sea_ml = (
        60 * evaporation.evaporation_rate_ml_min(POT_AREA_M2, covered=False, elevation_m=e)
        for e in (case.here.elevation_m, 0.0)
    )
    return Explanation(
        line=by_side(
            case,
            above=f"A pot needs more water {at(case)} mostly because it has to simmer longer, not because it boils "
            "harder.",
            level=f"A pot needs the recipe's water {at(case)}; higher up it needs more, because it has to simmer "
            "longer.",
            below=f"A pot needs no extra water {at(case)}: it simmers no longer than at sea level.",
        ),
        paragraph=(
            "At a bare simmer two things cancel. Vapour spreads faster through thin air, but the cooler liquid gives "
            f"off less of it. {capital(at(case))} an open pot 11 in (28 cm) across loses about "
            f"{case.say.volume(here_ml)} an hour, and at sea level {case.say.volume(sea_ml)}. "
            + by_side(
                case,
                above="Water boils cooler there, so the food takes longer, and the longer simmer is where the water "
                "goes. ",
                level="So the recipe's time and water hold. ",
                below="So the food takes a little less time and the recipe's water is enough. ",
            )
            + "At a rolling boil the burner alone decides, so turn it down and cover the pot."
        ),
        equations=(
            f"Carrier: rate = {evaporation.CARRIER_W_PER_M2_PA}·p_steam/r·(p_sea/p_here); on {POT_AREA_M2} m² "
            f"{here_ml:.0f} ml an hour here, {sea_ml:.0f} ml at sea level.",
        ),
        figures=(Figure("open_loss", "Lost in an hour, open", round(here_ml), "ml", sea_level=round(sea_ml)),),
    )
