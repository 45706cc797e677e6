"""Egg foams: air and steam swell in the oven."""

from rules.book import Case
from rules.model import Figure
from rules.physics import water
from rules.physics.ambient import Ambient
from rules.say import number
from rules.why import Explanation
from rules.why._words import at, by_side, capital

TITLE = "Why whites are whipped only to soft peaks"
SOURCES = ("iapws-r7-97", "us-std-atm-1976", "common-practice")
ROOM_C, WARM_C = 20.0, 70.0


def swelling(air: Ambient) -> float:
    """How many times its volume moist air takes up when a foam warms from ROOM_C to WARM_C [-].

    The bubbles are full of air and as much steam as water gives off at that temperature, at the pressure outside.
    """
    dry_cold = air.pressure_pa - water.saturation_pressure_pa(ROOM_C)
    dry_warm = air.pressure_pa - water.saturation_pressure_pa(WARM_C)
    return dry_cold / dry_warm * (WARM_C + 273.15) / (ROOM_C + 273.15)


def explain(case: Case) -> Explanation:
    """A foam needs room left in its walls to swell in the oven."""
    here, sea = swelling(case.here), swelling(case.sea)
    here_words, sea_words = number(here, 1), number(sea, 1)
    warm = case.say.temp(WARM_C)
    return Explanation(
        line=by_side(
            case,
            above=f"Whites are whipped only to soft peaks {at(case)} because their bubbles swell more in the oven "
            "and need walls that can still stretch.",
            level=f"Whites may go to the peak the recipe says {at(case)}; higher up they stop at soft, to leave room "
            "to swell.",
            below=f"Whites may go to the peak the recipe says {at(case)}; they swell a little less in the oven than "
            "at sea level.",
        ),
        paragraph=(
            "In the oven a foam swells twice over: its air warms, and steam from the whites joins it. Steam needs "
            f"the same heat anywhere, but thinner air holds it back less. {capital(at(case))} the bubbles grow to "
            f"about {here_words} times their size by {warm}"
            + by_side(
                case,
                above=f", against {sea_words} at sea level. ",
                level=". ",
                below=f", against {sea_words} at sea level. ",
            )
            + "Whites beaten stiff are stretched already, so they burst and the cake falls. "
            + by_side(
                case,
                above="Stop at soft, glossy peaks that bend over. Fold gently, bake at once, and fill the pan only "
                "halfway.",
                level="Stop at the peak the recipe asks for, fold gently and bake at once.",
                below="Stop at the peak the recipe asks for, fold gently and bake at once.",
            )
        ),
        equations=(
            f"V/V0 = (p − p_s({ROOM_C:.0f} °C))/(p − p_s({WARM_C:.0f} "
            f"°C))·{WARM_C + 273.15:.0f}/{ROOM_C + 273.15:.0f} with p = {case.here.pressure_pa:,.0f} Pa, p_s = "
            f"{water.saturation_pressure_pa(ROOM_C):,.0f} and {water.saturation_pressure_pa(WARM_C):,.0f} Pa: "
            f"{here:.2f}, at sea level {sea:.2f}.",
        ),
        figures=(
            Figure("foam_swelling", f"A foam swells, by {warm}", round(here, 2), "factor", sea_level=round(sea, 2)),
        ),
    )
