"""Starch needs almost the boil, and a double boiler never gets there."""

from rules.book import Case
from rules.why import Explanation
from rules.why._words import at, boiling_equation, boiling_figure, boils, by_side

TITLE = "Why puddings and sauces stay thin over a double boiler"
SOURCES = ("from-memory", "csu-high-altitude-food-prep", "iapws-r7-97")
FULL_SWELL_C, BATH_LOSS_K = 95.0, 3.0


def explain(case: Case) -> Explanation:
    """Starch thickens fully only near sea level's boil."""
    say = case.say
    bath = say.temp(case.here.boiling_c - BATH_LOSS_K)
    return Explanation(
        line=by_side(
            case,
            above=f"A double boiler stays under {say.temp(case.here.boiling_c)} {at(case)}, too cool for starch to "
            "thicken as it should.",
            level=f"A double boiler is hot enough for starch {at(case)}; higher up it is not, and puddings stay thin.",
            below=f"A double boiler is hot enough for starch {at(case)}; a thin pudding wants more time or more "
            "starch.",
        ),
        paragraph=(
            "Starch begins to swell at modest heat but reaches its full thickness only near "
            f"{say.temp(FULL_SWELL_C)}. {boils(case)} What stands over a double boiler is a few degrees cooler still, "
            f"about {bath}. "
            + by_side(
                case,
                above="So the starch never quite finishes and the pudding stays thin or tastes of flour. Use direct "
                "heat: bring it to a full boil, stirring, and hold it there a minute or two longer than the recipe "
                "says. ",
                level="So it thickens in its usual time. Higher up use direct heat instead. ",
                below="So it thickens in its usual time. ",
            )
            + "If it is thin all the same, a little more starch is better than more heat."
        ),
        equations=(boiling_equation(case),),
        figures=(boiling_figure(case),),
    )
