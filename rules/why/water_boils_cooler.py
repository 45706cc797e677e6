"""Boiling and the weight of the air."""

from rules.book import Case
from rules.model import Figure
from rules.physics import water
from rules.why import Explanation
from rules.why._words import at, boiling_equation, boiling_figure, by_side, capital, drop_k

TITLE = "Why water boils cooler up high"
SOURCES = ("iapws-r7-97", "us-std-atm-1976")
STEP_M = 304.8


def explain(case: Case) -> Explanation:
    """Less air above the pot lets steam form sooner."""
    say, here = case.say, case.say.temp(case.here.boiling_c)
    step_k = water.boiling_point_c(0) - water.boiling_point_c(STEP_M)
    apart = say.temp_drop(abs(drop_k(case)))
    so = f"So water boils at {here}" + by_side(
        case, above=f", {apart} under sea level.", level=".", below=f", {apart} over sea level."
    )
    return Explanation(
        line=by_side(
            case,
            above=f"Water boils at {here} {at(case)} because less air presses down on it.",
            level=f"Water boils at {here} {at(case)}, and cooler the higher you climb, because less air presses on it.",
            below=f"Water boils at {here} {at(case)}, hotter than at sea level, because more air presses down on it.",
        ),
        paragraph=(
            "Water boils when its steam can push back the air above it. Air has weight, and the higher you stand the "
            f"less of it is left above you. {capital(at(case))} the air presses with "
            f"{say.pressure(case.here.pressure_pa)}"
            + by_side(
                case,
                above=f", against {say.pressure(case.sea.pressure_pa)} at sea level. ",
                level=". ",
                below=f", against {say.pressure(case.sea.pressure_pa)} at sea level. ",
            )
            + f"{so} Each {say.elevation(STEP_M)} of climb takes off about {say.temp_drop(step_k)}. Once it boils, "
            "more heat only makes more steam."
        ),
        equations=(boiling_equation(case),),
        figures=(
            boiling_figure(case),
            Figure(
                "air_pressure",
                "Air pressure",
                round(case.here.pressure_pa / 1000, 2),
                "kPa",
                sea_level=round(case.sea.pressure_pa / 1000, 2),
            ),
        ),
    )
