"""Pasta: water soaking in, starch swelling."""

from rules.book import Case
from rules.say import duration, duration_span
from rules.why import Explanation
from rules.why._words import at, boiling_equation, boiling_figure, boils, by_side, pace, pace_equation, pace_figure

TITLE = "Why pasta takes longer"
SOURCES = ("from-memory", "ogawa-2011-pasta", "iapws-r7-97")
BOX_MIN = 10.0


def explain(case: Case) -> Explanation:
    """Cooler water soaks in and swells the starch more slowly."""
    slow = pace(case, "pasta")
    boil = case.say.temp(case.here.boiling_c)
    here = duration_span(BOX_MIN * slow.low, BOX_MIN * slow.high)
    return Explanation(
        line=by_side(
            case,
            above=f"Pasta takes {slow.words} {at(case)} because the water boils at only {boil}, and cooler water "
            "swells the starch more slowly.",
            level=f"Pasta keeps the time on the box {at(case)}; higher up it takes longer because the water boils "
            "cooler.",
            below=f"Pasta takes {slow.words} {at(case)} because the water boils at {boil}, hotter than at sea level.",
        ),
        paragraph=(
            "Pasta is done when water has soaked to the middle and the starch there has swollen, and both go more "
            f"slowly in cooler water. {boils(case)} "
            + by_side(
                case,
                above=f"A box that says {duration(BOX_MIN)} means {here}, and the range is wide because shapes "
                "differ. ",
                level="The time on the box holds. ",
                below=f"A box that says {duration(BOX_MIN)} means {here}. ",
            )
            + "Use plenty of water at a full rolling boil, and put the lid on until it comes back to the boil. Salt "
            "is for the taste; it does not make the water hotter by anything you could notice. Start tasting at the "
            "time on the box."
        ),
        equations=(boiling_equation(case), pace_equation(case, slow)),
        figures=(boiling_figure(case), pace_figure(slow, "pasta")),
    )
