"""The stall: a wet piece of meat cools itself."""

from rules.book import Case
from rules.why import Explanation
from rules.why._words import at, by_side, capital, drying_equation, drying_figure, drying_percent

TITLE = "Why smoked meat stalls"
SOURCES = ("computed", "common-practice", "us-std-atm-1976")


def explain(case: Case) -> Explanation:
    """Drying takes as much heat from the surface as the smoker brings."""
    percent = drying_percent(case)
    return Explanation(
        line=by_side(
            case,
            above=f"Smoked meat stalls because drying cools it, and {at(case)} a wet surface dries about {percent} % "
            "faster, so the stall comes cooler and lasts longer.",
            level=f"Smoked meat stalls {at(case)} because drying takes heat from the surface as fast as the smoker "
            "brings it.",
            below=f"Smoked meat stalls because drying cools it, and {at(case)} it dries about {percent} % more "
            "slowly, so the stall is milder.",
        ),
        paragraph=(
            "Meat in a smoker sweats, and every gram of water that leaves takes heat with it. For hours that carries "
            "off as much as the warm air brings, and the thermometer stands still. "
            + by_side(
                case,
                above=f"{capital(at(case))} a surface at a given temperature dries about {percent} % faster in "
                "equally damp air. So the balance is struck a little cooler, and the piece loses more water getting "
                "through. ",
                level=f"{capital(at(case))} it goes as the books describe; higher up the stall comes cooler and "
                "lasts longer. ",
                below=f"{capital(at(case))} a surface dries about {percent} % more slowly, so the stall is milder. ",
            )
            + "Wrapping ends the stall because it stops the drying, and a pan of water in the smoker eases it. Cook "
            "to temperature and feel, and leave room in the schedule."
        ),
        equations=(drying_equation(case),),
        figures=(drying_figure(case),),
    )
