"""Jam: the gel point is counted from the boil."""

from rules.book import Case, celsius
from rules.model import Caution
from rules.why import Explanation
from rules.why._words import at, boiling_equation, boiling_figure, boils, by_side

TITLE = "Why jam sets at a lower temperature"
SOURCES = ("usda-aib-539", "iapws-r7-97")
GEL_ABOVE_BOIL_K = 8 / 1.8
TESTED = Caution(
    "warn",
    "For jars that are to keep, use a tested recipe and the processing time printed for your elevation.",
    ("usda-aib-539",),
)


def explain(case: Case) -> Explanation:
    """Jam gels at a share of sugar, which shows as a distance above the boil."""
    here_c, sea_c = case.here.boiling_c + GEL_ABOVE_BOIL_K, case.sea.boiling_c + GEL_ABOVE_BOIL_K
    apart, gel = case.say.temp_drop(GEL_ABOVE_BOIL_K), case.say.temp(here_c)
    return Explanation(
        line=f"Jam sets when it boils {apart} above plain water, which is {gel} {at(case)}.",
        paragraph=(
            "Jam gels when enough water has gone for sugar, acid and pectin to hold together. The thermometer shows "
            f"that as a distance above the boil, about {apart}, and the distance is the same everywhere. "
            f"{boils(case)} So the gel point is {gel}. "
            + by_side(
                case,
                above=f"Cook it to the {case.say.temp(sea_c)} of sea level and it turns stiff, dark and short of "
                "fruit. ",
                level="Higher up it is lower, degree for degree with the boil. ",
                below=f"Stop at the {case.say.temp(sea_c)} of sea level and it stays loose. ",
            )
            + "Check with a cold plate or a spoon as well, since fruit differs."
        ),
        equations=(
            boiling_equation(case),
            f"Gel point = {case.here.boiling_c:.2f} + {GEL_ABOVE_BOIL_K:.2f} = {here_c:.2f} °C.",
        ),
        figures=(boiling_figure(case), celsius("gel_point", "Jam sets at", here_c, sea_c)),
        cautions=(TESTED,),
    )
