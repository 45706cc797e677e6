"""Dried beans: the food that minds the boiling point most."""

from rules.book import Case
from rules.why import Explanation
from rules.why._words import (
    at,
    boiling_equation,
    boiling_figure,
    boils,
    by_side,
    pace,
    pace_equation,
    pace_figure,
)

TITLE = "Why beans stay hard"
SOURCES = ("quast-1977-beans", "common-practice", "iapws-r7-97")


def explain(case: Case) -> Explanation:
    """The glue between a bean's cells loosens very slowly in cooler water."""
    slow = pace(case, "dried_bean")
    threshold_c = slow.soft.threshold_c or 0.0
    threshold = case.say.temp(threshold_c)
    too_cool = case.here.boiling_c < threshold_c
    return Explanation(
        line=by_side(
            case,
            above=f"Beans practically do not soften in an open pot {at(case)}, because it boils below {threshold}: "
            "use a pressure cooker."
            if too_cool
            else f"Beans take {slow.words} {at(case)} because what holds them firm loosens very slowly in cooler "
            "water.",
            level=f"Beans that stay hard {at(case)} are old, or had hard water or acid in the pot; the boil itself "
            "is hot enough.",
            below=f"The boil is hot enough {at(case)}, so beans that stay hard are old, or had hard water or acid.",
        ),
        paragraph=(
            "A bean softens when the pectin between its cells lets go, and few things in the kitchen depend on heat "
            f"so much: some {case.say.temp_drop(slow.soft.z_k)} cooler makes it ten times slower. {boils(case)} "
            + by_side(
                case,
                above=f"Under about {threshold} beans hardly soften at all, and an open pot there is below that. "
                if too_cool
                else f"That means {slow.words}, and under about {threshold} they hardly soften at all. ",
                level="That is hot enough; high up it is not. ",
                below="That is a little hotter than beans need. ",
            )
            + "Old beans, hard water and acid hold them firm at any height, so tomatoes and vinegar go in last. Soak "
            "them overnight in salted water. A pressure cooker is the real cure."
        ),
        equations=(boiling_equation(case), pace_equation(case, slow)),
        figures=(boiling_figure(case), pace_figure(slow, "dried beans")),
    )
