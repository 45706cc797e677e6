"""The slow cooker has little heat to give and a lower ceiling."""

from rules.book import Case
from rules.model import Caution
from rules.physics.units import to_c
from rules.why import Explanation
from rules.why._words import at, boiling_equation, boiling_figure, boils, by_side

TITLE = "Why the slow cooker is so slow"
SOURCES = ("csu-high-altitude-food-prep", "iapws-r7-97", "common-practice")
ADVISED_C = to_c(200)
SAFETY = Caution(
    "warn",
    "Never start frozen meat in a slow cooker, check meat with a thermometer, and soak kidney beans, throw the "
    "water away and boil them for at least ten minutes first: a slow cooker may not destroy their poison.",
    ("common-practice", "usu-ask-extension"),
)


def explain(case: Case) -> Explanation:
    """The crock ends near the boil, and the boil is lower."""
    say, boil_c = case.say, case.here.boiling_c
    advised = say.temp(ADVISED_C)
    reach = (
        f"The published advice to hold the food at {advised} or more can be met, but only just under the boil. "
        if boil_c > ADVISED_C
        else f"The published advice to hold the food at {advised} cannot be met there, since that is over the boil. "
    )
    return Explanation(
        line=f"A slow cooker creeps up to just under the boil, which is {say.temp(boil_c)} {at(case)}"
        + by_side(
            case,
            above=", so everything in it softens more slowly.",
            level="; higher up it ends cooler and everything softens more slowly.",
            below=", so it is no slower than at sea level.",
        ),
        paragraph=(
            "A slow cooker has a small heater, and low and high end near the same simmer; high only gets there "
            f"sooner. {boils(case)} "
            + by_side(
                case,
                above=f"{reach}So run it on high for the first hour, and plan on more hours. ",
                level="So the times in its book hold. ",
                below="So the times in its book hold. ",
            )
            + "Leave the lid on, since each look costs a quarter of an hour or more. Beans are the worst case and do "
            "better in a pressure cooker."
        ),
        equations=(boiling_equation(case),),
        figures=(boiling_figure(case),),
        cautions=(SAFETY,),
    )
