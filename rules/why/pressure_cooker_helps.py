"""The pressure cooker: a boiling point of one's own."""

from rules.book import Case, celsius
from rules.heat.pressure import PRESSURE_CAUTION, STOVE_TOP_GAUGE_PA, inside_c
from rules.why import Explanation
from rules.why._words import at, boiling_figure, by_side, capital

TITLE = "Why a pressure cooker helps"
SOURCES = ("iapws-r7-97", "us-std-atm-1976", "common-practice")


def explain(case: Case) -> Explanation:
    """Holding the steam in raises the pressure, and with it the boiling point."""
    say, gauge = case.say, STOVE_TOP_GAUGE_PA
    inside, sea = inside_c(case.here, gauge), inside_c(case.sea, gauge)
    open_pot = say.temp(case.here.boiling_c)
    return Explanation(
        line=f"A pressure cooker holds the steam in: at {say.gauge(gauge)} it cooks at {say.temp(inside)} "
        f"{at(case)}, where an open pot stops at {open_pot}.",
        paragraph=(
            "Water boils hotter under more pressure. A pressure cooker makes its own: it keeps the steam until the "
            f"gauge shows {say.gauge(gauge)} over the air outside. {capital(at(case))} that is {say.temp(inside)} "
            f"inside, against {open_pot} in an open pot. "
            + by_side(
                case,
                above="So it gives back everything the elevation took, and far more. ",
                level="So it cooks in a fraction of the time, at sea level too. ",
                below="So it cooks in a fraction of the time there too. ",
            )
            + "It does most for what softens slowly: beans, tough cuts, whole grains. It does nothing for food that "
            "only has to be warmed through gently, such as fish."
        ),
        equations=(
            f"T_sat({case.here.pressure_pa:,.0f} + {gauge:,.0f} Pa) = {inside:.1f} °C; "
            f"T_sat({case.here.pressure_pa:,.0f} Pa) = {case.here.boiling_c:.1f} °C.",
        ),
        figures=(boiling_figure(case), celsius("inside_temperature", f"Inside at {say.gauge(gauge)}", inside, sea)),
        cautions=(PRESSURE_CAUTION,),
    )
