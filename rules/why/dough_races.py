"""Yeast dough rises sooner, and so with less flavour."""

from rules.book import Case
from rules.say import number
from rules.why import Explanation
from rules.why._words import at, by_side, gas_equation, gas_figure, gas_ratio, gas_swells

TITLE = "Why yeast dough races"
SOURCES = ("us-std-atm-1976", "uwyo-altitude-adjusters", "usu-faq-204")


def explain(case: Case) -> Explanation:
    """The yeast makes no more gas; each bubble takes more room."""
    share = number(100 / gas_ratio(case), 0)
    return Explanation(
        line=by_side(
            case,
            above=f"Dough rises sooner {at(case)} because its gas takes more room: by pressure alone it doubles in "
            f"about {share} % of the time.",
            level=f"Dough rises at its usual pace {at(case)}; a dough that races is too warm or has too much yeast.",
            below=f"Dough rises a little more slowly {at(case)} because the air presses harder on its gas.",
        ),
        paragraph=(
            f"Yeast works no faster for the elevation; it goes by warmth, sugar and salt. {gas_swells(case)} "
            + by_side(
                case,
                above=f"So dough looks doubled in about {share} % of the time, and it has had that much less time to "
                "build flavour and strength. Left as long as the recipe says, it stretches too far and falls. ",
                level="Let it rise until doubled, as the recipe says. ",
                below="So give it a little longer, until it has doubled. ",
            )
            + "Watch the dough, not the clock, and stop at double. For flavour, use a little less yeast or a cooler "
            "place, or punch it down and let it rise again."
        ),
        equations=(gas_equation(case),),
        figures=(gas_figure(case),),
    )
