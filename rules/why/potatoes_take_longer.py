"""Potatoes: heat on its way in, then starch and pectin."""

from rules.book import Case
from rules.why import Explanation
from rules.why._words import at, boiling_equation, boiling_figure, boils, by_side, pace, pace_equation, pace_figure

TITLE = "Why potatoes take longer"
SOURCES = ("hiroshima-potato-kinetics", "uwyo-altitude-adjusters", "iapws-r7-97")


def explain(case: Case) -> Explanation:
    """Cooler water softens a potato more slowly, however small it is cut."""
    slow = pace(case, "starchy_root")
    return Explanation(
        line=by_side(
            case,
            above=f"Potatoes take {slow.words} {at(case)} because the boil is only "
            f"{case.say.temp(case.here.boiling_c)} and they soften by heat, not by bubbling.",
            level=f"Potatoes keep their usual time {at(case)}; higher up they take longer because the boil is cooler.",
            below=f"Potatoes take {slow.words} {at(case)} because the boil is a little hotter than at sea level.",
        ),
        paragraph=(
            "Heat has to reach the middle of a potato, and then starch and cell walls have to give way. Cutting it "
            f"smaller shortens the first part only. {boils(case)} "
            + by_side(
                case,
                above=f"So expect potatoes to take {slow.words}. ",
                level="So the usual time holds. ",
                below=f"So expect potatoes to take {slow.words}. ",
            )
            + "Start them in cold water, keep the lid on and test with a knife. In the oven they change much less, "
            "because the oven is as hot as you set it; only the wet middle stops at the boiling point."
        ),
        equations=(boiling_equation(case), pace_equation(case, slow)),
        figures=(boiling_figure(case), pace_figure(slow, "potatoes")),
    )
