"""Stock: gelatin from bones and skin, drawn just under the boil."""

from rules.book import Case
from rules.physics.evaporation import BELOW_BOIL_K
from rules.why import Explanation
from rules.why._words import (
    at,
    boiling_equation,
    boiling_figure,
    boils,
    by_side,
    pace,
    pace_equation,
    pace_figure,
    simmer_figure,
)

TITLE = "Why stock takes longer"
SOURCES = ("common-practice", "iapws-r7-97")


def explain(case: Case) -> Explanation:
    """Gelatin is drawn more slowly by cooler water."""
    slow = pace(case, "stock")
    simmer = case.say.temp(case.here.boiling_c - BELOW_BOIL_K)
    return Explanation(
        line=by_side(
            case,
            above=f"Stock takes {slow.words} {at(case)} because it simmers at only {simmer}, and gelatin comes out "
            "more slowly.",
            level=f"Stock keeps its usual time {at(case)}; higher up it simmers cooler and gelatin comes out more "
            "slowly.",
            below=f"Stock takes {slow.words} {at(case)} because it simmers a little hotter.",
        ),
        paragraph=(
            "The body of a stock is gelatin, and hot water draws it from skin and joints by temperature and time. "
            f"{boils(case)} A bare simmer is a few degrees under that, {simmer}. "
            + by_side(
                case,
                above=f"So give it more time: {slow.words}, with the vegetables in for the last hour as ever. ",
                level="So the usual time holds. ",
                below="So the usual time holds, or a little less. ",
            )
            + "Do not make it up with a harder boil, which only beats fat into the stock and clouds it. A pressure "
            "cooker gives as much body in a fraction of the time, and stays clear because nothing moves inside."
        ),
        equations=(boiling_equation(case), pace_equation(case, slow)),
        figures=(
            boiling_figure(case),
            simmer_figure(case),
            pace_figure(slow, "stock"),
        ),
    )
