"""Steam-raised doughs."""

from rules.book import Case
from rules.why import Explanation
from rules.why._words import at, by_side, gas_equation, gas_figure, gas_swells

TITLE = "Why choux and popovers burst or collapse"
SOURCES = ("from-memory", "us-std-atm-1976", "iapws-r7-97")


def explain(case: Case) -> Explanation:
    """Steam lifts them sooner and harder, so the shell must be stronger."""
    return Explanation(
        line=by_side(
            case,
            above=f"Choux and popovers are raised by steam, and {at(case)} it comes sooner and swells more, so the "
            "shell tears before it sets.",
            level=f"Choux and popovers that collapse {at(case)} came out before the shell was dry; higher up steam "
            "also lifts them too soon.",
            below=f"Choux and popovers that collapse {at(case)} came out before the shell was dry.",
        ),
        paragraph=(
            "There is no powder in them: water turns to steam and blows them up, and egg and flour set the shell. "
            f"{gas_swells(case)} "
            + by_side(
                case,
                above="So they rise early, tear, and fall. A little more flour and egg and a little less fat make a "
                "stronger shell. ",
                level="So the recipe stands as written. ",
                below="So the recipe stands as written. ",
            )
            + "Start hot, do not open the door, and dry them well before they come out. Prick each one to let the "
            "steam go."
        ),
        equations=(gas_equation(case),),
        figures=(gas_figure(case),),
    )
