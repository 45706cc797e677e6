"""Coffee: water that is too cool draws too little."""

from rules.book import Case, celsius
from rules.why import Explanation
from rules.why._words import at, boiling_equation, boiling_figure, boils

TITLE = "Why coffee tastes weak or sour"
SOURCES = ("scaa-brewing", "iapws-r7-97")
BREW_C, BREW_K = 93.0, 3.0


def explain(case: Case) -> Explanation:
    """The brewing band runs up to and past the boil of high kitchens."""
    say, boil_c = case.say, case.here.boiling_c
    band = say.temp_span(BREW_C - BREW_K, BREW_C + BREW_K)
    if boil_c < BREW_C - BREW_K:
        verdict, loss = "the boil is under all of that", ", so it draws too little."
        advice = "Use water off a full boil, a finer grind, more coffee and more time. "
    elif boil_c < BREW_C + BREW_K:
        verdict, loss = "the boil is inside it", ", with little to lose on the way to the cup."
        advice = (
            "Every second from the kettle costs a little, so use it right off the boil, warm the pot, and grind a "
            "little finer. "
        )
    else:
        verdict, loss = "the boil is above it", ", so the heat is not to blame."
        advice = "Let the kettle stand a moment; if the cup is weak, look at grind and dose. "
    return Explanation(
        line=f"Coffee wants water at {band}, and {at(case)} {verdict}{loss}",
        paragraph=(
            "Hot water draws sweetness and body out of coffee; cooler water leaves them and takes mostly the sour. "
            f"{boils(case)} The brewing standard is {band} where water meets coffee, and {verdict}. {advice}A brewer "
            "under pressure, such as an espresso machine or a stove-top pot, minds the elevation less."
        ),
        equations=(
            boiling_equation(case),
            f"Brewing band {BREW_C:.1f} °C, {BREW_K:.0f} °C either way; the boil is "
            f"{boil_c - BREW_C:+.1f} °C from its middle.",
        ),
        figures=(
            boiling_figure(case),
            celsius("brew_temperature", "Brewing water, middle of the band", BREW_C, BREW_C),
        ),
    )
