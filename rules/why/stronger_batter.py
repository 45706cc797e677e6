"""More flour or egg for a crumb that holds."""

from rules.book import Case
from rules.why import Explanation
from rules.why._words import at, by_side, gas_equation, gas_figure, gas_swells

TITLE = "Why a little more flour or egg"
SOURCES = ("csu-cakes-2002", "csu-high-altitude-food-prep", "common-practice", "us-std-atm-1976")


def explain(case: Case) -> Explanation:
    """Starch and protein are the walls of the bubbles."""
    return Explanation(
        line=by_side(
            case,
            above=f"Flour and egg are the walls of the bubbles, and {at(case)} the gas pulls harder on them.",
            level=f"The recipe's flour and eggs are right {at(case)}; higher up the gas pulls harder on the walls "
            "they make.",
            below=f"The recipe's flour and eggs are right {at(case)}; only above sea level do the walls need "
            "strengthening.",
        ),
        paragraph=(
            f"A crumb is gas held in walls of starch and protein. {gas_swells(case)} "
            + by_side(
                case,
                above="The walls stretch further and earlier, so they need to be stronger. A spoon or two more "
                "flour thickens them, and an extra-large egg for a large one adds protein and liquid together. ",
                level="The walls hold as written. Higher up a spoon or two more flour, or a larger egg, makes them "
                "stronger. ",
                below="The walls hold as written. ",
            )
            + "Fat and sugar do the opposite, which is why rich cakes give the most trouble. Too much flour makes a "
            "dry, tough crumb, so go by the spoon."
        ),
        equations=(gas_equation(case),),
        figures=(gas_figure(case),),
    )
