"""Reheating: the temperature that undoes a day in the refrigerator."""

from __future__ import annotations

from rules.book import Case, Part, celsius, rule
from rules.methods import hold
from rules.model import Caution, Figure
from rules.safety import holding_limits
from rules.safety.holding_limits import limit_c, limit_min
from rules.safety.local_code import local_code
from rules.say import duration


@rule("safety.reheating", "fda-food-code-2022", "us-navy-p-5010-1")
def reheating(case: Case) -> Part:
    """How hot and how fast to reheat."""
    hot, packed = limit_c("reheat"), limit_c("hot_hold")
    within = duration(limit_min("reheat"))
    return Part(
        headline=f"Reheat {case.request.dish or 'leftovers'} to {case.say.temp(hot)} in the centre within {within}, "
        "the same at any elevation.",
        figures=(
            celsius("reheat_temperature", "Reheat to", hot, hot),
            Figure("reheat_time", "Within", limit_min("reheat"), "min"),
            celsius("reheat_packed_temperature", "Food from a sealed commercial pack", packed, packed),
        ),
        steps=(
            "Heat it fast, in a thin layer or a wide pan, stirring; soups and sauces to a full boil.",
            "In a microwave cover and stir it, and let it stand 2 min before you read the thermometer.",
            "Reheat once, and only what you will serve.",
        ),
        cautions=(
            Caution(
                "warn",
                "Do not reheat in a slow cooker, a steam table or a warming drawer: they pass too slowly through the "
                "range where germs grow.",
                ("fda-food-code-2022", "common-practice"),
            ),
        ),
    )


NEEDS: tuple[str, ...] = ()
RULES = (reheating, holding_limits.same_everywhere, hold.rice, local_code)
