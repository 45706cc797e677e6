"""Cookies spread before they set."""

from rules.book import Case
from rules.why import Explanation
from rules.why._words import at, by_side, gas_equation, gas_figure, gas_swells

TITLE = "Why cookies spread"
SOURCES = ("csu-high-altitude-food-prep", "common-practice", "us-std-atm-1976")


def explain(case: Case) -> Explanation:
    """Melted fat, dissolved sugar and eager gas outrun the setting."""
    return Explanation(
        line=by_side(
            case,
            above=f"Cookies spread {at(case)} because the gas pushes them out before flour and egg have set.",
            level=f"Cookies that spread {at(case)} are too warm, too sweet, too fat or short of flour.",
            below=f"Cookies that spread {at(case)} are too warm, too sweet, too fat or short of flour; the elevation "
            "is not to blame.",
        ),
        paragraph=(
            "In the oven the fat melts and the sugar turns to syrup, and the cookie flows until flour and egg set. "
            f"{gas_swells(case)} "
            + by_side(
                case,
                above="So it is lifted and pushed out sooner, then sinks flat. Take away a little sugar, fat and "
                "soda, and add a spoon or two of flour. ",
                level="So if it runs, chill the dough and measure sugar, fat and flour again. ",
                below="So if it runs, chill the dough and measure sugar, fat and flour again. ",
            )
            + "A slightly hotter oven sets the edge sooner. Many cookie recipes need no change at all, so bake a "
            "test tray first."
        ),
        equations=(gas_equation(case),),
        figures=(gas_figure(case),),
    )
