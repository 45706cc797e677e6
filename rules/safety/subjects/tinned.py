"""Food from a can: cooked by its maker, so that it only has to get hot, at any elevation."""

from __future__ import annotations

from rules.book import Case, Part, celsius, rule
from rules.model import Caution, Figure
from rules.safety.holding_limits import limit_c
from rules.said import duration_span, sentences, temp

# a can of 15 oz in a pan, and of no. 10 (6 lb, 3 kg) in a wide pot that is stirred [min]
SMALL_MIN, LARGE_MIN = (4.0, 6.0), (20.0, 30.0)
say = sentences("safety/subjects/tinned")


@rule("safety.tinned", "fda-food-code-2022", "common-practice")
def tinned(case: Case) -> Part:
    """How hot and how long: what is in a can was cooked in it."""
    hot = limit_c("hot_hold")
    return Part(
        headline=say(
            "headline",
            food=case.request.dish or say("food"),
            small=duration_span(*SMALL_MIN),
            large=duration_span(*LARGE_MIN),
            hot=temp(hot),
        ),
        figures=(
            celsius("tinned_temperature", say("label"), hot, hot),
            Figure("large_can_time", say("large-label"), sum(LARGE_MIN) / 2, "min", *LARGE_MIN),
        ),
        steps=(say("wide"), say("several"), say("boiled"), say("after")),
        cautions=(Caution("warn", say("bulging"), ("common-practice",)),),
        because=say("because"),
    )


NEEDS: tuple[str, ...] = ()
RULES = (tinned,)
