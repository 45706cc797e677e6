"""The pressure in a weather report is not the pressure on the pot."""

from rules.book import Case
from rules.model import Figure
from rules.physics import air, water
from rules.why import Explanation
from rules.why._words import at, boiling_figure, by_side, capital

TITLE = "Why a weather report's pressure is reduced to sea level"
SOURCES = ("us-std-atm-1976", "iapws-r7-97")


def explain(case: Case) -> Explanation:
    """Weather maps take the elevation out; a pot feels it."""
    say = case.say
    wrong_c = water.saturation_temp_c(air.SEA_LEVEL_PA)
    own, reported = say.pressure(case.here.pressure_pa), say.pressure(air.SEA_LEVEL_PA)
    standard_pa = air.pressure_pa(case.here.elevation_m)
    return Explanation(
        line=f"A weather report gives pressure as if every town stood at sea level; {at(case)} the pot feels the "
        f"real one, {own}.",
        paragraph=(
            "Forecasters want to compare towns, so they add or take away a column of air until every station reads "
            f"as if it stood at the sea. That shows highs and lows, but it hides the elevation. {capital(at(case))} "
            f"standard air presses with {say.pressure(standard_pa)}, while the report "
            f"would say about {reported}. "
            + by_side(
                case,
                above=f"Take the report at its word and you would expect the boil at {say.temp(wrong_c)}; it is at "
                f"{say.temp(case.here.boiling_c)}. ",
                level="Near sea level the two agree. ",
                below=f"Take the report at its word and you would expect the boil at {say.temp(wrong_c)}; it is at "
                f"{say.temp(case.here.boiling_c)}. ",
            )
            + "For cooking use a barometer's own reading, called station pressure, or simply boil water and read the "
            "thermometer."
        ),
        equations=(
            f"p_station = p_report·p({case.here.elevation_m:,.0f} m)/p(0) = "
            f"{air.SEA_LEVEL_PA:,.0f}·{standard_pa / air.SEA_LEVEL_PA:.4f} = {standard_pa:,.0f} Pa.",
            f"T_sat({case.here.pressure_pa:,.0f} Pa) = {case.here.boiling_c:.2f} °C.",
        ),
        figures=(
            boiling_figure(case),
            Figure(
                "station_pressure",
                "Air pressure at the place",
                round(case.here.pressure_pa / 1000, 2),
                "kPa",
                sea_level=round(air.SEA_LEVEL_PA / 1000, 2),
            ),
        ),
    )
