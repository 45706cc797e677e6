"""Less baking powder for the same rise."""

from rules.book import Case
from rules.say import number
from rules.why import Explanation
from rules.why._words import at, by_side, gas_equation, gas_figure, gas_ratio, gas_swells

TITLE = "Why less baking powder or soda"
SOURCES = ("us-std-atm-1976", "uwyo-altitude-adjusters", "usu-faq-204")


def explain(case: Case) -> Explanation:
    """Each teaspoon lifts more where the air presses less."""
    share = number(100 / gas_ratio(case), 0)
    return Explanation(
        line=by_side(
            case,
            above=f"Baking powder and soda lift more {at(case)}: by pressure alone, about {share} % of the gas does "
            "the same job.",
            level=f"The recipe's leavening is right {at(case)}; higher up the same gas takes more room, so less of "
            "it is needed.",
            below=f"The recipe's leavening is right {at(case)}, or a touch low: the air presses a little harder on "
            "the gas.",
        ),
        paragraph=(
            f"Powder and soda make the same gas everywhere; what changes is the room it takes. {gas_swells(case)} "
            + by_side(
                case,
                above=f"So {share} % of the leavening would fill a cake as before. The tested tables land near that: "
                f"an eighth off at {case.say.elevation(914.4)} and a quarter off by {case.say.elevation(2133.6)}. ",
                level=f"The tested tables begin to take some away at {case.say.elevation(914.4)}. ",
                below="No tested table changes the leavening below sea level, and the difference is too small to "
                "weigh. ",
            )
            + "It is the first thing to change, since it does the most. Where soda has buttermilk or other acid to "
            "neutralise, keep enough for that."
        ),
        equations=(gas_equation(case),),
        figures=(gas_figure(case),),
    )
