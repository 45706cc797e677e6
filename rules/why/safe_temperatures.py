"""Safe temperatures are temperatures of the food."""

from rules.book import Case, celsius
from rules.model import Caution
from rules.physics.units import to_c
from rules.why import Explanation
from rules.why._words import at, boiling_figure, boils, by_side

TITLE = "Why safe temperatures stay the same"
SOURCES = ("usda-fsis-safe-temperatures", "fda-food-code-2022", "iapws-r7-97")
WHOLE_CUT_C, GROUND_C, POULTRY_C = to_c(145), to_c(160), to_c(165)
THERMOMETER = Caution(
    "note", "Check meat with a thermometer in the thickest part, at any elevation.", ("usda-fsis-safe-temperatures",)
)


def explain(case: Case) -> Explanation:
    """Germs die by the heat in the food, not by the air around it."""
    say, margin_k = case.say, case.here.boiling_c - POULTRY_C
    return Explanation(
        line=f"Safe temperatures are the same {at(case)} as anywhere, because germs die by the heat in the food, not "
        "by the air around it.",
        paragraph=(
            f"Whole cuts need {say.temp(WHOLE_CUT_C)} and three minutes' rest, ground meat {say.temp(GROUND_C)}, "
            f"poultry and leftovers {say.temp(POULTRY_C)}, here and everywhere. {boils(case)} That is still "
            f"{say.temp_drop(margin_k)} over what poultry needs, so even a simmer gets there. "
            + by_side(
                case,
                above="What changes is the time: cooler water takes longer to bring the middle up. ",
                level="Higher up only the time changes. ",
                below="Only the time changes, and that hardly. ",
            )
            + "Holding and cooling limits do not move either. Canning does, because there the boiling itself is the "
            "heat that has to do the work."
        ),
        equations=(
            f"Margin = {case.here.boiling_c:.1f} − {POULTRY_C:.1f} = {margin_k:.1f} °C above the poultry limit.",
        ),
        figures=(
            boiling_figure(case),
            celsius("poultry_limit", "Poultry and leftovers, anywhere", POULTRY_C, POULTRY_C),
        ),
        cautions=(THERMOMETER,),
    )
