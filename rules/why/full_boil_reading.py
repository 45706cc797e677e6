"""A thermometer in boiling water that does not read 212 °F."""

from rules.book import Case
from rules.physics import air, water
from rules.why import Explanation
from rules.why._words import at, boiling_equation, boiling_figure, by_side, small_drop

TITLE = "Why a thermometer can read 198 °F at a full boil"
SOURCES = ("iapws-r7-97", "us-std-atm-1976", "common-practice")
WEATHER_PA = 1000.0


def reading_sentence(case: Case) -> str:
    """What the cook's own reading means, where one was given that water can boil at."""
    reading_c = case.request.temperature_c
    if reading_c is None or not water.boiling_point_c(air.HIGHEST_M) <= reading_c <= water.boiling_point_c(
        air.LOWEST_M
    ):
        return ""
    height = case.say.elevation(water.elevation_from_boiling_m(reading_c))
    return f"A true reading of {case.say.temp(reading_c)} at a full boil belongs to about {height}. "


def explain(case: Case) -> Explanation:
    """A rolling boil is told by its bubbles, not by one figure on the dial."""
    boil = case.say.temp(case.here.boiling_c)
    weather_k = water.saturation_temp_c(case.here.pressure_pa + WEATHER_PA) - case.here.boiling_c
    return Explanation(
        line=f"Water at a full rolling boil reads {boil} {at(case)}"
        + by_side(
            case,
            above=", so a thermometer that stops short of the sea-level figure is not broken.",
            level="; a lower reading there would point to the thermometer, and higher up to the elevation.",
            below=", a little over the sea-level figure.",
        ),
        paragraph=(
            "A full boil means big bubbles that stirring cannot stop. It happens at whatever temperature the air "
            f"allows. For standard air that is {boil} {at(case)}. {reading_sentence(case)}Weather moves it by about "
            f"{small_drop(case, weather_k)} for every {case.say.pressure(WEATHER_PA)}. If the reading is further off "
            "than a degree or two, test the thermometer in crushed ice and water, where it must read "
            f"{case.say.temp(0)}."
        ),
        equations=(
            boiling_equation(case),
            f"T_sat(p + {WEATHER_PA:.0f} Pa) − T_sat(p) = {weather_k:.2f} °C.",
        ),
        figures=(boiling_figure(case),),
    )
