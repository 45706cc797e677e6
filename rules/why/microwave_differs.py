"""The microwave oven heats water, and water stops at the boil."""

from rules.book import Case
from rules.why import Explanation
from rules.why._words import at, boiling_equation, boiling_figure, boils, by_side

TITLE = "Why the microwave behaves differently"
SOURCES = ("usda-fsis-high-altitude", "iapws-r7-97")


def explain(case: Case) -> Explanation:
    """The oven's power is the same; the food's own boil is not."""
    boil = case.say.temp(case.here.boiling_c)
    return Explanation(
        line=f"A microwave oven heats the water in the food, and {at(case)} that stops at {boil}"
        + by_side(
            case, above=", so food steams sooner and dries sooner.", level=", as the package expects.", below="."
        ),
        paragraph=(
            "The oven gives the same power at any height. It warms the water in the food, and wet food cannot pass "
            f"the boil. {boils(case)} "
            + by_side(
                case,
                above="So cups and soups boil over sooner and food dries sooner: start just under the shortest time "
                "on the package. Meat, poultry, pasta and rice are the other way about: they have to cook at that "
                "cooler boil, so take the longest time given. ",
                level="So the times on the package hold. Higher up, quick things dry sooner and pasta, rice and "
                "meat take longer. ",
                below="So the times on the package hold. ",
            )
            + "Cover the food, stir it, let it stand two minutes, and check meat in several places."
        ),
        equations=(boiling_equation(case),),
        figures=(boiling_figure(case),),
    )
