"""Less sugar in cakes."""

from rules.book import Case
from rules.why import Explanation
from rules.why._words import at, by_side, capital, drying_equation, drying_figure, drying_percent

TITLE = "Why less sugar in a cake"
SOURCES = ("uwyo-altitude-adjusters", "usu-faq-204", "computed")


def explain(case: Case) -> Explanation:
    """Sugar holds back the setting of the crumb, and drying concentrates it."""
    percent = drying_percent(case)
    return Explanation(
        line=by_side(
            case,
            above=f"Sugar delays the setting of a cake and water leaves it faster {at(case)}, so with a little less "
            "sugar the crumb sets in time.",
            level=f"The recipe's sugar is right {at(case)}; higher up it is cut a little, because sugar delays the "
            "setting.",
            below=f"The recipe's sugar is right {at(case)}; it is cut only above sea level, because it delays the "
            "setting.",
        ),
        paragraph=(
            "Sugar holds on to water, and starch and egg must get hotter before they set. "
            + by_side(
                case,
                above=f"{capital(at(case))} water leaves the batter some {percent} % faster, so what sugar there is "
                "grows stronger, while the bubbles grow sooner. A little less sugar lets the crumb set before they "
                "burst. The tested tables take away up to three tablespoons a cup at most. ",
                level=f"{capital(at(case))} the recipe is in balance. Higher up the bubbles grow sooner and water "
                "leaves faster, so a tablespoon or two less in each cup lets the crumb set in time. ",
                below=f"{capital(at(case))} the bubbles are in no hurry, so there is nothing to correct. ",
            )
            + "It is the second thing to change, after the leavening. Cut too much and the cake turns pale and dry."
        ),
        equations=(drying_equation(case),),
        figures=(drying_figure(case),),
    )
