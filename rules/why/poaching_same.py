"""Poaching stays under the boil."""

from rules.book import Case
from rules.why import Explanation
from rules.why._words import at, boiling_equation, boiling_figure, boils, by_side

TITLE = "Why poaching hardly changes"
SOURCES = ("common-practice", "iapws-r7-97")
POACH_C = (71.0, 82.0)


def explain(case: Case) -> Explanation:
    """Poaching water is set by the cook, not by the air."""
    say = case.say
    water_span = say.temp_span(*POACH_C)
    room_k = case.here.boiling_c - POACH_C[1]
    return Explanation(
        line=f"Poaching hardly changes {at(case)} because its water is held at {water_span}, under the boil, by you "
        "and not by the air.",
        paragraph=(
            f"Fish and chicken poach in water at {water_span}, where a thermometer, not a bubble, is the guide. "
            f"{boils(case)} "
            + (
                f"That leaves {say.temp_drop(room_k)} between the two, so the food takes its usual time. "
                if room_k > 1
                else "That is about the top of the range, so keep to the cooler part of it. "
            )
            + by_side(
                case,
                above="The trap is the look of the water: high up it shivers and bubbles at lower readings, so the "
                "old signs mean cooler water. ",
                level="Higher up the same signs mean cooler water. ",
                below="The signs mean slightly hotter water. ",
            )
            + "Use a thermometer in the water and in the food. The safe temperatures in the middle stay as they are."
        ),
        equations=(
            boiling_equation(case),
            f"Room above the poaching range = {case.here.boiling_c:.1f} − {POACH_C[1]:.0f} = {room_k:.1f} °C.",
        ),
        figures=(boiling_figure(case),),
    )
