"""Roasting: dry heat, and a finish far below the boil."""

from rules.book import Case
from rules.physics import air
from rules.physics.units import to_c
from rules.say import number
from rules.why import Explanation
from rules.why._words import at, boiling_figure, boils, by_side, density_figure

TITLE = "Why roasts hardly change"
SOURCES = ("csu-high-altitude-food-prep", "usda-fsis-high-altitude", "us-std-atm-1976")
OVEN_C, MEDIUM_C = to_c(325), to_c(145)


def explain(case: Case) -> Explanation:
    """The oven is as hot as you set it, and a roast is done far below the boil."""
    say = case.say
    density = air.density_ratio(case.here.elevation_m)
    return Explanation(
        line=f"A roast hardly changes {at(case)} because the oven is as hot as you set it and the meat is done far "
        "below the boil.",
        paragraph=(
            f"An oven at {say.oven(OVEN_C)} is that hot at any height, and a roast is done at {say.temp(MEDIUM_C)} or "
            f"so in the middle. {boils(case)} That sets a limit only to the wet surface, until it dries and browns. "
            + by_side(
                case,
                above=f"The air has {number(density * 100, 0)} % of its sea-level weight, so it carries a little "
                "less heat and dries the outside sooner; some guidance allows up to a quarter more time. ",
                level="So the recipe's time holds. ",
                below="So the recipe's time holds. ",
            )
            + "Keep the oven where it is, put in a thermometer, and take the roast out by the temperature of its "
            "middle."
        ),
        equations=(f"Air density = {density:.3f} of sea level.",),
        figures=(
            boiling_figure(case),
            density_figure(case),
        ),
    )
