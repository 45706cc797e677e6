"""Melting snow: the gas and the time that a litre of water from it takes."""

from __future__ import annotations

from rules.book import Case, Part, rule
from rules.heat import fuel
from rules.heat.where_water_boils import boiling_point
from rules.model import Caution, Figure
from rules.safety.subjects.fuel import days, litres, of_two
from rules.said import bulk, duration, number, sentences, yes

say = sentences("safety/subjects/melting_snow")

# what a camp stove puts into the pot [kW], and a head drinks and eats in a day where all water is snow [l]
INTO_POT_KW, LITRES_A_DAY = 1.0, 4.0


@rule("melting_snow.melting", "common-practice", "computed")
def melting(case: Case) -> Part:
    """Gas and time of a litre from snow, and of what was asked for."""
    request = case.request
    low, each, high = fuel.gas_g(fuel.snow_kj_l(case.here))
    each_min = fuel.snow_kj_l(case.here) / INTO_POT_KW / 60
    stay, people = days(request) or 1.0, request.portions or 0
    wanted = litres(request) or LITRES_A_DAY * people * stay
    return Part(
        headline=say(
            "headline",
            told="litres" if litres(request) else "people" if people else "each",
            gas=bulk(wanted * each),
            litres=number(wanted, 1),
            each=number(each, 0),
            time=duration(each_min),
            whole=duration(wanted * each_min) if wanted else "",
            heads=people,
            days=number(stay, 0),
            one=yes(stay == 1),
            place=case.place,
            water=number(fuel.gas_g(fuel.boil_kj_l(case.here))[1], 0),
        ),
        figures=(
            Figure("gas_a_litre_of_snow", say("gas-label"), each, "g", low, high),
            Figure("time_a_litre_of_snow", say("time-label"), each_min, "min"),
        ),
        steps=(say("wet-start"), say("not-to-the-boil")),
        because=say("why"),
        cautions=(Caution("warn", say("fumes"), ("common-practice",)),),
    )


NEEDS: tuple[str, ...] = ()
settled = of_two
RULES = (melting, boiling_point)
