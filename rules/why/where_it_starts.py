"""Where high altitude begins for a cook."""

from rules.book import Case
from rules.why import Explanation
from rules.why._words import boiling_equation, boiling_figure, boils, pace, pace_figure

TITLE = "Why cookbooks start to adjust at 3,000 ft"
SOURCES = ("usda-fsis-high-altitude", "uwyo-altitude-adjusters", "iapws-r7-97")
BOOKS_M, EFFECTS_M = 914.4, 609.6


def explain(case: Case) -> Explanation:
    """There is no step in nature, only a point where it starts to show."""
    elevation_m, say = case.here.elevation_m, case.say
    if elevation_m >= BOOKS_M:
        verdict = "is above the line, so adjust"
    elif elevation_m >= EFFECTS_M:
        verdict = "is in between, so watch the slow things: beans, braises, candy"
    else:
        verdict = "is below the line, so cook as the book says"
    return Explanation(
        line=f"Cookbooks start to adjust at {say.elevation(BOOKS_M)} because that is about where most cooks notice; "
        f"{case.place} {verdict}.",
        paragraph=(
            f"The air thins with every step, and nothing special happens at {say.elevation(BOOKS_M)}. It is where "
            "most cakes begin to show it, so the books begin there. Beans and candy show it from about "
            f"{say.elevation(EFFECTS_M)}. {boils(case)} Whatever the line says, some things tell sooner than others: "
            "rich cakes before bread, beans before potatoes."
        ),
        equations=(boiling_equation(case),),
        figures=(boiling_figure(case), pace_figure(pace(case, "dried_bean"), "dried beans")),
    )
