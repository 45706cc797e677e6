"""Boiling water to make it safe to drink."""

from rules.case import Case
from rules.model import Caution
from rules.why import Explanation
from rules.why._words import at, boiling_equation, boiling_figure, boils, by_side

TITLE = "Why drinking water is boiled longer up high"
SOURCES = ("cdc-eid-2025-boil", "epa-boil", "health-canada-boil", "who-boil", "iapws-r7-97")
SEA_MIN, HIGH_MIN, CDC_M, EPA_M, CANADA_M = 1, 3, 1981.2, 1524.0, 2000.0
ORDERS = Caution(
    "warn",
    "Where a boil-water order stands, follow the local authority. Boiling kills germs; it does not take out fuel, "
    "metals or other poisons.",
    ("cdc-eid-2025-boil",),
)


def minutes(elevation_m: float) -> int:
    """Minutes at a full rolling boil by the stricter of the two agencies [min]."""
    return HIGH_MIN if elevation_m > EPA_M - 1 else SEA_MIN


def explain(case: Case) -> Explanation:
    """Cooler boiling kills more slowly, so the advice adds a margin of time."""
    say, wanted = case.say, minutes(case.here.elevation_m)
    plural = "" if wanted == 1 else "s"
    return Explanation(
        line=f"Boil drinking water for {wanted} minute{plural} {at(case)}"
        + (
            ", since a cooler boil kills germs more slowly and the advice keeps a margin."
            if wanted == HIGH_MIN
            else "; higher up it is three, since a cooler boil kills germs more slowly."
        ),
        paragraph=(
            f"Germs in water die by heat and time, and most are gone before it boils at all. {boils(case)} "
            + by_side(
                case,
                above="That still kills them, only a little more slowly, so the advice adds time as a margin. ",
                level="That kills them with plenty to spare. ",
                below="That kills them with plenty to spare. ",
            )
            + f"US agencies say one minute at a full rolling boil, and three above {say.elevation(CDC_M)} by one "
            f"agency and from {say.elevation(EPA_M)} by another. Canada says two minutes above "
            f"{say.elevation(CANADA_M)}; the World Health Organization asks only for a full rolling boil. Where they "
            "differ, take the longer. Start counting when the bubbles no longer stop for a spoon."
        ),
        equations=(boiling_equation(case),),
        figures=(boiling_figure(case),),
        cautions=(ORDERS,),
    )
