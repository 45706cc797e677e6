"""The oven of a braise stays where it is."""

from rules.book import Case, celsius
from rules.heat.pots import BRAISE_OVEN_C
from rules.physics.evaporation import BELOW_BOIL_K
from rules.why import Explanation
from rules.why._words import at, by_side, capital, simmer_figure

TITLE = "Why the oven stays the same for a braise"
SOURCES = ("common-practice", "csu-high-altitude-food-prep", "iapws-r7-97")


def explain(case: Case) -> Explanation:
    """The oven only keeps the liquid at its simmer."""
    say = case.say
    oven, liquid = say.oven(BRAISE_OVEN_C), say.temp(case.here.boiling_c - BELOW_BOIL_K)
    return Explanation(
        line=f"The oven stays at {oven} for a braise {at(case)} because the pot is held by its liquid, not by the "
        "oven air.",
        paragraph=(
            f"An oven has one job in a braise: to keep the liquid at a bare simmer. {capital(at(case))} that is about "
            f"{liquid}, and {oven} is more than enough to hold it there. A hotter oven cannot lift it past the boil. "
            "It only makes the pot boil hard, which dries the edges, clouds the liquid and drives off water. "
            + by_side(
                case,
                above="So give a braise more time high up, not more heat. ",
                level="The same goes for any elevation. ",
                below="The same goes for any elevation. ",
            )
            + "If it does more than murmur, turn the oven down."
        ),
        equations=(
            f"Oven {BRAISE_OVEN_C:.0f} °C against a ceiling of {case.here.boiling_c:.1f} °C in the pot: "
            f"{BRAISE_OVEN_C - case.here.boiling_c:.0f} °C to spare.",
        ),
        figures=(
            celsius("oven", "Oven", BRAISE_OVEN_C, BRAISE_OVEN_C),
            simmer_figure(case),
        ),
    )
