"""Drying in thin air."""

from rules.book import Case
from rules.why import Explanation
from rules.why._words import at, by_side, capital, drying_equation, drying_figure, drying_percent

TITLE = "Why food dries out faster"
SOURCES = ("computed", "us-std-atm-1976", "usda-fsis-high-altitude")


def explain(case: Case) -> Explanation:
    """Vapour gets away faster through thin air, and the air is drier too."""
    percent = drying_percent(case)
    return Explanation(
        line=by_side(
            case,
            above=f"Food dries about {percent} % faster {at(case)} even in equally damp air, because vapour gets away "
            "more easily through thin air.",
            level=f"Food dries at its usual rate {at(case)}; higher up vapour gets away more easily through thin air.",
            below=f"Food dries about {percent} % more slowly {at(case)}, because vapour has denser air to get through.",
        ),
        paragraph=(
            "Moisture leaves food by pushing through the air around it. The thinner the air, the less is in its way. "
            + by_side(
                case,
                above=f"{capital(at(case))} that alone makes drying about {percent} % faster, and mountain air is "
                "usually drier on top of it. ",
                level=f"{capital(at(case))} the recipe's timing already allows for it. ",
                below=f"{capital(at(case))} that makes drying about {percent} % slower, though dry desert air can "
                "undo it. ",
            )
            + "Cut cheese, bread, dough and cooked rice show it first. Cover what rests, wrap what is cut, and bring "
            "out on the pass only what will be used."
        ),
        equations=(drying_equation(case),),
        figures=(drying_figure(case),),
    )
