"""Reheating: the temperature that undoes a day in the refrigerator."""

from __future__ import annotations

from rules.book import Case, Part, celsius, rule
from rules.methods import hold
from rules.model import Caution, Figure
from rules.safety import holding_limits
from rules.safety.holding_limits import limit_c, limit_min
from rules.safety.local_code import local_code
from rules.said import duration, sentences, temp

say = sentences("safety/subjects/reheating")


@rule("safety.reheating", "fda-food-code-2022", "us-navy-p-5010-1")
def reheating(case: Case) -> Part:
    """How hot and how fast to reheat."""
    hot, packed = limit_c("reheat"), limit_c("hot_hold")
    return Part(
        headline=say(
            "headline",
            food=case.request.dish or say("leftovers"),
            temperature=temp(hot),
            within=duration(limit_min("reheat")),
        ),
        figures=(
            celsius("reheat_temperature", say("label"), hot, hot),
            Figure("reheat_time", say("within-label"), limit_min("reheat"), "min"),
            celsius("reheat_packed_temperature", say("packed-label"), packed, packed),
        ),
        steps=(say("fast"), say("microwave"), say("once")),
        cautions=(Caution("warn", say("too-slow"), ("fda-food-code-2022", "common-practice")),),
    )


NEEDS: tuple[str, ...] = ()
RULES = (reheating, holding_limits.same_everywhere, hold.rice, local_code)
