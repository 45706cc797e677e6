"""A cake rises past what its crumb can hold, then sinks."""

from rules.book import Case
from rules.say import number
from rules.why import Explanation
from rules.why._words import at, by_side, gas_equation, gas_figure, gas_ratio, gas_swells

TITLE = "Why cakes rise and then fall"
SOURCES = ("us-std-atm-1976", "uwyo-altitude-adjusters", "csu-high-altitude-food-prep")


def explain(case: Case) -> Explanation:
    """Gas swells more in thin air and the bubbles burst before the crumb sets."""
    ratio = number(gas_ratio(case), 2)
    return Explanation(
        line=by_side(
            case,
            above=f"The same leavening swells to {ratio} times the room {at(case)}, so a cake rises past what its "
            "crumb can hold, and sinks.",
            level=f"A cake that falls {at(case)} has too much leavening or sugar, or came out before it had set.",
            below=f"A cake that falls {at(case)} is not falling for the elevation: look at leavening, sugar and the "
            "oven.",
        ),
        paragraph=(
            "A cake is a race: the gas must lift the batter, and starch and egg must set around the bubbles before "
            f"they burst. {gas_swells(case)} "
            + by_side(
                case,
                above="The bubbles grow and run together early, while setting takes the same heat as anywhere. The "
                "rise is handsome in the oven and the middle is gone on the rack. ",
                level="If gas wins the race the middle sinks. ",
                below="So gas is the slower runner, and a cake is more likely to come out low than to fall. ",
            )
            + f"From about {case.say.elevation(914.4)} up, take away some leavening first, then sugar, then add a "
            "little liquid, and try one change at a time."
        ),
        equations=(gas_equation(case),),
        figures=(gas_figure(case),),
    )
