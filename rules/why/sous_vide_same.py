"""Sous vide stays under the boil, so the air has no say."""

from rules.book import Case
from rules.why import Explanation
from rules.why._words import at, boiling_equation, boiling_figure, boils, by_side

TITLE = "Why sous vide does not change"
SOURCES = ("iapws-r7-97", "common-practice")
STEAK_C, VEGETABLE_C = 54.5, 85.0


def explain(case: Case) -> Explanation:
    """A bath under the boil is as hot as it is set."""
    say, reachable = case.say, case.here.boiling_c > VEGETABLE_C + 1
    vegetables = say.temp(VEGETABLE_C)
    return Explanation(
        line=f"A sous vide bath is held under the boil, so it is as hot as you set it {at(case)}"
        + ("; times and temperatures stay." if reachable else f", up to the boil at {say.temp(case.here.boiling_c)}."),
        paragraph=(
            "Air pressure decides one thing only: where water boils. A bath below that is simply as hot as the "
            f"heater makes it. {boils(case)} "
            + (
                f"A steak at {say.temp(STEAK_C)} and vegetables at {vegetables} are both under it, so they take the "
                "time they take anywhere. "
                if reachable
                else f"A steak at {say.temp(STEAK_C)} is far under it, but a bath for vegetables at {vegetables} "
                "would boil, so those want a pressure cooker. "
            )
            + by_side(
                case,
                above="Two small things do change: the bath loses water faster, so cover it, and gas left in a bag "
                "swells more. ",
                level="That holds at any elevation. ",
                below="That holds at any elevation. ",
            )
            + "The safe times for a given temperature stay as tested."
        ),
        equations=(boiling_equation(case),),
        figures=(boiling_figure(case),),
    )
