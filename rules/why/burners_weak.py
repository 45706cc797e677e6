"""Gas and charcoal breathe thin air."""

from rules.book import Case
from rules.model import Caution
from rules.physics import air
from rules.say import number
from rules.why import Explanation
from rules.why._words import at, by_side, capital, density_figure

TITLE = "Why gas burners and grills feel weak"
SOURCES = ("us-std-atm-1976", "usda-fsis-high-altitude", "from-memory")
GAS = Caution(
    "warn",
    "Have gas burners fitted for the elevation by a licensed gas fitter. A yellow, sooty flame means carbon "
    "monoxide: turn it off, air the room and have it seen to.",
    ("common-practice",),
)


def explain(case: Case) -> Explanation:
    """A cubic foot of mountain air holds less oxygen, and gas appliances are turned down to match."""
    density = air.density_ratio(case.here.elevation_m)
    share = number(density * 100, 0)
    return Explanation(
        line=by_side(
            case,
            above=f"Gas burners and grills feel weak {at(case)} because each breath of air holds only {share} % of "
            "the oxygen of sea level.",
            level=f"Gas burners and grills give their full heat {at(case)}; higher up the air holds less oxygen for "
            "the flame.",
            below=f"Gas burners and grills give their full heat {at(case)}, where the air is denser than at sea level.",
        ),
        paragraph=(
            "A flame needs oxygen as much as gas. "
            + by_side(
                case,
                above=f"{capital(at(case))} a given volume of standard air weighs {share} % of what it does at sea "
                "level, and its oxygen with it. Burners are fitted with smaller jets to suit, so they give less "
                "heat; left unfitted they burn yellow and dirty. Charcoal glows less fiercely for the same reason. ",
                level=f"{capital(at(case))} burners and coals get what they were built for. Higher up they get less, "
                "and gas burners are fitted with smaller jets to suit. ",
                below=f"{capital(at(case))} a given volume of standard air weighs {share} % of what it does at sea "
                "level, so there is no shortage. ",
            )
            + "Electric elements and induction do not breathe, and lose nothing. On the grill open the vents, "
            "preheat longer, and go by the thermometer."
        ),
        equations=(
            f"Air density = (1 − 0.0065·{case.here.elevation_m:.0f}/288.15)^{air.EXPONENT - 1:.3f} = {density:.3f} "
            "of sea level.",
        ),
        figures=(density_figure(case),),
        cautions=(GAS,),
    )
