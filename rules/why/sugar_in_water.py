"""Sugar raises the boil, and strongly once there is little water."""

from rules.book import Case
from rules.model import Figure
from rules.physics import water
from rules.why import Explanation
from rules.why._words import at, boiling_equation, boiling_figure, boils, by_side, small_drop

TITLE = "Why syrup boils hotter than water"
SOURCES = ("browne-1912-sucrose", "iapws-r7-97")
LIGHT_PERCENT, HEAVY_PERCENT = 20.0, 80.0


def explain(case: Case) -> Explanation:
    """Sugar in the way of the water keeps it from leaving until it is hotter."""
    light_k, heavy_k = (water.sucrose_elevation_k(percent) for percent in (LIGHT_PERCENT, HEAVY_PERCENT))
    heavy_c = case.here.boiling_c + heavy_k
    return Explanation(
        line=f"Syrup boils hotter than water because sugar holds the water back: at {HEAVY_PERCENT:.0f} % sugar it "
        f"boils at {case.say.temp(heavy_c)} {at(case)}.",
        paragraph=(
            "Sugar takes the place of water at the surface, so the syrup must get hotter before it boils. "
            f"{boils(case)} A light syrup, {LIGHT_PERCENT:.0f} % sugar, adds only {small_drop(case, light_k)}; at "
            f"{HEAVY_PERCENT:.0f} % it is {case.say.temp_drop(heavy_k)}. That distance above water is the same at "
            "every elevation, which is why a candy thermometer can tell how much water is left. "
            + by_side(
                case,
                above="High up you count it from the cooler boil. ",
                level="Higher up you count it from the cooler boil. ",
                below="Below sea level you count it from the hotter boil. ",
            )
            + "A spoon of sugar in the pasta water does nothing you could measure."
        ),
        equations=(
            boiling_equation(case),
            f"Syrup of {HEAVY_PERCENT:.0f} %: {case.here.boiling_c:.2f} + {heavy_k:.1f} = {heavy_c:.1f} °C.",
        ),
        figures=(
            boiling_figure(case),
            Figure(
                "syrup_boils",
                f"Syrup of {HEAVY_PERCENT:.0f} % sugar boils at",
                round(heavy_c, 1),
                "degC",
                sea_level=round(case.sea.boiling_c + heavy_k, 1),
            ),
        ),
    )
