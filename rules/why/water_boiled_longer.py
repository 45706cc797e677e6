"""Boiling water to make it safe to drink: the agencies' times, and why they grow."""

from rules.book import Case
from rules.model import Caution, Figure
from rules.safety.subjects.drinking_water import agency_times
from rules.say import duration
from rules.why import Explanation
from rules.why._words import at, boiling_equation, boiling_figure, boils, by_side

TITLE = "Why drinking water is boiled longer up high"
SOURCES = ("cdc-eid-2025-boil", "epa-boil", "health-canada-boil", "who-boil", "iapws-r7-97")
ORDERS = Caution(
    "warn",
    "Where a boil-water order stands, follow the local authority. Boiling kills germs; it does not take out fuel, "
    "metals or salts.",
    ("cdc-eid-2025-boil",),
)


def explain(case: Case) -> Explanation:
    """Cooler boiling kills more slowly, so the advice adds a margin of time."""
    here, sea = agency_times(case.here.elevation_m), agency_times(0.0)
    wanted_min, sea_min = max(here.values()), max(sea.values())
    told = ", ".join(f"{agency} {duration(minutes)}" for agency, minutes in here.items() if minutes)
    return Explanation(
        line=f"Boil drinking water for {duration(wanted_min)} {at(case)}"
        + (
            f" instead of {duration(sea_min)}, since a cooler boil kills germs more slowly and the advice keeps a "
            "margin."
            if wanted_min > sea_min
            else "; higher up the advice is longer, since a cooler boil kills germs more slowly."
        ),
        paragraph=(
            f"Germs in water die by heat and time, and most are gone before it boils at all. {boils(case)} "
            + by_side(
                case,
                above="That still kills them, only a little more slowly, so most agencies add time as a margin. ",
                level="That kills them with plenty to spare. ",
                below="That kills them with plenty to spare. ",
            )
            + f"They differ on how much: {at(case)} {told}, and the World Health Organization only a full rolling "
            "boil. Where they differ, take the longest. Start counting when stirring no longer stops the bubbles."
        ),
        equations=(boiling_equation(case),),
        figures=(boiling_figure(case), Figure("boil_time", "Full rolling boil", wanted_min, "min", sea_level=sea_min)),
        cautions=(ORDERS,),
    )
