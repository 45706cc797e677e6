"""Eggs in the shell: heat on its way to the yolk."""

from rules.book import Case
from rules.model import Caution, Figure
from rules.physics.conduction import egg_time_min
from rules.physics.units import round_time_min
from rules.say import duration
from rules.why import Explanation
from rules.why._words import at, boiling_equation, boiling_figure, boils, by_side, capital

TITLE = "Why eggs take longer"
SOURCES = ("williams-egg", "csu-high-altitude-food-prep", "iapws-r7-97")
EGG_G, FRIDGE_C, SOFT_C, HARD_C = 57.0, 4.0, 63.0, 77.0
SAFETY = Caution(
    "note",
    "For children, the elderly, the pregnant and the sick, cook eggs until white and yolk are firm.",
    ("usda-fsis-safe-temperatures",),
)


def explain(case: Case) -> Explanation:
    """Cooler water pushes heat to the yolk more slowly."""
    here, sea = case.here.boiling_c, case.sea.boiling_c
    soft, soft_sea = (egg_time_min(EGG_G, FRIDGE_C, t, SOFT_C) for t in (here, sea))
    hard, hard_sea = (egg_time_min(EGG_G, FRIDGE_C, t, HARD_C) for t in (here, sea))
    soft_words = f"{duration(soft)}, against {duration(soft_sea)} at sea level"
    return Explanation(
        line=by_side(
            case,
            above=f"{capital(at(case))} a soft-boiled egg takes {soft_words}, because cooler water drives heat to "
            "the yolk more slowly.",
            level=f"A soft-boiled egg takes {duration(soft)} {at(case)}, and longer the higher you climb, because "
            "cooler water drives heat in more slowly.",
            below=f"{capital(at(case))} a soft-boiled egg takes {soft_words}, because hotter water drives heat to "
            "the yolk faster.",
        ),
        paragraph=(
            "An egg cooks from the shell inward, and the yolk waits for the heat to arrive. The cooler the water, "
            f"the weaker the push. {boils(case)} For a large egg from the refrigerator, into water already boiling, "
            "that is "
            + by_side(
                case,
                above=f"{duration(soft)} soft and {duration(hard)} hard, against {duration(soft_sea)} and "
                f"{duration(hard_sea)} at sea level. ",
                level=f"{duration(soft)} soft and {duration(hard)} hard. ",
                below=f"{duration(soft)} soft and {duration(hard)} hard, against {duration(soft_sea)} and "
                f"{duration(hard_sea)} at sea level. ",
            )
            + "Published kitchen advice is more generous: a three-minute egg may want five at "
            f"{case.say.elevation(1524)}. Try one egg with your own pan and note the time."
        ),
        equations=(
            boiling_equation(case),
            f"t = 0.451·{EGG_G:.0f}^(2/3)·ln(0.76·({FRIDGE_C:.0f} − {here:.1f})/({SOFT_C:.0f} − {here:.1f})) = "
            f"{soft:.1f} min soft, and {hard:.1f} min with {HARD_C:.0f} °C for hard.",
        ),
        figures=(
            boiling_figure(case),
            Figure(
                "soft_egg",
                "Soft-boiled, large, from cold",
                round_time_min(soft),
                "min",
                sea_level=round_time_min(soft_sea),
            ),
            Figure(
                "hard_egg",
                "Hard-boiled, large, from cold",
                round_time_min(hard),
                "min",
                sea_level=round_time_min(hard_sea),
            ),
        ),
        cautions=(SAFETY,),
    )
