"""Custards set well below the boil."""

from rules.book import Case
from rules.physics.units import to_c
from rules.why import Explanation
from rules.why._words import at, boiling_equation, boiling_figure, boils, by_side

TITLE = "Why custard and cheesecake hardly change"
SOURCES = ("common-practice", "iapws-r7-97")
SET_C = (to_c(170), to_c(180))


def explain(case: Case) -> Explanation:
    """Egg sets below any kitchen's boil, and a water bath only gets gentler."""
    say = case.say
    sets = say.temp_span(*SET_C)
    under = "below" if case.here.boiling_c > SET_C[1] + 1 else "about as hot as"
    return Explanation(
        line=f"A custard sets at {sets}, {under} the boil {at(case)}, so egg and milk set as they do anywhere.",
        paragraph=(
            f"Egg thickens milk by its own temperature, about {sets} in the middle, and the air has no say in that. "
            f"{boils(case)} "
            + by_side(
                case,
                above="A water bath cannot pass that, so it is a little gentler high up and a little slower, which "
                "a custard takes well. ",
                level="A water bath cannot pass that, which is why it protects a custard. ",
                below="A water bath cannot pass that, which is why it protects a custard. ",
            )
            + "Keep the oven as written, and start checking at the usual time. It is done when the edge is set and "
            "the middle still trembles. A sauce thickened with starch as well has to come to the boil."
        ),
        equations=(boiling_equation(case),),
        figures=(boiling_figure(case),),
    )
