"""A braise: collagen melting at the simmer."""

from rules.book import Case
from rules.physics.evaporation import BELOW_BOIL_K
from rules.say import duration_span
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

TITLE = "Why a braise takes longer"
SOURCES = ("common-practice", "csu-high-altitude-food-prep", "iapws-r7-97")
SEA_LEVEL_MIN = (150.0, 180.0)


def explain(case: Case) -> Explanation:
    """Collagen melts by temperature and time, and the liquid is cooler."""
    slow = pace(case, "collagen_cut")
    liquid_c = case.here.boiling_c - BELOW_BOIL_K
    liquid = case.say.temp(liquid_c)
    sea = duration_span(*SEA_LEVEL_MIN)
    here = duration_span(SEA_LEVEL_MIN[0] * slow.low, SEA_LEVEL_MIN[1] * slow.high)
    return Explanation(
        line=by_side(
            case,
            above=f"A braise takes {slow.words} {at(case)} because its liquid simmers at only {liquid}, and collagen "
            "melts more slowly there.",
            level=f"A braise keeps its usual time {at(case)}; higher up its liquid simmers cooler and collagen melts "
            "more slowly.",
            below=f"A braise takes {slow.words} {at(case)} because its liquid simmers a little hotter.",
        ),
        paragraph=(
            "A tough cut is tender when its collagen has turned to gelatin, and that takes heat and time together. "
            f"{boils(case)} A braise stands a few degrees under that, at about {liquid}. "
            + by_side(
                case,
                above=f"So the {sea} of sea level become {here}; the range is wide because no two cuts are alike. "
                "The meat can never get hotter than its liquid, whatever the oven says. ",
                level=f"So {sea} is the usual time. ",
                below=f"So the {sea} of sea level become {here}. ",
            )
            + by_side(
                case,
                above="Keep the lid on, start with a little more liquid and go by the fork, or let a pressure "
                "cooker take the elevation out of it.",
                level="Keep the lid on and go by the fork.",
                below="Keep the lid on and go by the fork.",
            )
        ),
        equations=(boiling_equation(case), pace_equation(case, slow)),
        figures=(
            boiling_figure(case),
            simmer_figure(case),
            pace_figure(slow, "tough cuts"),
        ),
    )
