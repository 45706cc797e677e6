"""Cooler steam scalds all the same."""

from rules.book import Case
from rules.model import Caution, Figure
from rules.physics import water
from rules.why import Explanation
from rules.why._words import at, boiling_figure, boils, by_side

TITLE = "Why cooler steam still burns"
SOURCES = ("crc-handbook", "iapws-r7-97", "from-memory")
SCALD_C = 60.0
SCALDS = Caution(
    "warn",
    "Lift lids away from you and open pressure cookers only when the pressure is down. Cool a scald at once under "
    "cool running water for 20 minutes, and get medical help for anything larger than a hand or on the face.",
    ("common-practice",),
)


def explain(case: Case) -> Explanation:
    """Steam hands over its heat of boiling when it turns to water on the skin."""
    heat, cooling = water.latent_heat_kj_per_kg(case.here.boiling_c), 4.2 * (case.here.boiling_c - 35)
    over = case.say.temp_drop(case.here.boiling_c - SCALD_C)
    return Explanation(
        line=f"Steam {at(case)} is {case.say.temp(case.here.boiling_c)}, far hotter than skin can stand, and it "
        "gives up its heat as it turns to water on your skin.",
        paragraph=(
            f"{boils(case)} Steam from an open pot is as hot as that. Skin scalds within seconds at "
            f"{case.say.temp(SCALD_C)}, and this is {over} more. Worse, steam turns back to water on the skin and "
            f"hands over the heat that made it: about {heat / cooling:.0f} times what the same weight of boiling "
            "water gives as it cools. "
            + by_side(
                case,
                above="So elevation makes steam cooler, not safe. ",
                level="At any elevation it is the same. ",
                below="At any elevation it is the same. ",
            )
            + "Open lids away from you and keep dry cloths for hot handles."
        ),
        equations=(
            f"Steam gives {heat:,.0f} kJ/kg as it turns to water; water from {case.here.boiling_c:.0f} to 35 °C "
            f"gives 4.2·{case.here.boiling_c - 35:.0f} = {cooling:.0f} kJ/kg.",
        ),
        figures=(
            boiling_figure(case),
            Figure("steam_heat", "Steam against boiling water, heat given up", round(heat / cooling, 1), "factor"),
        ),
        cautions=(SCALDS,),
    )
