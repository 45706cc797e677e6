"""Home-canned low-acid food is boiled before anyone tastes it; the time does depend on elevation."""

from __future__ import annotations

from rules.book import Case, Part, rule
from rules.model import Caution, Figure
from rules.preserving.bands import ten_minutes_and_more
from rules.said import exact_duration, sentences, temp

say = sentences("safety/subjects/home_canned_tasting")


@rule("safety.home_canned_tasting", "usda-aib-539", "csu-preserve-smart")
def before_tasting(case: Case) -> Part:
    """How long to boil home-canned low-acid food before tasting it."""
    time = ten_minutes_and_more(case.here.elevation_m)
    return Part(
        headline=say("headline", time=exact_duration(time), place=case.place),
        figures=(Figure("boil_before_tasting", say("label"), time, "min", sea_level=10.0),),
        steps=(say("boil", time=exact_duration(time)), say("smell")),
        because=say("because", boil=temp(case.here.boiling_c)),
        cautions=(
            Caution("stop", say("spoiled"), ("usda-aib-539",)),
            Caution("warn", say("second-guard"), ("usda-aib-539",)),
        ),
    )


NEEDS = ("elevation",)
RULES = (before_tasting,)
