"""Hold: cooked food kept hot until it is served. The limits are of the food and stay where they are."""

from __future__ import annotations

from rules import holding, infant
from rules.book import Part, rule
from rules.case import Case, celsius
from rules.holding import limit_c, limit_min, placed
from rules.infant import INFANT
from rules.model import Caution, Figure
from rules.say import duration

GRAINS = ("rice", "pasta", "noodle", "whole_grain")


@rule("hold.limits", "fda-food-code-2022")
def limits(case: Case) -> Part | None:
    """How hot to hold, how hot to reheat, and how long without heat."""
    if case.dish_class == INFANT:
        return None
    hot, roast, reheat = (limit_c(name) for name in ("hot_hold", "roast_hold", "reheat"))
    food = case.request.dish or "hot food"
    at = f" at {case.place}" if placed(case.request) else ""
    return Part(
        figures=(
            celsius("hold_temperature", "Hold hot at or above", hot, hot),
            celsius("roast_hold_temperature", "Whole roasts at or above", roast, roast),
            celsius("reheat_temperature", "Reheat for holding to", reheat, reheat),
            Figure("reheat_time", "Reheat within", limit_min("reheat"), "min"),
            Figure("time_without_heat", "Or serve without heat within", limit_min("time_control"), "min"),
        ),
        headline=f"Hold {food} at {case.say.temp(hot)} or hotter{at}, the same as at any elevation.",
        steps=(
            f"Check the centre with a thermometer every two hours; under {case.say.temp(hot)}, reheat to "
            f"{case.say.temp(reheat)} for 15 s within {duration(limit_min('reheat'))}, or throw it away.",
            f"Food held without heat is served or thrown away within {duration(limit_min('time_control'))}, and "
            "labelled so.",
        ),
    )


@rule("hold.dry_air", "common-practice", "computed")
def dry_air(case: Case) -> Part | None:
    """What does change: held food dries out sooner in thin, dry air."""
    if not placed(case.request) or case.here.elevation_m < 600 or case.dish_class == INFANT:
        return None
    return Part(
        steps=("Keep it covered and add hot liquid as it dries; top up the water of the steam table more often.",),
        because=f"What changes is drying: the air at {case.place} is thinner and usually drier, so uncovered food "
        f"loses water sooner. The water of a steam table boils at {case.say.temp(case.here.boiling_c)} and still "
        "holds food hot enough.",
    )


@rule("hold.rice", "fda-food-code-2022", "common-practice")
def rice(case: Case) -> Part | None:
    """Cooked rice and pasta, where spores outlive the cooking."""
    if case.dish_class not in GRAINS:
        return None
    return Part(
        cautions=(
            Caution(
                "warn",
                "Cooked rice and pasta carry spores that outlive boiling and make a poison that reheating does not "
                f"destroy: keep them above {case.say.temp(limit_c('hot_hold'))} or chill them at once, never warm in "
                "between.",
                ("fda-food-code-2022", "common-practice"),
            ),
        )
    )


NEEDS: tuple[str, ...] = ()
RULES = (limits, infant.formula, infant.breast_milk, holding.same_everywhere, dry_air, rice)
