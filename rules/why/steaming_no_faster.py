"""Steam in an open steamer is at the boil."""

from rules.book import Case
from rules.why import Explanation
from rules.why._words import at, boiling_equation, boiling_figure, boils, by_side, pace, pace_equation, pace_figure

TITLE = "Why steaming is no faster than boiling"
SOURCES = ("iapws-r7-97", "lee-2017-texture", "uwyo-altitude-adjusters")


def explain(case: Case) -> Explanation:
    """An ordinary steamer leaks, so its steam is no hotter than the water below."""
    slow = pace(case, "tender_vegetable")
    boil = case.say.temp(case.here.boiling_c)
    return Explanation(
        line=f"Steam in an ordinary steamer is {boil} {at(case)}, exactly as hot as the boil, so steaming is no way "
        "around the elevation.",
        paragraph=(
            f"Steam is as hot as the water it comes from, as long as the lid lets it out. {boils(case)} "
            + by_side(
                case,
                above=f"So steamed vegetables are slowed as boiled ones are: tender ones take {slow.words}. ",
                level="So steaming takes about as long as boiling, as the recipe says. ",
                below=f"So tender vegetables take {slow.words}. ",
            )
            + "Steaming has other merits: it washes out less flavour and breaks nothing. Start with more water under "
            "the basket, and pack loosely so the steam gets around. A steamer that is sealed and works under "
            "pressure is another matter, and is much hotter."
        ),
        equations=(boiling_equation(case), pace_equation(case, slow)),
        figures=(boiling_figure(case), pace_figure(slow, "tender vegetables")),
    )
