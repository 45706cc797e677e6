"""Tea: black leaves want water at the boil."""

from rules.book import Case
from rules.why import Explanation
from rules.why._words import at, boiling_equation, boiling_figure, boils, by_side

TITLE = "Why black tea tastes weak and green tea does not"
SOURCES = ("iso-3103-2019", "common-practice", "iapws-r7-97")
GREEN_C = (70.0, 80.0)


def explain(case: Case) -> Explanation:
    """Black tea is drawn at the boil, green tea below it."""
    boil, green = case.say.temp(case.here.boiling_c), case.say.temp_span(*GREEN_C)
    return Explanation(
        line=by_side(
            case,
            above=f"Black tea wants boiling water and {at(case)} that is only {boil}, so the leaves give less in the "
            "same time.",
            level=f"Black tea wants boiling water, and {at(case)} that is {boil}, as hot as it should be.",
            below=f"Black tea wants boiling water, and {at(case)} that is {boil}, hotter than at sea level.",
        ),
        paragraph=(
            "Leaves give up colour and taste faster in hotter water, and black tea is made at the full boil. "
            f"{boils(case)} "
            + by_side(
                case,
                above="So the same leaves in the same minutes give a thinner cup. Steep longer or use more leaf, "
                "and warm the pot first. ",
                level="So steep as the packet says. ",
                below="So steep as the packet says. ",
            )
            + f"Green tea is made at {green}, well under the boil, so it does not change. Even the tasters' standard "
            "for comparing teas, which steeps black leaf for six minutes in boiling water, asks for the altitude to "
            "be reported where it matters."
        ),
        equations=(boiling_equation(case),),
        figures=(boiling_figure(case),),
    )
