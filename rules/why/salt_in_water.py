"""Salt raises the boil, by next to nothing."""

from rules.book import Case
from rules.model import Figure
from rules.physics import water
from rules.physics.units import round_to
from rules.say import number
from rules.why import Explanation
from rules.why._words import boiling_figure, boils, by_side, drop_k, small_drop

TITLE = "Why salting the water does not make up for elevation"
SOURCES = ("atkins-ebullioscopic", "crc-handbook", "iapws-r7-97")
PASTA_SALT_G_PER_KG, SEA_G_PER_KG = 10.0, 35.0
# the ideal law holds up to here
STRONGEST_G_PER_KG = 200.0


def explain(case: Case) -> Explanation:
    """Ten grams a litre lift the boil by a fifth of a degree."""
    raised_k = water.salt_elevation_k(PASTA_SALT_G_PER_KG)
    raised = small_drop(case, raised_k)
    needed_g = max(0.0, drop_k(case) / water.salt_elevation_k(1.0))
    salt = f"{number(PASTA_SALT_G_PER_KG)} g of salt in a litre"
    if needed_g > STRONGEST_G_PER_KG:
        wanted = f"would take a brine more than {int(STRONGEST_G_PER_KG / SEA_G_PER_KG)} times as salty as the sea"
    else:
        much = ", saltier than the sea" if needed_g > SEA_G_PER_KG else ""
        wanted = f"would take about {number(round_to(needed_g, 5))} g in every litre{much}"
    return Explanation(
        line=f"Salting the water raises its boil by only {raised} for {salt}, so salt for the taste and not for the "
        "heat.",
        paragraph=(
            "Anything dissolved in water makes it boil a little hotter, but salt does it very weakly. The usual "
            f"{salt} for pasta adds {raised}. {boils(case)} "
            + by_side(
                case,
                above=f"To win that back with salt {wanted}. ",
                level="Nobody would taste or time the difference. ",
                below="Nobody would taste or time the difference. ",
            )
            + "The rush of bubbles when salt goes in is only steam set loose by the grains. Salt the water because "
            "pasta and potatoes taste of it."
        ),
        equations=(
            f"ΔT = 0.512·2·{PASTA_SALT_G_PER_KG:.0f}/{water.SALT_G_PER_MOL:.2f} = {raised_k:.3f} °C for "
            f"{PASTA_SALT_G_PER_KG:.0f} g in a kilogram of water, against {abs(drop_k(case)):.2f} °C between here "
            "and sea level.",
        ),
        figures=(
            boiling_figure(case),
            Figure("salt_raises", "Salt at 10 g a litre raises it by", round(raised_k, 3), "K"),
        ),
    )
