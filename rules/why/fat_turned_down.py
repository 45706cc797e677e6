"""Deep fat: the food's own water leaves sooner and cooler."""

from rules.book import Case, celsius
from rules.model import Caution
from rules.physics.units import to_c
from rules.why import Explanation
from rules.why._words import at, boiling_figure, boils, by_side

TITLE = "Why the fat is turned down for frying"
SOURCES = ("uwyo-altitude-adjusters", "csu-high-altitude-food-prep", "iapws-r7-97")
DROP_K_PER_STEP, STEP_M, HIGHEST_ADVICE_M = 3 / 1.8, 304.8, 3048.0
DOUGHNUT_C = to_c(370)
HOT_FAT = Caution(
    "warn",
    "Never fill a fryer past half, never leave it, keep water away, and smother a fire with a lid, never with water.",
    ("common-practice",),
)


def explain(case: Case) -> Explanation:
    """The crust browns by the heat of the fat, the middle cooks at the boil."""
    say = case.say
    advised_m = min(max(case.here.elevation_m, 0.0), HIGHEST_ADVICE_M)
    lower_k = DROP_K_PER_STEP * advised_m / STEP_M
    beyond = case.here.elevation_m > HIGHEST_ADVICE_M
    step = f"about {say.temp_drop(DROP_K_PER_STEP)} for every {say.elevation(STEP_M)}"
    fat = celsius("fat_temperature", "Fat for doughnuts", DOUGHNUT_C - lower_k, DOUGHNUT_C)
    return Explanation(
        line=by_side(
            case,
            above=f"Fat is turned down {at(case)} because the middle of the food cooks at a cooler boil, and at full "
            "heat the crust would be brown long before it is done.",
            level=f"Fat keeps its usual temperature {at(case)}; it is turned down higher up, where the middle cooks "
            "more slowly.",
            below=f"Fat keeps its usual temperature {at(case)}; it is turned down only above sea level.",
        ),
        paragraph=(
            "Frying is two jobs at once: the fat browns the outside while the water in the food boils and cooks the "
            f"middle. Fat is as hot as you set it, anywhere. {boils(case)} "
            + by_side(
                case,
                above="So the middle cooks cooler and more slowly, while the crust browns at the old pace. ",
                level="So both jobs finish together, as the recipe expects. ",
                below="So the middle is done a touch sooner, if anything. ",
            )
            + f"Published advice takes the fat down {step} and fries a little longer"
            + by_side(
                case,
                above=f"; it was written for kitchens up to about {say.elevation(HIGHEST_ADVICE_M)}, so higher than "
                "that go by a test piece."
                if beyond
                else f": {say.oven(DOUGHNUT_C)} doughnuts go to {say.oven(DOUGHNUT_C - lower_k)} {at(case)}.",
                level=" higher up.",
                below=" above sea level.",
            )
            + " Check the middle of the first piece, and meat with a thermometer."
        ),
        equations=(
            f"Fat = {DOUGHNUT_C:.1f} − {DROP_K_PER_STEP:.2f}·{advised_m:.0f}/{STEP_M} = {DOUGHNUT_C - lower_k:.1f} °C"
            + (f", as far as the advice goes, {HIGHEST_ADVICE_M:,.0f} m." if beyond else "."),
        ),
        figures=(boiling_figure(case), *(() if beyond else (fat,))),
        cautions=(HOT_FAT,),
    )
