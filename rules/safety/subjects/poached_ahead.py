"""Poached eggs for many: done ahead, chilled, and warmed at the pass."""

from __future__ import annotations

from rules.book import Case, Part, celsius, rule
from rules.model import Caution, Figure
from rules.physics.units import to_c
from rules.safety.holding_limits import limit_c
from rules.said import duration_span, sentences, temp, temp_span

# a bath that warms an egg and leaves its yolk, and how long [degF, min]
BATH_F, WARM_MIN = (140.0, 145.0), (1.0, 2.0)
say = sentences("safety/subjects/poached_ahead")


@rule("safety.poached_ahead", "fda-food-code-2022", "common-practice")
def poached_ahead(case: Case) -> Part:
    """Yes: cold, and warmed to order; hot-held only where the eggs are pasteurised or firm."""
    low, high = (to_c(t) for t in BATH_F)
    return Part(
        headline=say(
            "headline",
            bath=temp_span(low, high),
            warm=duration_span(*WARM_MIN),
            cold=temp(limit_c("cold_hold")),
            held=temp(limit_c("hot_hold")),
        ),
        figures=(
            celsius("warming_bath", say("bath-label"), (low + high) / 2, (low + high) / 2),
            Figure("warming_time", say("warm-label"), sum(WARM_MIN) / 2, "min", *WARM_MIN),
        ),
        steps=(say("under"), say("ice"), say("pass")),
        cautions=(Caution("warn", say("runny"), ("fda-food-code-2022",)),),
        because=say("because"),
    )


NEEDS: tuple[str, ...] = ()
RULES = (poached_ahead,)
