"""The cooker itself runs cooler up high: the gauge starts from the air outside."""

from rules.book import Case, celsius
from rules.heat.pressure import PRESSURE_CAUTION, STOVE_TOP_GAUGE_PA, inside_c
from rules.physics.units import PSI_PER_PA
from rules.why import Explanation
from rules.why._words import at, by_side, capital

TITLE = "Why the pressure cooker itself runs cooler up high"
SOURCES = ("iapws-r7-97", "us-std-atm-1976", "uwyo-altitude-adjusters", "usda-fsis-high-altitude")
RULE_GAUGE_PA, RULE_RISE_M = 1 / PSI_PER_PA, 609.6


def explain(case: Case) -> Explanation:
    """The gauge reads what the cooker adds to the air outside, and that air is thinner here."""
    say, gauge = case.say, STOVE_TOP_GAUGE_PA
    inside, sea = inside_c(case.here, gauge), inside_c(case.sea, gauge)
    here_words, sea_words = say.temp(inside), say.temp(sea)
    return Explanation(
        line=by_side(
            case,
            above=f"A gauge counts from the air outside, so at {say.gauge(gauge)} the steam is {here_words} "
            f"{at(case)}, not the {sea_words} of sea level.",
            level=f"A gauge counts from the air outside, so at {say.gauge(gauge)} the steam is {here_words} "
            f"{at(case)} and less the higher you climb.",
            below=f"A gauge counts from the air outside, so at {say.gauge(gauge)} the steam is {here_words} "
            f"{at(case)}, a little over the {sea_words} of sea level.",
        ),
        paragraph=(
            "The gauge shows what the cooker adds, not what the steam feels. The steam feels the gauge and the air "
            f"outside together. {capital(at(case))} the air gives {say.pressure(case.here.pressure_pa)}, so at "
            f"{say.gauge(gauge)} the inside is {here_words}"
            + by_side(
                case,
                above=f", against {sea_words} at sea level. ",
                level=". ",
                below=f", against {sea_words} at sea level. ",
            )
            + f"To cook as hot as at sea level a cooker needs about {say.gauge(RULE_GAUGE_PA)} more for every "
            f"{say.elevation(RULE_RISE_M)}. One with a fixed weight cannot do that, so it gets more time: by the "
            f"published rule, 5 % for each {say.elevation(304.8)} above {say.elevation(609.6)}."
        ),
        equations=(
            f"T_sat({case.here.pressure_pa:,.0f} + {gauge:,.0f} Pa) = {inside:.1f} °C; "
            f"T_sat({case.sea.pressure_pa:,.0f} + {gauge:,.0f} Pa) = {sea:.1f} °C at sea level.",
        ),
        figures=(celsius("inside_temperature", f"Inside at {say.gauge(gauge)}", inside, sea),),
        cautions=(PRESSURE_CAUTION,),
    )
