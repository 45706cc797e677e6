"""A hotter oven sets the crumb in time."""

from rules.book import Case
from rules.why import Explanation
from rules.why._words import at, by_side, gas_equation, gas_figure, gas_swells

TITLE = "Why a hotter oven for cakes"
SOURCES = ("uwyo-altitude-adjusters", "csu-cakes-2002", "iapws-r7-97")
LOW_K, HIGH_K = 15 / 1.8, 25 / 1.8


def explain(case: Case) -> Explanation:
    """More heat sets the crumb before the gas has run away with it."""
    say = case.say
    span = f"{say.temp_drop(LOW_K)} to {say.temp_drop(HIGH_K)}"
    return Explanation(
        line=by_side(
            case,
            above=f"A hotter oven sets the crumb {at(case)} before the gas has run away with it.",
            level=f"The recipe's oven is right {at(case)}; it is turned up only higher up, where gas swells faster.",
            below=f"The recipe's oven is right {at(case)}; it is turned up only above sea level, where gas swells "
            "more.",
        ),
        paragraph=(
            "An oven is as hot as you set it at any height; what changes is the race inside the cake. "
            f"{gas_swells(case)} "
            + by_side(
                case,
                above=f"So from about {say.elevation(914.4)} up bakers add {span} to the oven, so that the crumb "
                "sets before the bubbles burst. ",
                level=f"Higher up bakers add {span} to set the crumb sooner. ",
                below="So there is nothing to hurry. ",
            )
            + "It is done sooner too, so look at it early. In glass or dark pans add less, and roasts, braises and "
            "custards get no extra heat at all."
        ),
        equations=(gas_equation(case),),
        figures=(gas_figure(case),),
    )
