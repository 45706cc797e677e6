"""Home-canned low-acid food is boiled before anyone tastes it; the time does depend on elevation."""

from __future__ import annotations

from rules.book import Case, Part, rule
from rules.model import Caution, Figure
from rules.preserving.bands import ten_minutes_and_more
from rules.say import exact_duration


@rule("safety.home_canned_tasting", "usda-aib-539", "csu-preserve-smart")
def before_tasting(case: Case) -> Part:
    """How long to boil home-canned low-acid food before tasting it."""
    time = ten_minutes_and_more(case.here.elevation_m)
    return Part(
        headline=f"Boil home-canned vegetables, meat and fish for {exact_duration(time)} at {case.place} before anyone "
        "tastes them.",
        figures=(Figure("boil_before_tasting", "Boil before tasting", time, "min", sea_level=10.0),),
        steps=(
            f"Tip it into a saucepan, stir, bring it to a full boil and count {exact_duration(time)}, lid on.",
            "Then look and smell. Any doubt, and it goes out, unopened jars of the same batch too.",
        ),
        because="Botulism toxin, unlike its spores, is destroyed by boiling: 10 min below 1,000 ft and one minute "
        f"more for each further 1,000 ft, since water boils at {case.say.temp(case.here.boiling_c)} here.",
        cautions=(
            Caution(
                "stop",
                "A jar with a bulging lid, a leak, a spurt or an off smell is not boiled and not tasted: throw it "
                "out, bagged, out of reach of people and animals.",
                ("usda-aib-539",),
            ),
            Caution(
                "warn",
                "Boiling is a second guard, for jars that may have been processed wrongly. It does not make up for "
                "wrong canning.",
                ("usda-aib-539",),
            ),
        ),
    )


NEEDS = ("elevation",)
RULES = (before_tasting,)
