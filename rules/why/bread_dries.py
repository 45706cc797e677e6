"""Bread loses its moisture on the rack and on the shelf."""

from rules.book import Case
from rules.why import Explanation
from rules.why._words import at, boiling_figure, boils, by_side, drying_equation, drying_figure, drying_percent

TITLE = "Why bread dries so quickly"
SOURCES = ("computed", "usda-fsis-high-altitude", "uwyo-altitude-adjusters")


def explain(case: Case) -> Explanation:
    """Water leaves the loaf faster, in the oven and after."""
    percent = drying_percent(case)
    return Explanation(
        line=by_side(
            case,
            above=f"Bread dries about {percent} % faster {at(case)}, more where the air is dry, because vapour gets "
            "away sooner through thin air.",
            level=f"Bread dries at its usual pace {at(case)}; higher up thin, dry air takes its moisture sooner.",
            below=f"Bread dries about {percent} % more slowly {at(case)} in equally damp air.",
        ),
        paragraph=(
            f"A loaf loses water in the oven, on the rack and on the shelf. {boils(case)} The crumb stops there until "
            "it is dry. "
            + by_side(
                case,
                above=f"Around the loaf vapour gets away about {percent} % faster, and flour that was dry to begin "
                "with held less. ",
                level="It goes as the recipe expects. ",
                below=f"Around the loaf vapour gets away about {percent} % more slowly. ",
            )
            + by_side(
                case,
                above="Make the dough a little wetter, bake with steam, and take the loaf out by its inside "
                "temperature. ",
                level="Bake with steam, and take the loaf out by its inside temperature. ",
                below="Bake with steam, and take the loaf out by its inside temperature. ",
            )
            + "Wrap it as soon as it is cold, or freeze what will not be eaten today."
        ),
        equations=(drying_equation(case),),
        figures=(
            boiling_figure(case),
            drying_figure(case),
        ),
    )
