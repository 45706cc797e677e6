"""Canning tables are read as they are printed."""

from rules.book import Case
from rules.why import Explanation
from rules.why._canning import TESTED
from rules.why._words import at, boiling_figure, boils

TITLE = "Why canning times are never worked out or averaged"
SOURCES = ("usda-aib-539", "nchfp", "common-practice")


def explain(case: Case) -> Explanation:
    """The steps were tested with jars; the places between were not."""
    return Explanation(
        line=f"Canning times are read from the printed band for {case.place} and never worked out, because only what "
        "is printed has been tested in jars.",
        paragraph=(
            "A canning time is the result of trials with probes in real jars, for one food, one jar and one band of "
            "elevation. How heat reaches the middle depends on the pack, the syrup and the headspace, and no formula "
            f"on paper knows them. {boils(case)} That tells why the tables have bands, not what to do between them. "
            "Standing near the edge of a band, take the longer time or the higher pressure. A recipe without a "
            "tested time belongs in the refrigerator or the freezer."
        ),
        equations=(f"Boiling point {at(case)}: {case.here.boiling_c:.2f} °C. No equation replaces the printed band.",),
        figures=(boiling_figure(case),),
        cautions=(TESTED,),
    )
