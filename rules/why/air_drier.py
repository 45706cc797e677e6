"""Mountain air: cold, and so short of moisture."""

from rules.book import Case
from rules.model import Figure
from rules.physics import air
from rules.why import Explanation
from rules.why._words import at, by_side

TITLE = "Why the air is drier up high"
SOURCES = ("us-std-atm-1976", "usda-fsis-high-altitude")


def explain(case: Case) -> Explanation:
    """Cold air carries little water, and heating it makes it thirsty."""
    colder_k = air.temperature_c(0) - air.temperature_c(case.here.elevation_m)
    apart = case.say.temp_drop(abs(colder_k))
    return Explanation(
        line=by_side(
            case,
            above=f"Air {at(case)} is on average {apart} colder than at sea level, and cold air carries little water.",
            level=f"Air {at(case)} carries what moisture the weather brings; higher up it is colder and carries less.",
            below=f"Air {at(case)} is on average {apart} warmer than at sea level; how damp it is depends on the "
            "country.",
        ),
        paragraph=(
            "Warm air can carry a lot of water and cold air very little. Air cools as one climbs, so most of the "
            "moisture stays near the sea. "
            + by_side(
                case,
                above=f"In standard air it is {apart} colder {at(case)} than at sea level. ",
                level="In a kitchen near sea level the weather decides. ",
                below=f"In standard air it is {apart} warmer {at(case)}, but a desert is dry at any height. ",
            )
            + "Bring cold air indoors and heat it, and it has hardly any more water but room for far more: it takes "
            "that from flour, dough, bread and your hands. Published guidance puts the change at about "
            f"{case.say.elevation(762)}. Keep flour sealed and dough covered."
        ),
        equations=(
            f"Standard air: T = 15 − 6.5·{case.here.elevation_m / 1000:.2f} = "
            f"{air.temperature_c(case.here.elevation_m):.1f} °C.",
        ),
        figures=(
            Figure(
                "air_temperature",
                "Standard air temperature outdoors",
                round(air.temperature_c(case.here.elevation_m), 1),
                "degC",
                sea_level=round(air.temperature_c(0), 1),
            ),
        ),
    )
