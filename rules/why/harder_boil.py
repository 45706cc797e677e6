"""A rolling boil and a gentle one stand at the same temperature."""

from rules.book import Case
from rules.physics import water
from rules.why import Explanation
from rules.why._words import at, boiling_equation, boiling_figure, boils

TITLE = "Why a harder boil does not help"
SOURCES = ("iapws-r7-97", "crc-handbook")
BURNER_KW = 2.0


def explain(case: Case) -> Explanation:
    """Extra heat goes into steam, not into the food."""
    heat_kj_kg = water.latent_heat_kj_per_kg(case.here.boiling_c)
    return Explanation(
        line=f"A hard boil is no hotter than a gentle one: {at(case)} both stand at "
        f"{case.say.temp(case.here.boiling_c)}, and the extra flame only makes steam.",
        paragraph=(
            "An open pot cannot pass its boiling point, whatever is under it. Turn the burner up and the extra heat "
            f"leaves as steam. {boils(case)} A gentle boil and a rolling boil are equally hot, so the food is done no "
            "sooner; the pot only runs dry sooner and tender food breaks up. Bring it up fast, then turn it down "
            "until it just keeps moving. Pasta is the exception: there the movement keeps the pieces apart."
        ),
        equations=(
            boiling_equation(case),
            f"A kilogram of water takes {heat_kj_kg:,.0f} kJ to boil away, so a burner that puts {BURNER_KW:.0f} kW "
            f"into the pot drives off {BURNER_KW * 3600 / heat_kj_kg:.1f} kg an hour, all of it at "
            f"{case.here.boiling_c:.1f} °C.",
        ),
        figures=(boiling_figure(case),),
    )
