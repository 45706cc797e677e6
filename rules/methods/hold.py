"""Hold: cooked food kept hot until it is served. The limits are of the food and stay where they are."""

from __future__ import annotations

from rules import book, holding, infant
from rules.book import Part, Rule, rule
from rules.case import Case, celsius
from rules.dishes import kin
from rules.holding import limit_c, limit_min, placed
from rules.infant import INFANT
from rules.model import Caution, Figure, Request
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


@rule("hold.ferment", "common-practice")
def ferment(case: Case) -> Part | None:
    """Kefir and kombucha: kept at room temperature, the same everywhere."""
    span_h = FERMENTED_H.get(case.request.dish or "")
    if span_h is None:
        return None
    low_c, high_c = FERMENT_C
    low, high = (60.0 * h for h in span_h)
    warm = case.say.temp_span(low_c, high_c)
    at = f" at {case.place}" if placed(case.request) else ""
    return Part(
        figures=(
            Figure("hold_temperature", "Keep it at", (low_c + high_c) / 2, "degC", low_c, high_c),
            Figure("ferment_time", "For", (low + high) / 2, "min", low, high)
            if high < LONG_MIN
            else Figure("ferment_time", "For", (low + high) / 2 / DAY_MIN, "days", low / DAY_MIN, high / DAY_MIN),
        ),
        headline=f"Keep {case.request.dish} at {warm}{at}, the same as at any elevation, until it is as sour as you "
        "like.",
        steps=(
            "Use clean jars and a lively culture, cover it with a cloth, and refrigerate it once it is sour.",
            "Leave room and open closed bottles now and then: the same gas presses harder against thinner air.",
        ),
        because="The culture grows by warmth, and that has nothing to do with the weight of the air.",
        cautions=(Caution("warn", "Throw it out if it shows mould or smells wrong.", ("common-practice",)),),
    )


FERMENTED_H = {"kefir": (18.0, 36.0), "kombucha": (168.0, 336.0)}
DAY_MIN, LONG_MIN = 1440.0, 4320.0
FERMENT_C = (20.0, 26.0)
SAFETY_ROOMS = {"mozzarella": "cheese_curd"}
NEEDS: tuple[str, ...] = ()
HOT: tuple[Rule, ...] = (limits, infant.formula, infant.breast_milk, holding.same_everywhere, dry_air, rice)


def rules_for(request: Request | None) -> tuple[Rule, ...]:
    """The limits of hot holding, or for what is cultured its own rules."""
    if request is None:
        return (*HOT, ferment)
    named = next((SAFETY_ROOMS[name] for name in kin(request.dish) if name in SAFETY_ROOMS), "")
    if room := book.room("safety", named):
        return book.rules_of(room)
    return (ferment,) if request.dish in FERMENTED_H else HOT
