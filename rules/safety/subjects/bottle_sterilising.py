"""Sterilising baby bottles in boiling water: defer, and say what elevation does."""

from __future__ import annotations

from rules.book import Case, Part, rule
from rules.heat.where_water_boils import boiling_point
from rules.model import Caution, Figure
from rules.say import duration_span

AGENCIES_MIN = (5.0, 10.0)


@rule("safety.bottle_sterilising", "from-memory")
def bottles(case: Case) -> Part:
    """How long agencies boil bottles, and that none of them names elevations."""
    low, high = AGENCIES_MIN
    return Part(
        headline=f"Boil clean bottles and teats for {duration_span(low, high)}, as agencies ask; at {case.place} take "
        "the longer time, and ask your doctor or clinic.",
        figures=(Figure("boil_time", "Boil bottles for", high, "min", low, high),),
        steps=(
            "Wash and rinse first, take them apart, sink every part with no air inside, and count from the full boil.",
            "Lift them out with clean tongs and let them dry on a clean rack.",
        ),
        because="U.S. advice is 5 min and British advice 10. Neither that I know of prints a change for elevation; "
        f"water boils at {case.say.temp(case.here.boiling_c)} here, so the longer one is the careful choice. A steam "
        "steriliser also stops at the boil here.",
        cautions=(
            Caution(
                "warn",
                "This is for your doctor, clinic or public-health office to decide, above all for a baby under two "
                "months, born early, or ill. Follow the makers of bottle and steriliser.",
                ("from-memory",),
            ),
        ),
    )


NEEDS = ("elevation",)
RULES = (bottles, boiling_point)
