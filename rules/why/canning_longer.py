"""Boiling-water canning: a cooler bath for a longer time."""

from rules.book import Case
from rules.why import Explanation
from rules.why._canning import TESTED
from rules.why._words import at, boiling_equation, boiling_figure, boils, by_side

TITLE = "Why boiling-water canning takes longer"
SOURCES = ("usda-aib-539", "iapws-r7-97")


def explain(case: Case) -> Explanation:
    """The bath is cooler, so the printed time is longer."""
    boil = case.say.temp(case.here.boiling_c)
    return Explanation(
        line=by_side(
            case,
            above=f"Jars in boiling water heat to only {boil} {at(case)}, so they need the longer time printed for "
            "that elevation.",
            level=f"Jars in boiling water heat to {boil} {at(case)}, which is what the shortest printed time counts "
            "on.",
            below=f"Jars in boiling water heat to {boil} {at(case)}, so the time printed for the lowest elevations "
            "holds.",
        ),
        paragraph=(
            "A boiling-water canner kills what would spoil the jar by heat and time together, and its heat is the "
            f"boiling point. {boils(case)} "
            + by_side(
                case,
                above="Less heat has to be made up by more time, and the tested tables print how much, by bands of "
                "elevation. ",
                level="The tested tables start from there and add time by bands of elevation. ",
                below="The tested tables start from sea level and never take time away. ",
            )
            + "Take the time from the band you stand in, even if you stand just inside it. The bath is for acid food "
            "only: fruit, jam, pickles, tomatoes with added acid. Vegetables and meat need pressure at every "
            "elevation."
        ),
        equations=(boiling_equation(case),),
        figures=(boiling_figure(case),),
        cautions=(TESTED,),
    )
