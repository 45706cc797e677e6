"""Reducing: boiling water away takes about the same heat anywhere."""

from rules.book import Case
from rules.model import Figure
from rules.physics import water
from rules.say import number
from rules.why import Explanation
from rules.why._words import at, boiling_figure, boils, by_side

TITLE = "Why a sauce reduces about as fast as at sea level"
SOURCES = ("crc-handbook", "iapws-r7-97")
BURNER_KW = 1.5


def explain(case: Case) -> Explanation:
    """At the boil the burner sets the pace, not the air."""
    here, sea = (water.latent_heat_kj_per_kg(a.boiling_c) for a in (case.here, case.sea))
    here_l, sea_l = (BURNER_KW * 3600 / heat for heat in (here, sea))
    percent = number(abs(here / sea - 1) * 100, 1)
    return Explanation(
        line=f"A sauce reduces about as fast {at(case)} as anywhere, because at a full boil the burner sets the "
        "pace, not the air.",
        paragraph=(
            f"To reduce is to boil water away, and each spoonful takes a fixed amount of heat. {boils(case)} "
            + by_side(
                case,
                above=f"The heat to boil it away is greater by {percent} %, which is nothing; a gas burner that has "
                "gone weak matters more. ",
                level="The pace depends on the burner and the width of the pan. ",
                below=f"The heat to boil it away is less by {percent} %, which is nothing. ",
            )
            + by_side(
                case,
                above="What does change is the temperature: flour and starch thicken a little later, and a sauce "
                "that has to cook as well as reduce needs more time and more liquid. ",
                level="Higher up the sauce is cooler while it reduces, so starch thickens later. ",
                below="",
            )
            + "Judge by the spoon, and salt at the end."
        ),
        equations=(
            f"r = {here:,.0f} kJ/kg here, {sea:,.0f} kJ/kg at sea level; {BURNER_KW} kW into the pan drives off "
            f"{here_l:.2f} and {sea_l:.2f} kg an hour.",
        ),
        figures=(
            boiling_figure(case),
            Figure(
                "boil_away",
                f"Boiled away in an hour by {BURNER_KW} kW",
                round(here_l, 2),
                "kg",
                sea_level=round(sea_l, 2),
            ),
        ),
    )
