"""Weather moves the boil a little."""

from rules import water
from rules.case import Case
from rules.model import Figure
from rules.why import Explanation
from rules.why._words import at, boiling_equation, boiling_figure, boils, by_side, small_drop

TITLE = "Why the boil moves with the weather"
SOURCES = ("iapws-r7-97", "us-std-atm-1976")
SWING_PA = 1000.0


def explain(case: Case) -> Explanation:
    """A low presses less on the pot than a high."""
    fall_k = case.here.boiling_c - water.saturation_temp_c(case.here.pressure_pa - SWING_PA)
    fall, swing = small_drop(case, fall_k), case.say.pressure(SWING_PA)
    same_climb = case.say.elevation(round(fall_k / 1.0 * 300, -1))
    return Explanation(
        line=f"Water boils cooler in a low because the air presses less: {swing} less on the barometer takes off "
        f"{fall} {at(case)}.",
        paragraph=(
            f"The elevation sets where water usually boils, and the weather moves it from day to day. {boils(case)} "
            f"That is for standard air. A drop of {swing} lowers it by {fall}, about as much as climbing "
            f"{same_climb}. "
            + by_side(
                case,
                above="For pasta and stews that is nothing against what the altitude has already taken. ",
                level="For pasta and stews that is nothing. ",
                below="For pasta and stews that is nothing. ",
            )
            + "For candy it can be the difference of a stage in a stormy week, so boil plain water with your "
            "thermometer the same day and count from there."
        ),
        equations=(
            boiling_equation(case),
            f"T_sat(p) − T_sat(p − {SWING_PA:,.0f} Pa) = {fall_k:.2f} °C.",
        ),
        figures=(boiling_figure(case), Figure("weather_drop", "10 hPa less takes off", round(fall_k, 2), "K")),
    )
