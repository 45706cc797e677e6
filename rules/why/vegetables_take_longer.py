"""Vegetables: pectin that loosens with heat, roots most of all."""

from rules.book import Case
from rules.why import Explanation
from rules.why._words import at, boiling_equation, boiling_figure, boils, by_side, pace, pace_equation, pace_figure

TITLE = "Why boiled vegetables take longer"
SOURCES = ("lee-2017-texture", "uwyo-altitude-adjusters", "iapws-r7-97")


def explain(case: Case) -> Explanation:
    """Cell walls loosen more slowly in cooler water, in roots most of all."""
    root, tender = pace(case, "root_vegetable"), pace(case, "tender_vegetable")
    return Explanation(
        line=by_side(
            case,
            above=f"Boiled vegetables take longer {at(case)} because the water stops at "
            f"{case.say.temp(case.here.boiling_c)}, and their cell walls loosen by heat alone.",
            level=f"Boiled vegetables keep their usual times {at(case)}; higher up the cooler boil slows them.",
            below=f"Boiled vegetables are done a little sooner {at(case)} because the boil is a little hotter.",
        ),
        paragraph=(
            "A vegetable is tender when the pectin between its cells lets go, and that goes by temperature. "
            f"{boils(case)} "
            + by_side(
                case,
                above=f"Carrots and beets feel it most and take {root.words}; tender ones such as asparagus or "
                f"broccoli take {tender.words}. ",
                level="The usual times hold for roots and for tender vegetables. ",
                below=f"Carrots and beets take {root.words}; tender ones such as asparagus or broccoli take "
                f"{tender.words}. ",
            )
            + "Steaming is no faster, since steam in an open steamer is no hotter than the boil. Cut them small, "
            "keep the lid on, and go by the bite. Green ones lose colour with every extra minute, so taste early."
        ),
        equations=(
            boiling_equation(case),
            f"Roots: {pace_equation(case, root)}",
            f"Tender vegetables: {pace_equation(case, tender)}",
        ),
        figures=(
            boiling_figure(case),
            pace_figure(root, "root vegetables", "root_time_factor"),
            pace_figure(tender, "tender vegetables", "tender_time_factor"),
        ),
    )
