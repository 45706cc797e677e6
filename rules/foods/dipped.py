"""Doughs that are dipped in boiling water before they are baked: the dip sets their skin and cooks nothing through."""

from __future__ import annotations

from rules.book import Case, Part, rule
from rules.heat.cook_times import stated_span, time_figures
from rules.heat.headline import takes
from rules.said import sentences, temp

DIPPED = "dipped"
USUAL_MIN = (0.5, 1.0)
say = sentences("foods/dipped")


@rule("boil.dip", "common-practice", "from-memory")
def dip(case: Case) -> Part | None:
    """How long a dough is dipped: as long as anywhere, for starch swells far under any boil of a kitchen."""
    if DIPPED not in case.traits:
        return None
    low, high = stated_span(case) or USUAL_MIN
    figures = time_figures(case, (low, high), (low, (low + high) / 2, high))
    return Part(
        figures=figures,
        headline=takes(case, "boil", figures) if case.request.topic == "time" else "",
        steps=(say("step"),),
        because=say("because", boil=temp(case.here.boiling_c)),
    )
