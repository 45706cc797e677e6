"""Pressure canning: the same heat inside needs more on the gauge."""

from rules.book import Case, celsius
from rules.heat.pressure import inside_c
from rules.physics import water
from rules.physics.units import PSI_PER_PA, to_c
from rules.why import Explanation
from rules.why._canning import TESTED
from rules.why._words import at, by_side, capital

TITLE = "Why pressure canning needs more pressure"
SOURCES = ("usda-aib-539", "mu-qafs163", "iapws-r7-97")
NEEDED_C, GAUGE_PA = to_c(240), 10 / PSI_PER_PA


def explain(case: Case) -> Explanation:
    """The gauge adds to the air outside, and the jars need the same heat everywhere."""
    say = case.say
    inside, needed = inside_c(case.here, GAUGE_PA), say.temp(NEEDED_C)
    needed_pa = water.saturation_pressure_pa(NEEDED_C)
    return Explanation(
        line=f"Low-acid jars need the same {needed} everywhere, and {say.gauge(GAUGE_PA)} on the gauge gives "
        f"{say.temp(inside)} {at(case)}.",
        paragraph=(
            f"The spores that cause botulism stand boiling water, so low-acid food is canned at about {needed}. The "
            f"gauge shows only what the canner adds to the air outside. {capital(at(case))} {say.gauge(GAUGE_PA)} "
            f"makes {say.temp(inside)} inside. "
            + by_side(
                case,
                above="Thinner air outside leaves it short, so the tables ask for more pressure. ",
                level="Higher up the thinner air leaves it short, so the tables ask for more pressure. ",
                below="The tables ask for no less, since a dial gauge can read wrong. ",
            )
            + "The time stays as printed: with the right pressure the jars feel the same heat as at sea level. A "
            "dial gauge is set by the pound, and a weight goes to the next one up."
        ),
        equations=(
            f"T_sat({case.here.pressure_pa:,.0f} + {GAUGE_PA:,.0f} Pa) = {inside:.1f} °C; {NEEDED_C:.1f} °C needs "
            f"{needed_pa:,.0f} Pa in all, air and gauge together.",
        ),
        figures=(
            celsius("inside_temperature", f"Inside at {say.gauge(GAUGE_PA)}", inside, inside_c(case.sea, GAUGE_PA)),
            celsius("needed_temperature", "Needed for low-acid food", NEEDED_C, NEEDED_C),
        ),
        cautions=(TESTED,),
    )
