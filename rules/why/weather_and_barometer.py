"""Weather moves the boil a little."""

from rules.book import Case
from rules.model import Figure
from rules.physics import water
from rules.physics.units import round_to
from rules.why import Explanation
from rules.why._words import at, boiling_equation, boiling_figure, boils, by_side, small_drop

TITLE = "Why the boil moves with the weather"
SOURCES = ("iapws-r7-97", "us-std-atm-1976")
SWING_PA, CLIMB_M = 1000.0, 300.0


def explain(case: Case) -> Explanation:
    """A low presses less on the pot than a high."""
    fall_k = case.here.boiling_c - water.saturation_temp_c(case.here.pressure_pa - SWING_PA)
    fall, swing = small_drop(case, fall_k), case.say.pressure(SWING_PA)
    slope_k_m = (water.boiling_point_c(0) - water.boiling_point_c(CLIMB_M)) / CLIMB_M
    same_climb = case.say.elevation(round_to(fall_k / slope_k_m, 10))
    standing = "That is by your barometer." if case.request.pressure_pa is not None else "That is for standard air."
    return Explanation(
        line=f"Water boils cooler in a low because the air presses less: {swing} less on the barometer takes off "
        f"{fall} {at(case)}.",
        paragraph=(
            f"The elevation sets where water usually boils, and the weather moves it from day to day. {boils(case)} "
            f"{standing} A drop of {swing} lowers it by {fall}, about as much as climbing {same_climb}. "
            + by_side(
                case,
                above="For pasta and stews that is nothing against what the elevation has already taken. ",
                level="For pasta and stews that is nothing. ",
                below="For pasta and stews that is nothing. ",
            )
            + "For candy a stormy week can cost a degree or two, so boil plain water with your thermometer the same "
            "day and count from there."
        ),
        equations=(
            boiling_equation(case),
            f"T_sat(p) − T_sat(p − {SWING_PA:,.0f} Pa) = {fall_k:.2f} °C.",
        ),
        figures=(boiling_figure(case), Figure("weather_drop", "10 hPa less takes off", round(fall_k, 2), "K")),
    )
