"""Soaking dried beans, peas and grains: by the clock or by a quick boil; elevation has no part in it."""

from __future__ import annotations

from rules.book import Case, Part, rule
from rules.model import Caution, Figure
from rules.said import duration_span, sentences

OVERNIGHT_MIN = (8 * 60.0, 12 * 60.0)
# longer in a warm kitchen they begin to ferment
MOST_MIN = 24 * 60.0
say = sentences("safety/subjects/soaking")


@rule("safety.soaking", "common-practice")
def soaking(case: Case) -> Part:
    """How long dried beans soak, the quick way, and what the soak does for the pot."""
    low, high = OVERNIGHT_MIN
    asked = case.request.planned_min or case.request.elapsed_min or case.request.time_min
    verdict = "none" if asked is None else "short" if asked < low * 0.75 else "long" if asked > MOST_MIN else "fits"
    return Part(
        headline=say("headline", verdict=verdict, span=duration_span(low, high)),
        figures=(Figure("soak_time", say("label"), (low + high) / 2, "min", low, high),),
        steps=(say("cold"), say("quick"), say("salt")),
        because=say("because"),
        cautions=(Caution("warn", say("boil-first"), ("common-practice",)),),
    )


NEEDS: tuple[str, ...] = ()
RULES = (soaking,)
