"""More liquid in batter and dough."""

from rules.book import Case
from rules.why import Explanation
from rules.why._words import at, by_side, capital, drying_equation, drying_figure, drying_percent

TITLE = "Why more liquid in batters and doughs"
SOURCES = ("uwyo-altitude-adjusters", "usu-faq-204", "usda-fsis-high-altitude", "computed")


def explain(case: Case) -> Explanation:
    """Flour starts drier and the batter loses more in the oven."""
    percent = drying_percent(case)
    return Explanation(
        line=by_side(
            case,
            above=f"Batter wants more liquid {at(case)} because the flour starts drier and water leaves about "
            f"{percent} % faster.",
            level=f"The recipe's liquid is right {at(case)}; higher up flour is drier and water leaves faster.",
            below=f"The recipe's liquid is right {at(case)}; water leaves a little more slowly than at sea level.",
        ),
        paragraph=(
            "Water goes two ways: into the flour before baking and into the air during it. "
            + by_side(
                case,
                above="In dry mountain air the flour has given up some of its own water and takes that back from "
                f"the dough. In the oven, vapour gets away about {percent} % faster {at(case)}. The tested tables add "
                "one to four tablespoons of liquid to each cup, more the higher you are. ",
                level=f"{capital(at(case))} flour and oven behave as the recipe expects, unless the weather is very "
                "dry. Higher up the tested tables add one to four tablespoons of liquid to each cup. ",
                below=f"{capital(at(case))} the air is no thinner than the recipe expects, but in a dry desert flour "
                "still takes more water. ",
            )
            + "An extra egg or a larger one is liquid too, and strengthens the crumb. Add by feel: hold some back, "
            "and stop when the batter looks as it should."
        ),
        equations=(drying_equation(case),),
        figures=(drying_figure(case),),
    )
