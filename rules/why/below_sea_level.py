"""Below sea level everything is the other way about."""

from rules.book import Case, celsius
from rules.physics import air, water
from rules.why import Explanation
from rules.why._words import boiling_equation, boiling_figure, boils

TITLE = "Why a deep valley below sea level is the reverse"
SOURCES = ("iapws-r7-97", "us-std-atm-1976", "common-practice")


def explain(case: Case) -> Explanation:
    """More air above the pot makes it boil hotter."""
    say, lowest = case.say, water.boiling_point_c(air.LOWEST_M)
    deep = f"{say.temp(lowest)} at {say.elevation(air.LOWEST_M)}"
    return Explanation(
        line=f"Below sea level more air presses on the pot, so water boils hotter: {deep}, about the lowest dry land "
        "there is.",
        paragraph=(
            "The air does not stop getting heavier at the shore. In a basin below sea level there is more of it "
            f"overhead, and water has to get hotter before it boils: {deep}. {boils(case)} Down there boiled food is "
            "done a touch sooner, cakes rise a touch less, and candy has to be taken a little higher. The "
            "differences are small, because no dry land lies deep. Nothing about safe temperatures or canning is "
            "relaxed."
        ),
        equations=(
            boiling_equation(case),
            f"At {air.LOWEST_M:.0f} m: p = {air.pressure_pa(air.LOWEST_M):,.0f} Pa, T_sat = {lowest:.2f} °C.",
        ),
        figures=(
            boiling_figure(case),
            celsius("lowest_land", "Boil on the lowest dry land", lowest, case.sea.boiling_c),
        ),
    )
