"""Candy: the stage is a share of water left, and the thermometer reads it from the boil."""

from rules.book import Case, celsius
from rules.model import Caution, Figure
from rules.physics import water
from rules.physics.units import to_c
from rules.say import number
from rules.why import Explanation
from rules.why._words import at, boiling_equation, boiling_figure, boils, by_side, drop_k

TITLE = "Why candy comes out hard"
SOURCES = ("browne-1912-sucrose", "candy-stages", "csu-candy-high-elevation", "iapws-r7-97")
SOFT_BALL_C = to_c(235)
HOT_SUGAR = Caution(
    "warn",
    "Boiling sugar sticks and burns deeply: long sleeves, a deep pan, cold water at hand, and nobody else near the "
    "stove.",
    ("common-practice",),
)


def explain(case: Case) -> Explanation:
    """The recipe's temperature was counted from a boiling point that is not this kitchen's."""
    target_c = SOFT_BALL_C - drop_k(case)
    as_meant = water.sucrose_percent(SOFT_BALL_C - case.sea.boiling_c)
    as_cooked = water.sucrose_percent(SOFT_BALL_C - case.here.boiling_c)
    soft_ball, target = case.say.temp(SOFT_BALL_C), case.say.temp(target_c)
    apart = case.say.temp_drop(abs(drop_k(case)))
    return Explanation(
        line=by_side(
            case,
            above=f"Cooked to the temperature in the book, candy comes out hard {at(case)} because too much water "
            f"has gone: stop {apart} sooner.",
            level=f"The temperature in the book holds {at(case)}; hard candy means it was cooked too far, or the "
            "thermometer reads low.",
            below=f"Cooked to the temperature in the book, candy comes out soft {at(case)}: go {apart} further.",
        ),
        paragraph=(
            "A candy stage is really an amount of water left in the syrup. The less water, the further the syrup "
            f"boils above plain water, and that distance is the same everywhere. {boils(case)} "
            + by_side(
                case,
                above=f"So soft ball, {soft_ball} in the book, is {target} there; at the book's figure the syrup is "
                f"already {number(as_cooked, 0)} % sugar instead of {number(as_meant, 0)} %. ",
                level=f"So soft ball is {soft_ball}, as in the book. ",
                below=f"So soft ball, {soft_ball} in the book, is {target} there. ",
            )
            + "Boil water first with the same thermometer, and take the difference off every stage. The cold-water "
            "test needs no correction."
        ),
        equations=(
            boiling_equation(case),
            f"Stage here = {SOFT_BALL_C:.1f} − ({case.sea.boiling_c:.2f} − {case.here.boiling_c:.2f}) "
            f"= {target_c:.1f} °C.",
            f"Syrup at {SOFT_BALL_C:.1f} °C holds {as_cooked:.1f} % sugar here, {as_meant:.1f} % at sea level.",
        ),
        figures=(
            boiling_figure(case),
            celsius("soft_ball", "Soft ball", target_c, SOFT_BALL_C),
            Figure(
                "sugar_in_syrup",
                "Sugar in the syrup at the book's soft ball",
                round(as_cooked, 1),
                "percent",
                sea_level=round(as_meant, 1),
            ),
        ),
        cautions=(HOT_SUGAR,),
    )
