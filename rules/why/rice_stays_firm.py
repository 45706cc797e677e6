"""Rice: starch that swells slowly while the measured water boils off."""

from rules.book import Case
from rules.why import Explanation
from rules.why._words import at, boiling_equation, boiling_figure, boils, by_side, pace, pace_equation, pace_figure

TITLE = "Why rice stays firm in the middle"
SOURCES = ("rice-cooking-kinetics", "uwyo-altitude-adjusters", "iapws-r7-97")


def explain(case: Case) -> Explanation:
    """The water is gone before the middle of the grain is done."""
    slow = pace(case, "rice")
    return Explanation(
        line=by_side(
            case,
            above=f"Rice takes {slow.words} {at(case)}, and the water measured for sea level can be gone before the "
            "middle of the grain is done.",
            level=f"Rice that stays firm {at(case)} wants more water or more rest; higher up the cooler boil slows "
            "it too.",
            below=f"Rice takes {slow.words} {at(case)}, so a firm middle means too little water or too little rest.",
        ),
        paragraph=(
            "A grain of rice is done when hot water has reached its middle and swollen the starch there. "
            f"{boils(case)} "
            + by_side(
                case,
                above=f"So rice takes {slow.words}, and all that time the pot gives off steam. ",
                level="The usual time and water hold, if the lid fits. ",
                below="That shortens the time by a little. ",
            )
            + "A little more water, a tight lid and a low flame carry it through. Then let it stand, covered and off "
            "the heat, for ten minutes: the middle finishes by itself. If you cook it often, a pressure cooker makes "
            "it the same every day."
        ),
        equations=(boiling_equation(case), pace_equation(case, slow)),
        figures=(boiling_figure(case), pace_figure(slow, "rice")),
    )
