"""The lid: it holds liquid and heat, not pressure."""

from rules.book import Case
from rules.model import Figure
from rules.physics import evaporation, water
from rules.why import Explanation
from rules.why._words import boiling_equation, boiling_figure, boils, by_side

TITLE = "Why the lid matters"
SOURCES = ("iapws-r7-97", "ashrae-applications", "common-practice")
POT_AREA_M2, LID_KG, GRAVITY = 0.06, 1.0, 9.80665


def explain(case: Case) -> Explanation:
    """A lid keeps liquid and heat in; it does not make the boil hotter."""
    open_ml, covered_ml = (
        60 * evaporation.evaporation_rate_ml_min(POT_AREA_M2, covered=lid, elevation_m=case.here.elevation_m)
        for lid in (False, True)
    )
    extra_pa = LID_KG * GRAVITY / POT_AREA_M2
    extra_k = water.saturation_temp_c(case.here.pressure_pa + extra_pa) - case.here.boiling_c
    return Explanation(
        line="A lid does not make the boil hotter; it keeps the liquid and the heat in the pot"
        + by_side(case, above=", and high up the pot is on the fire longer.", level=".", below="."),
        paragraph=(
            f"Steam slips out under a loose lid, so the pressure inside is the air's own. {boils(case)} With the lid "
            "on it boils at the same temperature. What the lid does is hold back water: at a bare simmer a wide pot, "
            f"11 in (28 cm) across, loses about {case.say.volume(open_ml)} an hour open and "
            f"{case.say.volume(covered_ml)} covered. Water that leaves takes heat with it, so a covered pot comes to "
            "the boil sooner and holds it on a small flame. It also steams what sticks out of the liquid."
        ),
        equations=(
            boiling_equation(case),
            f"A lid of {LID_KG:.0f} kg on {POT_AREA_M2} m² adds {extra_pa:.0f} Pa at most, which is {extra_k:.2f} °C "
            "of boiling point.",
        ),
        figures=(
            boiling_figure(case),
            Figure("open_loss", "Lost in an hour, open", round(open_ml), "ml"),
            Figure("covered_loss", "Lost in an hour, covered", round(covered_ml), "ml"),
        ),
    )
