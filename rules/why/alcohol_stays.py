"""Alcohol leaves with the water, not before it."""

from rules.book import Case, celsius
from rules.model import Caution
from rules.physics import water
from rules.why import Explanation
from rules.why._words import at, boiling_figure, by_side

TITLE = "Why alcohol does not boil off at once"
SOURCES = ("wilson-ethanol-water", "usda-retention-2007", "augustin-1992-alcohol")
WINE_MASS_FRACTION = 0.10
NOT_FREE = Caution(
    "note",
    "Some alcohol stays in every dish cooked with it. For guests who avoid it for health, faith or recovery, cook "
    "without.",
    ("usda-retention-2007",),
)


def explain(case: Case) -> Explanation:
    """A mixture boils between its parts, and both leave together."""
    say = case.say
    wine_c, pure_c = (water.ethanol_boiling_c(w, case.here.pressure_pa) for w in (WINE_MASS_FRACTION, 1.0))
    wine_sea_c = water.ethanol_boiling_c(WINE_MASS_FRACTION, case.sea.pressure_pa)
    return Explanation(
        line=f"Alcohol does not boil off at once because it is mixed with water: wine boils at {say.temp(wine_c)} "
        f"{at(case)}, and both leave together.",
        paragraph=(
            f"Pure alcohol would boil at {say.temp(pure_c)} {at(case)}, but in the pot it is mixed with water, and a "
            f"mixture boils somewhere between. Wine starts at {say.temp(wine_c)} and its steam carries both; the "
            "weaker it gets, the slower the rest leaves. In published trials 40 % was left after 15 minutes of "
            "simmering, 25 % after an hour and 5 % after two and a half. "
            + by_side(
                case,
                above="Altitude changes little in that, since alcohol and water both boil lower together; go by "
                "time, not by temperature. ",
                level="Go by time, not by temperature. ",
                below="Go by time, not by temperature. ",
            )
            + "A wide pan and stirring help, and flaming leaves about three quarters of it in the dish."
        ),
        equations=(
            f"Wine, {WINE_MASS_FRACTION:.0%} alcohol by mass, at {case.here.pressure_pa:,.0f} Pa: {wine_c:.1f} °C; "
            f"pure alcohol {pure_c:.1f} °C; water {case.here.boiling_c:.1f} °C.",
        ),
        figures=(boiling_figure(case), celsius("wine_boils", "Wine starts to boil at", wine_c, wine_sea_c)),
        cautions=(NOT_FREE,),
    )
