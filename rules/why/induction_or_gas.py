"""Which stove: how fast it heats, never how hot it boils."""

from rules.book import Case
from rules.model import Figure
from rules.say import number
from rules.why import Explanation
from rules.why._words import at, boiling_equation, boiling_figure, boils, by_side

TITLE = "Why induction and gas boil equally hot"
SOURCES = ("iapws-r7-97", "us-std-atm-1976")
TAP_C = 15.0


def explain(case: Case) -> Explanation:
    """The stove decides how soon it boils, the air how hot."""
    share = (case.here.boiling_c - TAP_C) / (case.sea.boiling_c - TAP_C)
    less = number((1 - share) * 100, 0)
    return Explanation(
        line=f"Induction, gas or electric, an open pot boils at {case.say.temp(case.here.boiling_c)} {at(case)}: the "
        "stove decides how soon, the air how hot.",
        paragraph=(
            f"No stove gets around the air above the pot. {boils(case)} "
            + by_side(
                case,
                above=f"Getting there takes about {less} % less heat than at sea level, so an electric or induction "
                "plate brings it up sooner, since it loses nothing to elevation. Gas loses some of its heat to thin "
                "air, which evens that out. ",
                level="Both give what they are rated for. ",
                below="Both give what they are rated for. ",
            )
            + "After that only two things matter: whether the burner can hold the boil when the food goes in, and "
            "whether it can be turned down to a murmur. A heavy pot and a lid do more than the kind of stove."
        ),
        equations=(
            boiling_equation(case),
            f"Heat to the boil = ({case.here.boiling_c:.1f} − {TAP_C:.0f})/({case.sea.boiling_c:.1f} − {TAP_C:.0f}) "
            f"= {share:.3f} of sea level, from tap water at {TAP_C:.0f} °C.",
        ),
        figures=(
            boiling_figure(case),
            Figure(
                "heat_to_boil", "Heat to reach the boil, against sea level", round(share, 3), "factor", sea_level=1.0
            ),
        ),
    )
